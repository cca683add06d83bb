using System.Globalization;
using System.Text.RegularExpressions;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>A number on a plate, with letters that cameras take for digits put right: O for 0, I and L for 1, S for 5, B for 8.</summary>
/// <param name="Value">The number.</param>
/// <param name="Mended">Whether a letter was put right.</param>
/// <param name="AsRead">As it stands.</param>
internal sealed partial record PlateNumber(double Value, bool Mended, string AsRead)
{
    internal string Confidence => Mended ? "mended" : "clear";

    /// <summary>The first number of a text, with at least one true digit; none otherwise.</summary>
    internal static PlateNumber? First(string text)
    {
        foreach (Match match in Token().Matches(text))
            if (Of(match.Value) is { } number) return number;
        return null;
    }

    internal static PlateNumber? Of(string token)
    {
        var trimmed = token.TrimEnd('.', ',');
        if (!trimmed.Any(char.IsAsciiDigit)) return null;
        var digits = Digits(trimmed).Replace(",", "", StringComparison.Ordinal);
        return double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            && double.IsFinite(value)
            ? new PlateNumber(value, Digits(trimmed) != trimmed, trimmed)
            : null;
    }

    internal static string Digits(string text) =>
        string.Concat(text.Select(letter => letter switch { 'O' => '0', 'I' or 'L' or '|' => '1', 'S' => '5', 'B' => '8', _ => letter }));

    // A number ends at a blank, a sign or a unit; the B of BTU and the L of LB are no digits.
    [GeneratedRegex(@"(?<![A-Z0-9.,])[0-9OILSB|][0-9OILSB|.,]*?(?=BTU|LB|OZ|A(?![A-Z])|AMP|V(?![A-Z])|[^0-9OILSB|.,A-Z]|[.,]?\s|[.,]?\z)",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Token();
}
