using System.Globalization;
using System.Text.RegularExpressions;
using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Understanding;

/// <summary>
/// Reads the value of a fact as the book asks for it: a number that was written in words, yes for true, a material by another name.
/// </summary>
internal sealed partial class StatedWords(KnownNames names, Telling telling)
{
    private static readonly string[] Yes = ["yes", "true", "y", "present", "1"];
    private static readonly string[] No = ["no", "false", "n", "none", "absent", "0"];

    /// <summary>The fact as the book reads it.</summary>
    public Fact Read(string kind, string name, Fact fact, EntryName by, List<LookAgain> again)
    {
        if (names.IsYesOrNo(kind, name)) return Flag(name, fact, by, again);
        if (names.IsNumber(kind, name)) return Number(kind, name, fact, by, again);
        if (names.UnitOf(kind, name).Length > 0 || fact.Unit is not null) return fact;
        var meant = names.Value(kind, name, fact.Value.Text);
        // A number among words may be a size that the reckoning reads as it is.
        if (meant.Found == Found.Unknown && fact.Value.Number is not null) return fact;
        Tell(name, fact.Value.Text, meant, by, again);
        return meant.Found is Found.Same or Found.Slip && fact.Value.Number is null ? fact with { Value = FactValue.Of(meant.Name) } : fact;
    }

    private Fact Flag(string name, Fact fact, EntryName by, List<LookAgain> again)
    {
        if (fact.Value.Flag is not null) return fact;
        var text = fact.Value.Text.Trim().ToLowerInvariant();
        if (Yes.Contains(text)) return fact with { Value = FactValue.Of(true) };
        if (No.Contains(text)) return fact with { Value = FactValue.Of(false) };
        Tell(name, fact.Value.Text, new Meant(fact.Value.Text, Found.Unknown, ["yes", "no"]), by, again);
        return fact;
    }

    private Fact Number(string kind, string name, Fact fact, EntryName by, List<LookAgain> again)
    {
        var asked = names.UnitOf(kind, name);
        var (number, unit) = fact.Value.Number is { } given ? (given, fact.Unit ?? "") : Parsed(name, fact);
        if (double.IsNaN(number))
        {
            again.Add(Telling.Odd(by, name, fact.Value.Text, telling.Say("again.number", ("fact", name), ("given", fact.Value.Text)),
                bars: false));
            return fact;
        }
        var meant = names.Unit(unit);
        if (unit.Length > 0 && asked.Length > 0 && !(meant.IsUnderstood && (meant.Name == asked || Units.Compatible(meant.Name, asked)
            || Units.TryConvert(number, meant.Name, asked, out _))))
        {
            again.Add(Telling.Odd(by, name, $"{number:0.####} {unit}", telling.Say("again.unit", ("what", name), ("given",
                $"{number:0.####} {unit}"), ("unit", asked)), bars: false));
            return fact;
        }
        var plain = meant.IsUnderstood && unit.Length > 0 ? meant.Name : unit.Length > 0 ? unit : null;
        return fact.Value.Number is not null && plain == fact.Unit ? fact : fact with { Value = FactValue.Of(number), Unit = plain };
    }

    /// <summary>The number that words say, with the unit behind it; not a number where they say none.</summary>
    private static (double Number, string Unit) Parsed(string name, Fact fact)
    {
        var text = fact.Value.Text.Trim();
        if (name == "year" && YearPattern().Match(text) is { Success: true } year) return (double.Parse(year.Groups["year"].ValueSpan,
            CultureInfo.InvariantCulture), "");
        if (NumberPattern().Match(text) is not { Success: true } match) return (double.NaN, "");
        var figures = match.Groups["number"].Value.Replace(",", "", StringComparison.Ordinal);
        return double.TryParse(figures, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? (number, match.Groups["unit"].Value.Trim() is { Length: > 0 } unit ? unit : fact.Unit ?? "") : (double.NaN, "");
    }

    private void Tell(string name, string given, Meant meant, EntryName by, List<LookAgain> again)
    {
        if (telling.Name(by, name, telling.Say("again.what.value", ("fact", name)), given, meant, bars: false) is { } told) again.Add(told);
    }

    // "about 1968", "c. 1968", "1968 (est.)"; a decade is no year.
    [GeneratedRegex(@"^\D*(?<year>(?:1[6-9]|20)\d\d)(?:\s*\D*)$(?<!s)", RegexOptions.None, 1000)]
    private static partial Regex YearPattern();

    [GeneratedRegex(@"^\$?\s*(?<number>[-+]?\d[\d,]*(?:\.\d+)?)\s*(?<unit>[^\d]*)$", RegexOptions.None, 1000)]
    private static partial Regex NumberPattern();
}
