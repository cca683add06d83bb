using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Reckoning;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Readings;

/// <summary>Whether a number, a fact or a working raises a condition, as a line of the book says it.</summary>
internal static class Raising
{
    /// <summary>Whether a working raises it: true when it does, false when it clears it, none when it says nothing of it.</summary>
    public static bool? By(Raise raise, Working working)
    {
        if (!raise.For.All(only => Says(At(working, only.Key), only.Value))) return null;
        var on = raise.On is null ? null : At(working, raise.On);
        // What was not measured is neither there nor absent.
        if (raise.On is not null && on is null) return null;
        var verdict = raise.Verdict is null || raise.Verdict == working.Verdict.Word;
        if (verdict && (on is null || Meets(raise, on) || Passes(raise, working, on))) return true;
        return raise.Clears && working.Verdict is not Verdict.CannotSay ? false : null;
    }

    /// <summary>Follows a path such as <c>result.tilt</c> or <c>inputs.static</c>.</summary>
    public static JsonNode? At(Working working, string path)
    {
        JsonNode? node = path.StartsWith("inputs.", StringComparison.Ordinal) ? working.Inputs : working.Result;
        foreach (var part in path.Split('.').Skip(1)) node = node is JsonObject inner ? inner[part] : null;
        return node;
    }

    /// <summary>An amount as a number in a unit; false when it is of another kind of unit.</summary>
    public static bool Number(Amount amount, string unit, out double number)
    {
        number = amount.Value;
        return amount.Unit == unit || unit.Length == 0 || Units.TryConvert(amount.Value, amount.Unit, unit, out number);
    }

    /// <summary>Whether a number is beyond the limits.</summary>
    public static bool Beyond(Raise raise, double number) =>
        (raise.Above is not null || raise.Below is not null) && (raise.Above is not { } above || number > above) && (raise.Below is not { } below || number < below);

    /// <summary>Whether one figure of a working passes another one.</summary>
    private static bool Passes(Raise raise, Working working, JsonNode on)
    {
        if ((raise.Over ?? raise.Under) is not { } path || At(working, path) is not { } limit) return false;
        if (!Figure(on, raise.Unit, out var number) || !Figure(limit, raise.Unit, out var bound)) return false;
        return raise.Over is not null ? number > bound : number < bound;
    }

    private static bool Meets(Raise raise, JsonNode node)
    {
        if (raise.Is.Count > 0) return Says(node, raise.Is);
        return (raise.Above is not null || raise.Below is not null) && Figure(node, raise.Unit, out var number) && Beyond(raise, number);
    }

    private static bool Figure(JsonNode node, string unit, out double number)
    {
        number = double.NaN;
        if (node is JsonObject quantity)
            return quantity["value"] is JsonValue inner && inner.TryGetValue(out number) && Number(new Amount(number, quantity["unit"]?.GetValue<string>() ?? ""), unit, out number);
        if (node is not JsonValue plain) return false;
        return plain.GetValueKind() == JsonValueKind.String
            ? Units.TryRead(plain.GetValue<string>(), unit, out number)
            : double.TryParse(plain.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out number);
    }

    private static bool Says(JsonNode? node, IReadOnlyList<string> words) =>
        node is not null && words.Contains(node.GetValueKind() == JsonValueKind.String ? node.GetValue<string>() : node.ToJsonString());
}
