using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>The list of all reckonings: each family contributes its own.</summary>
public static class Reckonings
{
    /// <summary>All of them, by family, in the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } =
        [.. Electrical.ElectricalReckonings.All, .. Air.AirReckonings.All, .. Water.WaterReckonings.All,
        .. Structure.StructureReckonings.All, .. Site.SiteReckonings.All, .. Moisture.MoistureReckonings.All, .. Years.YearsReckonings.All];

    private static readonly FrozenDictionary<string, Calculation> ByName = All.ToFrozenDictionary(reckoning => reckoning.Name);

    /// <summary>The reckoning of that name, or a refusal that lists what there is.</summary>
    public static Checked<Calculation> Find(string name) => ByName.TryGetValue(name, out var found)
        ? found
        : new Refusal("reckoning", Said.Verbatim(name),
        new("allowed.word", ("words", SaidValue.Of(All.Select(reckoning => reckoning.Name)))));

    /// <summary>Reads the one JSON object a reckoning takes; text that is no such object, or names an input twice, is refused.</summary>
    public static Checked<JsonObject> ReadInput(string json)
    {
        try
        {
            return JsonNode.Parse(json,
                documentOptions: new JsonDocumentOptions
                {
                    AllowDuplicateProperties = false,
                    MaxDepth = Limits.JsonDepth
                }) is JsonObject input
                ? input
                : new Refusal("input", "refused.not-an-object", "allowed.object");
        }
        catch (JsonException wrong)
        {
            return new Refusal("input", Said.Verbatim(wrong.Message.Length <= 80 ? wrong.Message : wrong.Message[..77] + "..."),
                "allowed.object.once");
        }
    }

    /// <summary>Finds, checks and reckons.</summary>
    public static Checked<Working> Reckon(string name, JsonObject input) =>
        Find(name).Match(reckoning => reckoning.Reckon(input), refusals => Checked<Working>.Refused(refusals));
}
