using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning;

/// <summary>
/// One reckoning as a test asks for it: JSON in, figures out by path (<c>deflection.one_in</c>, <c>lines[0].between</c>). Every working that
/// passes through here is held to the contract: sources, steps, a sentence, and no number that JSON cannot carry.
/// </summary>
internal sealed class Reckoned
{
    private Reckoned(Working working)
    {
        Working = working;
        Assert.NotEmpty(working.Sources);
        Assert.NotEmpty(working.Steps);
        Assert.EndsWith(".", InWords.Of(working.Verdict.Because), StringComparison.Ordinal);
        Assert.All(working.Steps, step => Assert.True(step.Value is null || double.IsFinite(step.Value.Value), InWords.Of(step.Text)));
        Json = JsonNode.Parse(working.ToJson(InWords.Tongue).ToJsonString())!.AsObject();
        Assert.Equal(["result", "steps", "verdict", "because", "sources", "cautions"], Json.Select(member => member.Key));
    }

    public Working Working { get; }

    public JsonObject Json { get; }

    public string Verdict => Working.Verdict.Word;

    public string Because => InWords.Of(Working.Verdict.Because);

    public static Reckoned Of(string name, string json) => Of(name, JsonNode.Parse(json)!.AsObject());

    public static Reckoned Of(string name, JsonObject input) => new(Reckonings.Reckon(name, input).OrThrow());

    /// <summary>The refusals of an input, one a line; the test fails when there are none.</summary>
    public static string Refused(string name, string json)
    {
        var refusals = Reckonings.ReadInput(json).Match(input => Reckonings.Reckon(name, input).Refusals, refused => refused);
        Assert.NotEmpty(refusals);
        Assert.All(refusals, refusal => Assert.True(refusal.Input.Length > 0 && InWords.Of(refusal.Given).Length > 0 && InWords.Of(refusal.Allowed).Length > 0, refusal.ToString()));
        return string.Join('\n', refusals);
    }

    /// <summary>A quantity's value, or a plain number.</summary>
    public double Number(string path)
    {
        var node = At(path) ?? throw new InvalidOperationException($"{path} is null in {Json["result"]}");
        return node is JsonObject quantity ? quantity["value"]!.GetValue<double>() : node.GetValueKind() == JsonValueKind.Number ? node.GetValue<double>() : throw new InvalidOperationException($"{path} is {node}");
    }

    public string Unit(string path) => At(path)!["unit"]!.GetValue<string>();

    public string Text(string path) => At(path)!.GetValue<string>();

    public bool Flag(string path) => At(path)!.GetValue<bool>();

    public bool IsNull(string path) => At(path) is null;

    public JsonNode? At(string path)
    {
        JsonNode? node = Json["result"];
        foreach (var part in path.Split('.', '[').Select(part => part.TrimEnd(']')))
        {
            if (node is JsonArray list) node = list[int.Parse(part, CultureInfo.InvariantCulture)];
            else if (node is JsonObject group) node = group.ContainsKey(part) ? group[part] : throw new InvalidOperationException($"no {part} in {group.ToJsonString()}");
        }
        return node;
    }

    public void Near(string path, double expected, double within) => Assert.True(Math.Abs(Number(path) - expected) <= within, $"{path}: expected {expected} ± {within}, got {Number(path)}");
}
