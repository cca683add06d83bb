using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>What the law of a state wants printed: its notice word by word, and the matters under its own words.</summary>
internal static class StateWriting
{
    /// <summary>A summary page for each standard that sets a notice; none where no standard does.</summary>
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var words = model.Words;
        foreach (var standard in Standards(model.Record).Where(standard => standard.Summary is not null))
        {
            List<Block> blocks = [new Block.Paragraph(new Prose(new Run(standard.Summary!.Notice, Strong: true))),
                new Block.Paragraph(words.Say("report.state.source", ("source", standard.Summary.Source))) { Aside = true }];
            foreach (var term in standard.Terms)
            {
                Matter[] meant = [.. model.Matters.Where(matter => term.Weights.Contains(matter.Weight))];
                blocks.Add(new Block.Heading(words.Say("report.state.term", ("term", term.Says), ("count", meant.Length))));
                if (meant.Length > 0) blocks.Add(Table(meant, words));
            }
            yield return new Chapter($"state-{standard.Id}", words.Say("report.state.title", ("state", standard.Short)),
                words.Say("report.state.lead"), blocks);
        }
    }

    /// <summary>How the words of the standards answer to the weights, one line a word.</summary>
    public static IEnumerable<string> Terms(Record record) =>
        from standard in Standards(record)
        from term in standard.Terms
        select record.Words.Say("report.state.means", ("standard", standard.Short), ("term", term.Says), ("section", term.Section),
            ("weights", SaidValue.Of(term.Weights.Select(record.Words.Word))));

    private static IEnumerable<Standard> Standards(Record record) => record.Judged.Coverage.Select(coverage =>
        record.Book.Standards.GetValueOrDefault(coverage.Standard)).OfType<Standard>();

    private static Block.Table Table(IReadOnlyList<Matter> matters, Phrase words) => new("", [words.Say("report.column.state.part"),
        words.Say("report.part.seen"), words.Say("report.part.why"), words.Say("report.part.do")],
        [.. matters.Select(matter => (IReadOnlyList<Prose>)[Prose.Link($"{matter.Number}. {matter.Title}", matter.Anchor)
            .Then($"\n{matter.Say(MatterPart.Where)}"), matter.Say(MatterPart.Seen), matter.Say(MatterPart.Why),
            Phrase.Join(matter.Say(MatterPart.Do), $"{Phrase.Sentence(words.TradeWhole(matter.Trade))}.")])])
    { Shares = [0.22, 0.28, 0.24, 0.26], Fine = true };
}
