using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Journal;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>Refrigerant and its factory charge.</summary>
internal static partial class PlateRefrigerant
{
    private const double OuncesPerPound = 16;

    internal static PlateField? Name(PlateText text)
    {
        foreach (Match match in Mark().Matches(text.Raw))
        {
            var read = match.Value.Replace(" ", "", StringComparison.Ordinal);
            if (Refrigerants.Find(read) is { } row)
                return new PlateField(JsonValue.Create(row["name"]), "", "clear", "nameplate.reason.plate", match.Value);
            var dash = match.Groups["number"].Value;
            var mended = match.Groups["kind"].Value + "-" + PlateNumber.Digits(dash[..^Tail(dash)]) + dash[^Tail(dash)..];
            if (Refrigerants.Find(mended) is { } put)
                return new PlateField(JsonValue.Create(put["name"]), "", "mended", "nameplate.reason.plate.mended", match.Value);
        }
        return null;
    }

    internal static PlateField? Charge(PlateText text)
    {
        foreach (var segment in text.Behind("charge").Concat(text.Behind("refrigerant")))
        {
            var match = Weight().Match(segment);
            if (!match.Success) continue;
            var pounds = match.Groups["pounds"].Success ? PlateNumber.Of(match.Groups["pounds"].Value) : null;
            var ounces = match.Groups["ounces"].Success ? PlateNumber.Of(match.Groups["ounces"].Value) : null;
            if (pounds is null && ounces is null) continue;
            var total = (pounds?.Value ?? 0) + (ounces?.Value ?? 0) / OuncesPerPound;
            // Charges of house equipment run from some ounces to some twenty pounds (common practice).
            if (total is <= 0 or > 60) continue;
            return new PlateField(JsonValue.Create(total), "lb", pounds?.Mended == true || ounces?.Mended == true
                ? "mended" : "clear", "nameplate.reason.charge", match.Value.Trim());
        }
        return null;
    }

    // The letter that may close the number: A in 410A, B in 454B, C in 407C.
    private static int Tail(string number) => number.Length > 3 && number[^1] is 'A' or 'B' or 'C' ? 1 : 0;

    [GeneratedRegex(@"(?<![A-Z0-9])(?<kind>R|HFC|HCFC|CFC)\s?-?\s?(?<number>[0-9OISB]{2,3}[ABC]?)(?![A-Z0-9])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Mark();

    [GeneratedRegex(@"(?<![0-9OISB.])(?:(?<pounds>[0-9OISB]+(?:\.[0-9OISB]+)?)\s*LBS?\.?(?:\s*[,&]?\s*(?<ounces>[0-9OISB]+(?:\.[0-9OISB]+)?)\s*OZ)?|(?<ounces>[0-9OISB]+(?:\.[0-9OISB]+)?)\s*OZ)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Weight();
}
