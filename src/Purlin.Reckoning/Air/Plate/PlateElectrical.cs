using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Journal;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>Volts, phase and the two currents of a plate, and its fuel input.</summary>
internal static partial class PlateElectrical
{
    /// <summary>A current behind its label; none when it is no plausible one.</summary>
    internal static PlateField? Amps(PlateText text, string name)
    {
        foreach (var segment in text.Behind(name))
            if (PlateNumber.First(segment) is { Value: >= 1 and <= 600 } number)
                return new PlateField(JsonValue.Create(number.Value), "A", number.Confidence,
                    new("nameplate.reason.label", ("label", name.ToUpperInvariant())), number.AsRead);
        return null;
    }

    internal static PlateField? Volts(PlateText text)
    {
        foreach (Match match in VoltsMark().Matches(text.Raw))
        {
            var numbers = match.Groups["volts"].Value.Split(['/', '-', ' '], StringSplitOptions.RemoveEmptyEntries).Select(PlateNumber.Of)
                .OfType<PlateNumber>().ToList();
            if (numbers.Count == 0 || numbers.Exists(number => number.Value is < 100 or > 600)) continue;
            return new PlateField(JsonValue.Create(numbers[^1].Value), "V", numbers.Exists(number => number.Mended)
                ? "mended" : "clear", numbers.Count > 1 ? "nameplate.reason.range" : "nameplate.reason.volts", match.Groups["volts"].Value);
        }
        return null;
    }

    internal static PlateField? Phase(PlateText text)
    {
        var match = PhaseMark().Match(text.Raw);
        if (!match.Success) return null;
        var mark = match.Groups["phase"].Value;
        var number = mark is "3" ? 3 : 1;
        return new PlateField(JsonValue.Create(number), "", mark is "1" or "3" ? "clear" : "mended", "nameplate.reason.phase", match.Value);
    }

    internal static PlateField? FuelInput(PlateText text)
    {
        foreach (var segment in text.Behind("input"))
            if (segment.Contains("BTU", StringComparison.Ordinal)
                && PlateNumber.First(segment) is { Value: >= 1_000 and <= 2_000_000 } number)
                return new PlateField(JsonValue.Create(number.Value), "Btu/h", number.Confidence, "nameplate.reason.label-input",
                    number.AsRead);
        return null;
    }

    [GeneratedRegex(@"(?:V[O0][L1I|]T[S5]?(?:\s*AC)?|V[O0][L1I|]TAGE|V)\s*[:.=]?\s*(?<volts>[0-9OISB]{3}(?:\s?[/-]\s?[0-9OISB]{3})?)(?![0-9A-Z])|(?<![0-9A-Z])(?<volts>[0-9OISB]{3}(?:\s?[/-]\s?[0-9OISB]{3})?)\s*V(?:[O0][L1I|]T[S5]?|AC)?(?![A-Z])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex VoltsMark();

    [GeneratedRegex(@"(?<![0-9A-Z])(?<phase>[13IL])\s*-?\s*PH(?:A[S5]E)?(?![A-Z])|(?<![A-Z])PH(?:A[S5]E)?\s*[:.=-]?\s*(?<phase>[13IL])(?![0-9A-Z])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PhaseMark();
}
