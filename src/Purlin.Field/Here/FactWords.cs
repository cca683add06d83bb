using System.Globalization;
using Purlin.Journal;

namespace Purlin.Field.Here;

/// <summary>Reads what a person typed as a fact: <c>40 gal</c> is a number with a unit, <c>copper</c> is words.</summary>
public static class FactWords
{
    public static (FactValue Value, string? Unit) Read(string text)
    {
        var end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or ',' or '-')) end++;
        var figures = text[..end].Replace(",", "", StringComparison.Ordinal);
        var unit = text[end..].Trim();
        // 2x8 is a size of wood, no number of a unit.
        var isNumber = end > 0 && unit.Length <= 12 && !unit.Any(char.IsAsciiDigit) && !unit.Contains(' ', StringComparison.Ordinal)
            && double.TryParse(figures, NumberStyles.Float, CultureInfo.InvariantCulture, out _) && (unit.Length == 0 || char.IsLetter(unit[0]) || unit[0] is '°' or '%');
        if (!isNumber) return (FactValue.Of(text), null);
        return (FactValue.Of(double.Parse(figures, CultureInfo.InvariantCulture)), unit.Length == 0 ? null : unit);
    }
}
