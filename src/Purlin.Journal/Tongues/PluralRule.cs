using System.Globalization;

namespace Purlin.Journal.Tongues;

/// <summary>
/// When a language uses a plural form, in the notation of Unicode TR35 part 3, "Language Plural Rules": <c>i = 1 and v = 0</c>,
/// <c>n % 10 = 2..4 and n % 100 != 12..14 or n = 0</c>. A part that cannot be read fits nothing.
/// </summary>
internal sealed class PluralRule
{
    private readonly Relation[][] either;

    private PluralRule(Relation[][] either) => this.either = either;

    internal static PluralRule Read(string rule) =>
        new([.. rule.Split(" or ").Select(all => all.Split(" and ").Select(Relation.Read).ToArray())]);

    internal bool Fits(double number)
    {
        var digits = Math.Abs(number).ToString(CultureInfo.InvariantCulture);
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var fraction = point < 0 ? "" : digits[(point + 1)..];
        double Operand(char letter) => letter switch
        {
            'n' => Math.Abs(number),
            'i' => Math.Truncate(Math.Abs(number)),
            'v' or 'w' => fraction.Length,
            'f' or 't' => fraction.Length == 0 ? 0 : double.Parse(fraction, CultureInfo.InvariantCulture),
            _ => double.NaN,
        };
        return either.Any(all => all.All(relation => relation.Holds(Operand(relation.Operand))));
    }

    private readonly record struct Relation(char Operand, double Modulo, bool Not, (double From, double To)[] Ranges)
    {
        internal static Relation Read(string text)
        {
            var not = text.Contains("!=", StringComparison.Ordinal);
            var sides = text.Split(not ? "!=" : "=", 2);
            var left = sides[0].Split('%');
            var modulo = left.Length > 1 && double.TryParse(left[1], CultureInfo.InvariantCulture, out var divisor) ? divisor : 0;
            var operand = left[0].Trim() is [var letter] && "nivwft".Contains(letter, StringComparison.Ordinal) ? letter : '?';
            return new(operand, modulo, not, sides.Length > 1 ? [.. sides[1].Split(',').Select(Range)] : []);
        }

        internal bool Holds(double value)
        {
            if (double.IsNaN(value)) return false;
            var rest = Modulo > 0 ? value % Modulo : value;
            return Not != Ranges.Any(range => rest >= range.From && rest <= range.To
                && (double.IsInteger(rest) || range.From.Equals(range.To)));
        }

        private static (double From, double To) Range(string text)
        {
            var ends = text.Split("..");
            return double.TryParse(ends[0], CultureInfo.InvariantCulture, out var from)
                && double.TryParse(ends[^1], CultureInfo.InvariantCulture, out var to) ? (from, to) : (double.NaN, double.NaN);
        }
    }
}
