using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>
/// The sheet a reckoning is written on while it runs: steps as they come, results by name, then the verdict, which ends it.
/// It is used once and by one reckoning; what leaves it is an immutable <see cref="Working"/>.
/// </summary>
/// <param name="calculation">Whose working it is.</param>
/// <param name="given">The checked inputs.</param>
public sealed class Worksheet(Calculation calculation, Given given)
{
    private readonly JsonObject result = [];
    private readonly ImmutableDictionary<string, Said>.Builder sentences = ImmutableDictionary.CreateBuilder<string, Said>(StringComparer.Ordinal);
    private readonly ImmutableArray<Step>.Builder steps = ImmutableArray.CreateBuilder<Step>();
    private readonly List<string> sources = [];
    private readonly List<Said> cautions = [];

    /// <summary>Writes a step down and gives its value on, so that a formula reads as it is written.</summary>
    public double Step(Said text, double value, string unit = "")
    {
        steps.Add(new Step(text, value, unit));
        return value;
    }

    /// <summary>The same, by key and values.</summary>
    public double Step(string key, double value, string unit, params ReadOnlySpan<Filled> with) => Step(new Said(key, with), value, unit);

    /// <summary>Writes a step in words.</summary>
    public void Say(Said text) => steps.Add(new Step(text));

    /// <summary>The same, by key and values.</summary>
    public void Say(string key, params ReadOnlySpan<Filled> with) => Say(new Said(key, with));

    /// <summary>The input in its default unit, or the standard value; a standard value that is used is a step with its reason.</summary>
    /// <param name="name">The input.</param>
    /// <param name="standard">What is taken when it was not given.</param>
    /// <param name="unit">Unit of the standard value, for the step.</param>
    /// <param name="why">Where the standard value comes from.</param>
    public double Or(string name, double standard, string unit, Said why) =>
        given.NumberOrNone(name) ?? Step("sheet.taken", standard, unit, ("input", Label(name)), ("value", standard, unit), ("why", why));

    /// <summary>The word that was given, or the standard one; a standard word that is used is a step with its reason.</summary>
    public string WordOr(string name, string standard, Said why)
    {
        if (given.TextOrNone(name) is { } text) return text;
        Say("sheet.taken.word", ("input", Label(name)), ("word", Words.Of(standard)), ("why", why));
        return standard;
    }

    /// <summary>A quantity of the result.</summary>
    public double Result(string name, double value, string unit)
    {
        result[name] = Quantity(value, unit);
        return value;
    }

    /// <summary>A count, ratio, word, list or object of the result; null prints as null.</summary>
    public void Result(string name, JsonNode? value) => result[name] = value;

    /// <summary>A sentence of the result, or within it: <c>capacity.reason</c> once there is a <c>capacity</c>.</summary>
    public void Sentence(string path, Said said)
    {
        if (!path.Contains('.', StringComparison.Ordinal)) result[path] = null;
        sentences[path] = said;
    }

    /// <summary>A member of the result that could not be worked out; a step or the verdict says why.</summary>
    public void NoResult(string name) => result[name] = null;

    /// <summary>A quantity as the result writes it.</summary>
    public static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

    /// <summary>What this working rests on; when nothing is named, the sources of the calculation are.</summary>
    public void From(string source)
    {
        if (!sources.Contains(source)) sources.Add(source);
    }

    /// <summary>What the result does not mean, or what can hurt.</summary>
    public void Caution(Said caution)
    {
        if (!cautions.Contains(caution)) cautions.Add(caution);
    }

    /// <summary>The same, by key and values.</summary>
    public void Caution(string key, params ReadOnlySpan<Filled> with) => Caution(new Said(key, with));

    /// <summary>Ends the working: inside what the source allows or expects.</summary>
    public Checked<Working> Within(Said because) => End(new Verdict.Within { Because = because });

    /// <summary>The same, by key and values.</summary>
    public Checked<Working> Within(string key, params ReadOnlySpan<Filled> with) => Within(new Said(key, with));

    /// <summary>Ends the working: outside what the source allows or expects.</summary>
    public Checked<Working> Outside(Said because) => End(new Verdict.Outside { Because = because });

    /// <summary>The same, by key and values.</summary>
    public Checked<Working> Outside(string key, params ReadOnlySpan<Filled> with) => Outside(new Said(key, with));

    /// <summary>Ends the working: there is nothing to stand on.</summary>
    public Checked<Working> CannotSay(Said because) => End(new Verdict.CannotSay { Because = because });

    /// <summary>The same, by key and values.</summary>
    public Checked<Working> CannotSay(string key, params ReadOnlySpan<Filled> with) => CannotSay(new Said(key, with));

    private Working End(Verdict verdict) => new()
    {
        Name = calculation.Name,
        Title = calculation.Title,
        Inputs = (JsonObject)given.Written.DeepClone(),
        Result = result,
        Sentences = sentences.ToImmutable(),
        Steps = steps.ToImmutable(),
        Verdict = verdict,
        Sources = sources.Count > 0 ? [.. sources] : calculation.Sources,
        Cautions = [.. cautions],
    };

    private static Said Label(string name) => Words.OfInput(name);
}
