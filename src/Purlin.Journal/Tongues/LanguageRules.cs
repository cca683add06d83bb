using System.Globalization;
using System.Text;

namespace Purlin.Journal.Tongues;

/// <summary>
/// How a language writes numbers, units, lists and days, and when it uses which plural: read from its own sentences under <c>language.</c>,
/// so that a language is files only.
/// </summary>
internal sealed class LanguageRules
{
    // The forms that Unicode TR35 names, in the order in which they are tried; <c>other</c> is what remains.
    private static readonly string[] Forms = ["zero", "one", "two", "few", "many"];

    private readonly Func<string, string?> find;
    private readonly NumberFormatInfo number;
    private readonly (string Form, PluralRule Rule)[] plurals;
    private readonly string[] months;

    internal LanguageRules(Func<string, string?> find)
    {
        this.find = find;
        number = new NumberFormatInfo { NumberDecimalSeparator = Say("decimal", "."), NumberGroupSeparator = Say("group", ",") };
        plurals = [.. Forms.Where(form => find("language.plural." + form) is not null)
            .Select(form => (form, PluralRule.Read(find("language.plural." + form)!)))];
        months = Say("months", "1 2 3 4 5 6 7 8 9 10 11 12").Split(' ');
    }

    /// <summary>The forms that fit a value, best first: the number itself as <c>=3</c>, then its plural.</summary>
    internal string[] PluralOf(SaidValue? value)
    {
        if (value is SaidValue.List list) return PluralOf(new SaidValue.Number(list.Values.Length));
        if (value is not SaidValue.Number { Value: var count }) return [];
        var form = plurals.FirstOrDefault(plural => plural.Rule.Fits(count)).Form;
        var itself = "=" + count.ToString(CultureInfo.InvariantCulture);
        return form is null ? [itself] : [itself, form];
    }

    internal void Write(StringBuilder words, SaidValue value, string format, Tongue tongue)
    {
        switch (value)
        {
            case SaidValue.Number one:
                Number(words, one, format);
                break;
            case SaidValue.Day day:
                Day(words, day.Value);
                break;
            case SaidValue.List list:
                List(words, list, format, tongue);
                break;
            default:
                words.Append(Case(value is SaidValue.Sentence said ? tongue.Say(said.Value) : value.ToString()!, format));
                break;
        }
    }

    private void Number(StringBuilder words, SaidValue.Number one, string format)
    {
        var text = one.Value.ToString(format.Length == 0 ? null : format, number);
        if (one.Unit.Length == 0) words.Append(text);
        else words.Append(Say("unit", "{number} {unit}").Replace("{number}", text, StringComparison.Ordinal)
            .Replace("{unit}", find("unit." + one.Unit) ?? one.Unit, StringComparison.Ordinal));
    }

    private void Day(StringBuilder words, DateOnly day) => words.Append(Say("day", "{year}-{month}-{day}")
        .Replace("{year}", day.Year.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
        .Replace("{month}", months[day.Month - 1], StringComparison.Ordinal)
        .Replace("{day}", day.Day.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));

    /// <summary>Joined with a comma, or as the format asks: <c>and</c>, <c>or</c>, <c>apart</c>, <c>either</c>.</summary>
    private void List(StringBuilder words, SaidValue.List list, string format, Tongue tongue)
    {
        var last = format.Length == 0 ? null : find("language.list." + format);
        var between = (format.Length == 0 ? null : find($"language.list.{format}.between")) ?? Say("list", ", ");
        for (var index = 0; index < list.Values.Length; index++)
        {
            if (index > 0) words.Append(index == list.Values.Length - 1 && last is not null ? last : between);
            Write(words, list.Values[index], "", tongue);
        }
    }

    private static string Case(string text, string format) => text.Length == 0 ? text : format switch
    {
        "capital" => char.ToUpperInvariant(text[0]) + text[1..],
        "lower" => char.ToLowerInvariant(text[0]) + text[1..],
        _ => text,
    };

    private string Say(string name, string otherwise) => find("language." + name) ?? otherwise;
}
