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
    private readonly ImmutableArray<Step>.Builder steps = ImmutableArray.CreateBuilder<Step>();
    private readonly List<string> sources = [];
    private readonly List<string> cautions = [];

    /// <summary>Writes a step down and gives its value on, so that a formula reads as it is written.</summary>
    public double Step(string text, double value, string unit = "")
    {
        steps.Add(new Step(text, value, unit));
        return value;
    }

    /// <summary>Writes a step in words.</summary>
    public void Say(string text) => steps.Add(new Step(text));

    /// <summary>The input in its default unit, or the standard value; a standard value that is used is a step with its reason.</summary>
    /// <param name="name">The input.</param>
    /// <param name="standard">What is taken when it was not given.</param>
    /// <param name="unit">Unit of the standard value, for the step.</param>
    /// <param name="why">Where the standard value comes from.</param>
    public double Or(string name, double standard, string unit, string why) =>
        given.NumberOrNone(name) ?? Step($"{Words(name)} not given: {standard:0.####}{(unit.Length == 0 ? "" : " " + unit)} taken ({why})", standard, unit);

    /// <summary>The word that was given, or the standard one; a standard word that is used is a step with its reason.</summary>
    public string WordOr(string name, string standard, string why)
    {
        if (given.TextOrNone(name) is { } text) return text;
        Say($"{Words(name)} not given: {standard} taken ({why})");
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
    public void Caution(string caution)
    {
        if (!cautions.Contains(caution)) cautions.Add(caution);
    }

    /// <summary>Ends the working: inside what the source allows or expects.</summary>
    public Checked<Working> Within(string because) => End(new Verdict.Within { Because = because });

    /// <summary>Ends the working: outside what the source allows or expects.</summary>
    public Checked<Working> Outside(string because) => End(new Verdict.Outside { Because = because });

    /// <summary>Ends the working: there is nothing to stand on.</summary>
    public Checked<Working> CannotSay(string because) => End(new Verdict.CannotSay { Because = because });

    private Working End(Verdict verdict) => new()
    {
        Name = calculation.Name,
        Title = calculation.Title,
        Inputs = (JsonObject)given.Written.DeepClone(),
        Result = result,
        Steps = steps.ToImmutable(),
        Verdict = verdict,
        Sources = sources.Count > 0 ? [.. sources] : calculation.Sources,
        Cautions = [.. cautions],
    };

    private static string Words(string name) => char.ToUpperInvariant(name[0]) + name[1..].Replace('_', ' ');
}
