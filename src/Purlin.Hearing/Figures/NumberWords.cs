using System.Globalization;

namespace Purlin.Hearing.Figures;

/// <summary>
/// Numbers in words or figures: "one thirty one", "nineteen ninety one", "two thousand nine", "six and a half", "zero point four",
/// "22.8", "3/4".
/// </summary>
internal static class NumberWords
{
    private static readonly string[] Small =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen",
            "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    private static readonly Dictionary<string, double> Parts = new(StringComparer.Ordinal)
    {
        ["half"] = 2,
        ["halves"] = 2,
        ["third"] = 3,
        ["thirds"] = 3,
        ["quarter"] = 4,
        ["quarters"] = 4,
        ["eighth"] = 8,
        ["eighths"] = 8,
        ["sixteenth"] = 16,
        ["sixteenths"] = 16,
        ["thirtysecond"] = 32,
    };

    /// <summary>The number that begins here, and the word after it; none when no number does.</summary>
    public static (double Value, int End)? At(List<string> texts, int at)
    {
        if (at >= texts.Count) return null;
        if (texts[at] is "minus" or "negative" or "plus"
            && Unsigned(texts, at + 1) is var (number, after)) return (texts[at] == "plus" ? number : -number, after);
        return Unsigned(texts, at);
    }

    /// <summary>"three quarters", "a quarter", "half": the part and the word after it.</summary>
    public static (double Value, int End)? Part(List<string> texts, int at)
    {
        if (at >= texts.Count) return null;
        var count = 1.0;
        if (texts[at] is "a" or "an" or "one") at++;
        else if (Digit(texts[at]) is >= 2 and var several)
        {
            count = several;
            at++;
        }
        return at < texts.Count && Parts.TryGetValue(texts[at], out var of) && count < of ? (count / of, at + 1) : null;
    }

    private static (double, int)? Unsigned(List<string> texts, int at)
    {
        if (at >= texts.Count) return null;
        if (Part(texts, at) is { } part) return part;
        if (Written(texts[at]) is { } written) return Mixed(texts, written, at + 1);
        if (Whole(texts, at) is not var (whole, end)) return null;
        return Point(texts, whole, end) ?? Mixed(texts, whole, end);
    }

    /// <summary>"six and a half", "one and three quarters".</summary>
    private static (double, int) Mixed(List<string> texts, double whole, int end)
    {
        var next = end < texts.Count && texts[end] == "and" ? end + 1 : -1;
        return next > 0 && Part(texts, next) is var (part, after)
            && !(after < texts.Count && texts[after] is "of") ? (whole + part, after) : (whole, end);
    }

    private static (double, int)? Point(List<string> texts, double whole, int end)
    {
        if (end + 1 >= texts.Count || texts[end] != "point") return null;
        var (digits, at) = ("", end + 1);
        for (; at < texts.Count && Digit(texts[at]) is { } digit
            && digit < 10; at++) digits += digit.ToString(CultureInfo.InvariantCulture);
        return digits.Length == 0 ? null : (whole + double.Parse($"0.{digits}", CultureInfo.InvariantCulture), at);
    }

    private static double? Written(string text)
    {
        if (!char.IsAsciiDigit(text[0])) return null;
        var plain = text.Replace(",", "", StringComparison.Ordinal).TrimEnd('%', '"', '\'');
        if (plain.IndexOf('/', StringComparison.Ordinal) is > 0 and var stroke)
            return double.TryParse(plain[..stroke], CultureInfo.InvariantCulture, out var over)
                && double.TryParse(plain[(stroke + 1)..], CultureInfo.InvariantCulture, out var under) && under > 0 ? over / under : null;
        return double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    private static (double, int)? Whole(List<string> texts, int at)
    {
        if (texts[at] is "oh" && Next(texts, at + 1) is { } single && single < 10) return (2000 + single, at + 2);
        var (value, end) = texts[at] is "a" or "hundred"
            && Hundred(texts, at) is { } hundred ? hundred : Below(texts, at) is { } below ? below : (-1, at);
        if (value < 0) return null;
        if (Is(texts, end, "hundred")) (value, end) = Rest(texts, value * 100, end + 1);
        if (Is(texts, end, "thousand")) return Rest(texts, value * 1000, end + 1);
        // "one thirty one", "nineteen ninety one", "twenty twelve": two numbers said as one.
        if (value is >= 1 and < 100 && Below(texts, end) is var (second, after)
            && second is >= 10 and < 100) return ((value * 100) + second, after);
        if (value is 19 or 20 && Is(texts, end, "oh") && Next(texts, end + 1) is { } year && year < 10) return ((value * 100) + year,
            end + 2);
        return (value, end);
    }

    private static (double, int)? Hundred(List<string> texts, int at)
    {
        var word = texts[at] == "a" ? at + 1 : at;
        return Is(texts, word, "hundred") ? (1, word) : null;
    }

    private static (double, int) Rest(List<string> texts, double value, int end)
    {
        var next = Is(texts, end, "and") ? end + 1 : end;
        return Below(texts, next) is var (rest, after) && rest < value ? (value + rest, after) : (value, end);
    }

    private static (double Value, int End)? Below(List<string> texts, int at)
    {
        if (at >= texts.Count) return null;
        if (Array.IndexOf(Tens, texts[at]) is >= 0 and var tens)
        {
            var ten = (tens + 2) * 10.0;
            return Next(texts, at + 1) is { } one and >= 1 and < 10 ? (ten + one, at + 2) : (ten, at + 1);
        }
        return Digit(texts[at]) is { } small ? (small, at + 1) : null;
    }

    private static double? Next(List<string> texts, int at) => at < texts.Count ? Digit(texts[at]) : null;

    private static double? Digit(string text) => Array.IndexOf(Small, text) is >= 0 and var small ? small : null;

    private static bool Is(List<string> texts, int at, string word) => at < texts.Count && texts[at] == word;
}
