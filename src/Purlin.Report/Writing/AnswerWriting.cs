using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>The three questions of a buyer, answered from the record. The sentences are offered: the inspector may put others in their
/// place.</summary>
internal sealed class AnswerWriting(ReportModel model)
{
    private readonly Phrase words = model.Words;

    public IReadOnlyList<Answer> All() => [Live(), Settle(), Later()];

    private Answer Live()
    {
        int[] now = Due(ByWhen.Today);
        var lighter = model.Record.Matters.Count(finding => finding.Weight != Weight.MakeSafe
            && Consequence(finding) == Book.Consequence.Injury);
        var touching = lighter == 0 ? null : Counted("answer.live.lighter", lighter);
        if (now.Length == 0) return new Answer(words.Say("answer.live.ask"), words.Say("answer.live.none"),
            Phrase.Join(words.Say("answer.live.none.words"), touching));
        return new Answer(words.Say("answer.live.ask"), words.Linked("answer.live.some", "matters", words.Matters(now, 4), ("count",
            now.Length)), Phrase.Join(Counted("answer.live.some.words", now.Length), touching));
    }

    private Answer Settle()
    {
        int[] bound = Due(ByWhen.BeforeBound);
        var limits = model.Record.Judged.Limitations.Count;
        var unseen = limits == 0 ? "" : Counted("answer.settle.limits", limits);
        if (bound.Length == 0) return new Answer(words.Say("answer.settle.ask"), words.Say("answer.settle.none"), unseen);
        var reply = words.Linked("answer.settle.some", "matters", words.Matters(bound, 7), ("count", bound.Length), ("words",
            Phrase.Sentence(words.InWords(bound.Length))));
        return new Answer(words.Say("answer.settle.ask"), reply, Phrase.Join(words.Say("answer.settle.words"), unseen));
    }

    private Answer Later()
    {
        (ByWhen By, int Count)[] rest = [.. ByWhenWords.SoonestFirst.Where(by => by >= ByWhen.BeforeWinter).Select(by => (by, Due(by)
            .Length)).Where(pair => pair.Item2 > 0)];
        var all = rest.Sum(pair => pair.Count);
        if (all == 0) return new Answer(words.Say("answer.later.ask"), words.Say("answer.later.none"), "");
        var each = Phrase.Sentence(words.List(rest.Select(pair => words.Say("answer.later.each", ("count", pair.Count), ("words",
            words.InWords(pair.Count)), ("when", words.Word(pair.By))))));
        return new Answer(words.Say("answer.later.ask"), Counted("answer.later.some", all), Phrase.End(each));
    }

    // A count both as a figure, for the plural, and in words.
    private string Counted(string key, int count) => words.Say(key, ("count", count), ("words", Phrase.Sentence(words.InWords(count))));

    private Consequence? Consequence(Finding finding) =>
        model.Record.Book.Conditions.GetValueOrDefault(finding.Condition)?.Weight.Consequence;

    private int[] Due(ByWhen by) => [.. model.Matters.Where(matter => matter.Due.By == by).Select(matter => matter.Number)];
}
