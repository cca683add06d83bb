using Purlin.Book;

namespace Purlin.Report.Writing;

/// <summary>One sheet a trade: what it is asked to do and to answer, with room for price and date.</summary>
internal static class TradeWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var words = model.Words;
        var trades = model.Matters.Select(matter => matter.Trade).Concat(model.Matters.SelectMany(matter => matter.Questions).Select(question => question.Trade)).Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(trade => (Trade: trade, Jobs: Jobs(model, trade))).Where(one => one.Jobs.Count > 0)
            .OrderBy(one => one.Jobs.Min(job => job.Matter.Due.By)).ThenByDescending(one => one.Jobs.Count).ThenBy(one => one.Trade, StringComparer.Ordinal).ToArray();
        if (trades.Length == 0) yield break;
        yield return new Chapter("trades", words.Say("report.trades.title"), words.Say("report.trades.lead"),
            [new Block.Table("", [words.Say("report.column.trade"), words.Say("report.column.matters"), words.Say("report.column.first")], [.. trades.Select((one, index) => (IReadOnlyList<Prose>)
                [Prose.Link(Phrase.Sentence(words.TradeWhole(one.Trade)), $"trade-{index + 1}"), string.Join(", ", one.Jobs.Select(job => job.Matter.Number)), words.Word(one.Jobs.Min(job => job.Matter.Due.By))])]) { Shares = [0.36, 0.4, 0.24] }]);
        for (var index = 0; index < trades.Length; index++)
            yield return new Chapter($"trade-{index + 1}", Phrase.Sentence(words.TradeWhole(trades[index].Trade)), Lead(trades[index].Jobs, words), [new Block.Jobs(trades[index].Jobs)]) { Form = ChapterForm.Sheet };
    }

    private static string Lead(IReadOnlyList<Job> jobs, Phrase words) =>
        words.Say("report.trades.sheet", ("count", jobs.Count), ("pressing", jobs.Count(job => job.Matter.Due.By <= ByWhen.BeforeBound)));

    private static List<Job> Jobs(ReportModel model, string trade)
    {
        bool Same(string other) => string.Equals(other, trade, StringComparison.OrdinalIgnoreCase);
        List<Job> jobs = [];
        foreach (var matter in model.Matters.OrderBy(matter => matter.Due.By).ThenBy(matter => matter.Number))
        {
            List<string> asked = [.. Same(matter.Trade) ? (string[])[matter.Say(MatterPart.Do)] : [], .. matter.Questions.Where(question => Same(question.Trade)).Select(question => question.Ask)];
            if (asked.Count > 0) jobs.Add(new Job { Matter = matter, Asked = string.Join(' ', asked), Picture = matter.Pictures.Count > 0 ? matter.Pictures[0] : null });
        }
        return jobs;
    }
}
