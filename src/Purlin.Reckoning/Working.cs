using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>One reckoning with its inputs, steps, result and sources, as it can be printed and as <c>purlin reckon</c> gives it.</summary>
public sealed record Working
{
    /// <summary>The reckoning's name, <c>temperature-split</c>.</summary>
    public required string Name { get; init; }

    /// <summary>A heading for people: <c>Cooling: temperature split</c>.</summary>
    public required Said Title { get; init; }

    /// <summary>The inputs as given.</summary>
    public required JsonObject Inputs { get; init; }

    /// <summary>
    /// The result: each quantity as <c>{"value": n, "unit": "…"}</c>, counts and ratios as plain numbers, words as text; lists and
    /// objects where a reckoning has them. Unrounded.
    /// </summary>
    public required JsonObject Result { get; init; }

    /// <summary>
    /// Sentences of the result, by where they stand in it: <c>sentence</c>, <c>capacity.reason</c>, <c>mismatches.0.what</c>. The result
    /// itself holds nothing there.
    /// </summary>
    public ImmutableDictionary<string, Said> Sentences { get; init; } = ImmutableDictionary<string, Said>.Empty;

    /// <summary>The steps in the order a person would write them down.</summary>
    public required ImmutableArray<Step> Steps { get; init; }

    /// <summary>Within, outside, or cannot say, with one plain sentence.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Document, section, edition of everything it rests on; a value nobody has confirmed says <c>from memory</c>.</summary>
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>What the result does not mean, and what can hurt.</summary>
    public ImmutableArray<Said> Cautions { get; init; } = [];

    /// <summary>The object that <c>purlin reckon</c> prints, in words: result, steps, verdict, because, sources, cautions.</summary>
    public JsonObject ToJson(Tongue tongue) => new()
    {
        ["result"] = InWords(tongue),
        ["steps"] = new JsonArray([.. Steps.Select(step => (JsonNode)step.ToJson(tongue))]),
        ["verdict"] = Verdict.Word,
        ["because"] = tongue.Say(Verdict.Because),
        ["sources"] = new JsonArray([.. Sources.Select(source => (JsonNode)JsonValue.Create(source))]),
        ["cautions"] = new JsonArray([.. Cautions.Select(caution => (JsonNode)JsonValue.Create(tongue.Say(caution)))]),
    };

    /// <summary>The result with its sentences in words.</summary>
    public JsonObject InWords(Tongue tongue)
    {
        var result = (JsonObject)Result.DeepClone();
        foreach (var (path, said) in Sentences)
        {
            JsonNode at = result;
            var parts = path.Split('.');
            foreach (var part in parts[..^1]) at = at is JsonArray list ? list[int.Parse(part, CultureInfo.InvariantCulture)]! : at[part]!;
            at[parts[^1]] = tongue.Say(said);
        }
        return result;
    }
}

/// <summary>One step of a working.</summary>
/// <param name="Text">What is done, as a person would write it.</param>
/// <param name="Value">What comes out, unrounded; none for a step in words.</param>
/// <param name="Unit">Its unit; empty for a count or ratio.</param>
public sealed record Step(Said Text, double? Value = null, string Unit = "")
{
    /// <summary>The step as JSON, in words.</summary>
    public JsonObject ToJson(Tongue tongue) => new() { ["text"] = tongue.Say(Text), ["value"] = Value, ["unit"] = Unit };
}
