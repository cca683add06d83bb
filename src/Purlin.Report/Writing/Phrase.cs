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

    /// <summary>Day and time, by the clock of the device, in the time of Greenwich: the record keeps no other.</summary>
    public static string Moment(DateTimeOffset at) => at.ToUniversalTime().ToString("MMM d, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A source as a reader can look it up: how it was remembered is a matter of the rule book.</summary>
    public static string Cited(string source) => Sentence(source.Replace(" (from memory)", "", StringComparison.Ordinal).Replace(", from memory", "", StringComparison.Ordinal).Trim());

    /// <summary>What a part of a matter is called.</summary>
    public static string Label(MatterPart kind) => kind switch
    {
        MatterPart.Where => "Where",
        MatterPart.What => "Part of the house",
        MatterPart.Seen => "What was seen",
        MatterPart.Why => "Why it matters",
        MatterPart.Do => "What to do",
        _ => "By whom",
    };

    /// <summary>A trade as it is said in a list.</summary>
    public static string Trade(string trade) => trade.StartsWith("licensed ", StringComparison.OrdinalIgnoreCase) ? trade["licensed ".Length..] : trade;

    /// <summary>Whose question it is: "Ask the plumber", "Ask the owner".</summary>
    public static string Asking(string trade) => $"Ask {(trade.StartsWith("the ", StringComparison.Ordinal) ? trade : $"the {Trade(trade)}")}";

    /// <summary>The same in a narrow column.</summary>
    public static string ShortTrade(string trade)
    {
        var brief = Trade(trade);
        foreach (var ending in (string[])[" contractor", " specialist", " firm"])
            if (brief.EndsWith(ending, StringComparison.Ordinal) && brief != "general contractor") brief = brief[..^ending.Length];
        return brief;
    }

    /// <summary>A count in words up to twelve.</summary>
    public static string InWords(int count) => count is >= 0 and <= 12 ? Small[count] : count.ToString(CultureInfo.InvariantCulture);

    private static readonly string[] Small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>Numbers in runs: 1 to 4, 7 and 9.</summary>
    public static IReadOnlyList<(int First, int Last)> Runs(IReadOnlyList<int> numbers)
    {
        List<(int First, int Last)> runs = [];
        foreach (var number in numbers.Order())
        {
            if (runs.Count > 0 && runs[^1].Last == number - 1) runs[^1] = (runs[^1].First, number);
            else runs.Add((number, number));
        }
        return runs;
    }

    /// <summary>Matters by their numbers, each a link.</summary>
    public static Prose Matters(IReadOnlyList<int> numbers, int most = int.MaxValue)
    {
        static Run One(int number) => new($"{number}", $"matter-{number}");
        List<Run> said = [];
        var runs = Runs(numbers);
        foreach (var (first, last) in runs.Take(most))
        {
            if (said.Count > 0) said.Add(new Run(", "));
            said.AddRange(last == first ? [One(first)] : last == first + 1 ? [One(first), new Run(", "), One(last)] : [One(first), new Run(" to "), One(last)]);
        }
        if (runs.Count > most) said.Add(new Run(" and more"));
        return new Prose(said);
    }

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
