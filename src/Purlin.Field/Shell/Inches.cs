using System.Globalization;

namespace Purlin.Field.Shell;

/// <summary>Inches as a tape shows them: whole ones and sixteenths.</summary>
public static class Inches
{
    /// <summary>Sixteenths of an inch in the lowest terms: 3 is 3/16, 12 is 3/4.</summary>
    public static string Fraction(int sixteenths)
    {
        var (over, under) = (sixteenths, 16);
        while (over % 2 == 0 && under > 1) (over, under) = (over / 2, under / 2);
        return $"{over}/{under}";
    }

    /// <summary>A reading as one says it: 7.75 in as 7 3/4 in; whatever is no sixteenth, or no inches, as the figure it is.</summary>
    public static string Said(double value, string unit)
    {
        var plain = $"{value.ToString("0.####", CultureInfo.InvariantCulture)} {unit}".TrimEnd();
        var sixteenths = Math.Round(Math.Abs(value) * 16);
        if (unit != "in" || sixteenths % 16 == 0 || Math.Abs(sixteenths / 16 - Math.Abs(value)) > 1e-9 || sixteenths > 1e6) return plain;
        var whole = (int)sixteenths / 16;
        return $"{(value < 0 ? "-" : "")}{(whole > 0 ? $"{whole} " : "")}{Fraction((int)sixteenths % 16)} in";
    }
}
