using Purlin.Book;

namespace Purlin.Report.Writing;

/// <summary>One sheet a trade: what it is asked to do and to answer, with room for price and date.</summary>
internal static class TradeWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var trades = model.Matters.Select(matter => matter.Trade).Concat(model.Matters.SelectMany(matter => matter.Questions).Select(question => question.Trade)).Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(trade => (Trade: trade, Jobs: Jobs(model, trade))).Where(one => one.Jobs.Count > 0)
            .OrderBy(one => one.Jobs.Min(job => job.Matter.Due.By)).ThenByDescending(one => one.Jobs.Count).ThenBy(one => one.Trade, StringComparer.Ordinal).ToArray();
        if (trades.Length == 0) yield break;
        yield return new Chapter("trades", "Whom to call", "One sheet a trade, to be handed on alone. Prices and days are for the trade to fill in.",
            [new Block.Table("", ["Trade", "Matters", "First wanted"], [.. trades.Select((one, index) => (IReadOnlyList<Prose>)
                [Prose.Link(Phrase.Sentence(one.Trade), $"trade-{index + 1}"), string.Join(", ", one.Jobs.Select(job => job.Matter.Number)), one.Jobs.Min(job => job.Matter.Due.By).Word()])]) { Shares = [0.36, 0.4, 0.24] }]);
        for (var index = 0; index < trades.Length; index++)
            yield return new Chapter($"trade-{index + 1}", Phrase.Sentence(trades[index].Trade), Lead(trades[index].Jobs), [new Block.Jobs(trades[index].Jobs)]) { Form = ChapterForm.Sheet };
    }

    private static string Lead(IReadOnlyList<Job> jobs)
    {
        var pressing = jobs.Count(job => job.Matter.Due.By <= ByWhen.BeforeBound);
        return $"{Phrase.Many(jobs.Count, "piece of work", "pieces of work")}{(pressing > 0 ? $", {pressing} of them before the buyer is bound" : "")}. What you find may call for more; please say so beside the line.";
    }

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
