using System.Globalization;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>Small turns of phrase that every chapter shares, in the language of the paper; rounding for people happens here and nowhere
/// before.</summary>
internal sealed partial class Phrase(Tongue words)
{
    // Links are set where the sentence has its place for them.
    private const string Here = "\uFFFC";

    /// <summary>The language as the standards name it.</summary>
    public string Language => words.Language;

    /// <summary>The sentences themselves.</summary>
    public Tongue Tongue => words;

    /// <summary>A sentence by key.</summary>
    public string Say(string key, params ReadOnlySpan<Filled> with) => words.Say(key, with);

    /// <summary>A sentence of an earlier room.</summary>
    public string Say(Said said) => words.Say(said);

    /// <summary>A sentence by key with links, or strong words, where it has its place for them.</summary>
    public Prose Linked(string key, string place, Prose what, params ReadOnlySpan<Filled> with)
    {
        var sentence = words.Say(key, [.. with, (place, Here)]);
        var at = sentence.IndexOf(Here, StringComparison.Ordinal);
        return at < 0 ? sentence : new Prose(new Run(sentence[..at])).Then(what).Then(sentence[(at + Here.Length)..]);
    }

    /// <summary>A word of a closed list, as it stands in the data unless the language has another for it.</summary>
    public string Word(string word) => words.Say(Said.InData("word." + word, word));

    /// <summary>By when, in words.</summary>
    public string Word(ByWhen by) => Word(by.Word());

    /// <summary>A weight in words.</summary>
    public string Word(Weight weight) => Word(weight.Word());

    /// <summary>A kind of component as the book names it, or what somebody called it.</summary>
    public string Kind(string kind) => words.Say(Said.InData("thing." + kind, kind));

    /// <summary>A place: those every inspection begins with are named in each language, the others as somebody named them.</summary>
    public string Place(string name)
    {
        var bare = name.TrimEnd(' ', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return bare.Length == 0 ? name : words.Say(Said.InData("place." + bare.ToLowerInvariant(), bare)) + name[bare.Length..];
    }

    /// <summary>First letter upper case.</summary>
    public static string Sentence(string text)
    {
        var at = text.Length > 1 && text[0] is '¿' or '¡' ? 1 : 0;
        return text.Length == 0 ? text : text[..at] + char.ToUpperInvariant(text[at]) + text[(at + 1)..];
    }

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
    public string Number(double value)
    {
        var size = Math.Abs(value);
        var key = size switch
        {
            0 => "report.number.0",
            < 0.01 => "report.number.5",
            < 1 => "report.number.3",
            < 10 => "report.number.2",
            < 10_000 => "report.number.1",
            _ => "report.number.large"
        };
        return words.Say(key, ("number", value));
    }

    /// <summary>An amount as it was written, with thousands set off.</summary>
    public string Amount(Amount amount) => WithUnit(Number(amount.Value), amount.Unit);

    /// <summary>A fact's value with its unit.</summary>
    public string Value(Fact fact)
    {
        if (fact.Value.Number is not { } number) return WithUnit(Word(fact.Value.Text), fact.Unit ?? "");
        // A year and its like bear no unit and stand as they were written.
        return fact.Unit is { Length: > 0 } unit ? WithUnit(Number(number), unit) : fact.Value.Text;
    }

    /// <summary>A number already written, with its unit.</summary>
    public string WithUnit(string number, string unit) => unit switch
    {
        "" => number,
        "one in" => words.Say("report.ratio", ("number", number)),
        _ => words.Say("language.unit", ("number", number), ("unit", words.Find("unit." + unit) ?? unit)),
    };

    /// <summary>How a fact is known, said so that a reader can weigh it.</summary>
    public string Basis(string basis) => basis switch
    {
        Journal.Basis.Nameplate => words.Say("report.basis.nameplate"),
        Journal.Basis.Measured => words.Say("report.basis.measured"),
        Journal.Basis.Seen => words.Say("report.basis.seen"),
        Journal.Basis.Told => words.Say("report.basis.told"),
        Journal.Basis.Presumed => words.Say("report.basis.presumed"),
        _ => basis,
    };

    /// <summary>Counts of many like things.</summary>
    public string Count(Sample sample) => words.Say("report.sample", ("tried", sample.Tried), ("of", sample.Of), ("failed", sample.Failed));

    /// <summary>What a weight asks of the reader.</summary>
    public string Meaning(Weight weight) => words.Say(weight switch
    {
        Weight.MakeSafe => "report.weight.make-safe",
        Weight.ActNow => "report.weight.act-now",
        Weight.PutRight => "report.weight.put-right",
        Weight.KeepUp => "report.weight.keep-up",
        _ => "report.weight.know-about",
    });

    /// <summary>Day and time, by the clock of the device, in the time of Greenwich: the record keeps no other.</summary>
    public string Moment(DateTimeOffset at)
    {
        var there = at.ToUniversalTime();
        return words.Say("report.moment", ("month", words.Say("language.months.short").Split(' ')[there.Month - 1]), ("day", there.Day),
            ("time", there.ToString("HH:mm", CultureInfo.InvariantCulture)));
    }

    /// <summary>A source as a reader can look it up: how it was remembered is a matter of the rule book.</summary>
    public static string Cited(string source) => Sentence(source.Replace(" (from memory)", "", StringComparison.Ordinal)
        .Replace(", from memory", "", StringComparison.Ordinal).Trim());

    /// <summary>What a part of a matter is called.</summary>
    public string Label(MatterPart kind) => words.Say(kind switch
    {
        MatterPart.Where => "report.part.where",
        MatterPart.What => "report.part.what",
        MatterPart.Seen => "report.part.seen",
        MatterPart.Why => "report.part.why",
        MatterPart.Do => "report.part.do",
        _ => "report.part.whom",
    });

    /// <summary>Which issue it is.</summary>
    public string Issue(EditionMark mark) => mark is EditionMark.Sealed issued ? words.Say("report.issue.edition", ("number",
        issued.Number)) : words.Say("report.issue.working");

    /// <summary>A count in words as far as the language has them.</summary>
    public string InWords(int count)
    {
        var small = words.Say("language.count-words").Split(' ');
        return count >= 0 && count < small.Length ? small[count] : count.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>A day as the language writes it.</summary>
    public string Day(DateOnly day) => words.Say("report.day", ("day", day));

    /// <summary>A list in words: a, b and c.</summary>
    public string List(IEnumerable<string> parts) => words.Say("report.list", ("list", SaidValue.Of(parts)));

    /// <summary>A list with nothing but what the language sets between its parts.</summary>
    public string Row(IEnumerable<string> parts) => words.Say("report.row", ("list", SaidValue.Of(parts)));
}
