using System.Globalization;
using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Small turns of phrase that every chapter shares; rounding for people happens here and nowhere before.</summary>
internal static class Phrase
{
    /// <summary>First letter upper case.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Ends with a full stop.</summary>
    public static string End(string text)
    {
        var trimmed = text.TrimEnd();
        return trimmed.Length == 0 || trimmed[^1] is '.' or '?' or '!' or '…' ? trimmed : trimmed + ".";
    }

    /// <summary>Two sentences, or the one there is.</summary>
    public static string Join(string? first, string? second) =>
        string.IsNullOrWhiteSpace(first) ? second ?? "" : string.IsNullOrWhiteSpace(second) ? first : $"{End(first)} {second}";

    /// <summary>A number for people: no more digits than it deserves.</summary>
    public static string Number(double value)
    {
        var size = Math.Abs(value);
        var format = size switch { 0 => "0", < 0.01 => "0.#####", < 1 => "0.###", < 10 => "0.##", < 100 => "0.#", < 10_000 => "0.#", _ => "#,0" };
        return value.ToString(format, CultureInfo.InvariantCulture);
    }

    /// <summary>An amount as it was written, with thousands set off.</summary>
    public static string Amount(Amount amount) => amount.Unit.Length == 0 ? Number(amount.Value) : $"{Number(amount.Value)} {amount.Unit}";

    /// <summary>A fact's value with its unit.</summary>
    public static string Value(Fact fact)
    {
        var text = fact.Value.Number is { } number && fact.Unit is { Length: > 0 } ? Number(number) : fact.Value.Text;
        return fact.Unit is { Length: > 0 } unit ? $"{text} {unit}" : text;
    }

    /// <summary>How a fact is known, said so that a reader can weigh it.</summary>
    public static string Basis(string basis) => basis switch
    {
        Journal.Basis.Nameplate => "read off the nameplate",
        Journal.Basis.Measured => "measured",
        Journal.Basis.Seen => "seen",
        Journal.Basis.Told => "told, not checked",
        Journal.Basis.Presumed => "presumed, not seen",
        _ => basis,
    };

    /// <summary>Counts of many like things.</summary>
    public static string Count(Sample sample) => sample.Failed == 0
        ? $"{sample.Tried} of {sample.Of} tried."
        : $"{sample.Tried} of {sample.Of} tried, {sample.Failed} of them showed it.";

    /// <summary>How far a condition spreads.</summary>
    public static string Spread(Spread spread) => spread switch
    {
        Judgement.Spread.OnePlace => "In one place.",
        Judgement.Spread.SeveralPlaces => "In several places.",
        _ => "Wherever it was looked for.",
    };

    /// <summary>What a weight asks of the reader.</summary>
    public static string Meaning(Weight weight) => weight switch
    {
        Weight.MakeSafe => "Someone can be hurt. See to it before anyone relies on it.",
        Weight.ActNow => "Damage is under way or close. Settle it before buying.",
        Weight.PutRight => "A defect to repair in the ordinary course.",
        Weight.KeepUp => "Upkeep that a house asks of its owner.",
        _ => "No action. It is here so that it is no surprise.",
    };

    /// <summary>A count with its noun.</summary>
    public static string Many(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";

    /// <summary>A day as people write it in the United States.</summary>
    public static string Day(DateOnly day) => day.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>A list in words: a, b and c.</summary>
    public static string List(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
    };
}
