using System.Globalization;

namespace Purlin.Hearing.Listening;

/// <summary>A time as subtitles and notes write it: <c>00:01:02.345</c>, <c>1:02,3</c>, <c>01:02</c>.</summary>
internal static class ClockTime
{
    /// <summary>Seconds; none for what is no time of day or of a recording.</summary>
    public static double? Read(ReadOnlySpan<char> text)
    {
        text = text.Trim();
        if (text.Length is 0 or > 16) return null;
        double seconds = 0;
        var parts = 0;
        foreach (var range in text.Split(':'))
        {
            var part = text[range];
            var isLast = range.End.Value == text.Length;
            if (++parts > 3 || part.Length is 0 or > 9) return null;
            if (Number(part, isLast) is not { } number || (parts > 1 && number >= 60)) return null;
            seconds = (seconds * 60) + number;
        }
        return parts >= 2 ? seconds : null;
    }

    private static double? Number(ReadOnlySpan<char> part, bool mayBreak)
    {
        Span<char> plain = stackalloc char[part.Length];
        for (var at = 0; at < part.Length; at++)
        {
            if (!char.IsAsciiDigit(part[at]) && !(mayBreak && part[at] is '.' or ',')) return null;
            plain[at] = part[at] == ',' ? '.' : part[at];
        }
        return double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
