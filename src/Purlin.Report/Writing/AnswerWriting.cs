using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>The three questions of a buyer, answered from the record. The sentences are offered: the inspector may put others in their place.</summary>
internal sealed class AnswerWriting(ReportModel model)
{
    public IReadOnlyList<Answer> All() => [Live(), Settle(), Later()];

    private Answer Live()
    {
        int[] now = Due(ByWhen.Today);
        var lighter = model.Record.Matters.Count(finding => finding.Weight != Weight.MakeSafe && Consequence(finding) == Book.Consequence.Injury);
        if (now.Length == 0) return new Answer(Say("live.ask"), Say("live.none"), Say("live.none.words") + Touching(lighter));
        var words = Say(now.Length == 1 ? "live.one.words" : "live.some.words", ("count", Phrase.Sentence(Phrase.InWords(now.Length)))) + Touching(lighter);
        return new Answer(Say("live.ask"), Filled(now.Length == 1 ? "live.one" : "live.some", now), words);
    }

    private string Touching(int lighter) => lighter == 0 ? "" : " " + Say(lighter == 1 ? "live.lighter.one" : "live.lighter", ("count", Phrase.Sentence(Phrase.InWords(lighter))));

    private Answer Settle()
    {
        int[] bound = Due(ByWhen.BeforeBound);
        var limits = model.Record.Judged.Limitations.Count;
        var words = limits == 0 ? "" : Say(limits == 1 ? "settle.limit" : "settle.limits", ("count", Phrase.Sentence(Phrase.InWords(limits))));
        if (bound.Length == 0) return new Answer(Say("settle.ask"), Say("settle.none"), words);
        var reply = new Prose(new Run(Phrase.Sentence(Phrase.InWords(bound.Length)) + Say(bound.Length == 1 ? "settle.one" : "settle.some") + " ")).Then(Phrase.Matters(bound, 7)).Then(".");
        return new Answer(Say("settle.ask"), reply, string.Join(' ', new[] { Say("settle.words"), words }.Where(part => part.Length > 0)));
    }

    private Answer Later()
    {
        (ByWhen By, int Count)[] rest = [.. ByWhenWords.SoonestFirst.Where(by => by >= ByWhen.BeforeWinter).Select(by => (by, Due(by).Length)).Where(pair => pair.Item2 > 0)];
        var all = rest.Sum(pair => pair.Count);
        if (all == 0) return new Answer(Say("later.ask"), Say("later.none"), "");
        var words = Phrase.Sentence(Phrase.List([.. rest.Select(pair => $"{Phrase.InWords(pair.Count)} {pair.By.Word()}")]));
        return new Answer(Say("later.ask"), Say(all == 1 ? "later.one" : "later.some", ("count", Phrase.Sentence(Phrase.InWords(all)))), Phrase.End(words));
    }

    private Consequence? Consequence(Finding finding) => model.Record.Book.Conditions.GetValueOrDefault(finding.Condition)?.Weight.Consequence;

    private int[] Due(ByWhen by) => [.. model.Matters.Where(matter => matter.Due.By == by).Select(matter => matter.Number)];

    private Prose Filled(string key, int[] numbers)
    {
        // The numbers are links, so they are set where the sentence has its place for them.
        const string Place = "\uFFFC";
        var sentence = Say(key, ("matters", Place));
        var at = sentence.IndexOf(Place, StringComparison.Ordinal);
        return at < 0 ? sentence : new Prose(new Run(sentence[..at])).Then(Phrase.Matters(numbers, 4)).Then(sentence[(at + Place.Length)..]);
    }

    private string Say(string key, params ReadOnlySpan<Filled> filled) => model.Record.Book.Words.Say("answer." + key, filled);
}
