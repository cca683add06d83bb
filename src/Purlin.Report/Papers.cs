using Purlin.Report.Writing;

namespace Purlin.Report;

/// <summary>Composes the papers of a model out of chapters.</summary>
internal static class Papers
{
    public const string MattersId = "matters";
    public const string FirstId = "first";

    public static Paper Of(ReportModel model, PaperKind kind, ReportModel? earlier = null) => new()
    {
        Kind = kind,
        Words = model.Words,
        Title = model.Words.Say(kind switch
        {
            PaperKind.Summary => "report.paper.summary",
            PaperKind.Trades => "report.paper.trades",
            PaperKind.Talk => "report.paper.talk",
            PaperKind.Second => "report.paper.second",
            PaperKind.Walk => "report.paper.walk",
            _ => "report.paper.report"
        }),
        Cover = model.Cover,
        Mark = model.Mark,
        Matters = kind is PaperKind.Second or PaperKind.Walk ? [] : model.Matters,
        Chapters = [.. kind switch
        {
            PaperKind.Summary => [First(model), .. StateWriting.Of(model), .. Beside(model)],
            PaperKind.Trades => TradeWriting.Of(model),
            PaperKind.Talk => TalkWriting.Of(model),
            PaperKind.Second => SecondWriting.Of(model, earlier ?? throw new ArgumentNullException(nameof(earlier),
                "a second visit is compared with the first")),
            PaperKind.Walk => WalkWriting.Of(model),
            _ => Report(model),
        }],
    };

    // Matters and limitations number the photographs, workings the sources: the order of writing is the order of reading.
    private static IEnumerable<Chapter> Report(ReportModel model) =>
    [
        First(model), .. StateWriting.Of(model), .. Beside(model), Map(model), Matters(model),
        .. SystemsWriting.Of(model), .. AboutWriting.Of(model), .. AroundVisitWriting.Of(model),
        .. EvidenceWriting.Of(model), .. ReadingWriting.Of(model), .. WorkingWriting.Of(model), .. FollowUpWriting.Of(model),
            .. ClearWriting.Of(model), .. CoverageWriting.Of(model), .. PhotoWriting.Of(model), .. SourceWriting.Of(model),
    ];

    private static Chapter First(ReportModel model) => new(FirstId, "", "",
    [
        new Block.Opening(new AnswerWriting(model).All(), model.Front) { Upright = model.Upright },
        .. model.Matters.Count > 0 ? (Block[])[new Block.MatterList([.. model.Matters.OrderBy(matter => matter.Due.By).ThenBy(matter =>
            matter.Number)])] : [],
    ]);

    private static IEnumerable<Chapter> Beside(ReportModel model)
    {
        foreach (var chapter in LimitationWriting.Of(model)) yield return chapter;
        Block[] ages = [.. SystemsWriting.AgeDrawing(model.Record)];
        if (ages.Length > 0) yield return new Chapter("ages", model.Words.Say("report.ages.title"), "", ages);
    }

    private static Chapter Map(ReportModel model) => new("house", model.Words.Say("report.map.title"), "", [new Block.Figure(model.Map,
        model.Words.Say("report.map.caption")) { Upright = model.Upright }]);

    private static Chapter Matters(ReportModel model) => new(MattersId, model.Words.Say("report.matters.title"), model.Matters.Count == 0
        ? model.Words.Say("report.matters.none") : "",
    [
        .. Cautions(model),
        .. model.Matters.GroupBy(matter => matter.Weight).SelectMany(group => (IEnumerable<Block>)
            [new Block.Weighing(Phrase.Sentence(model.Words.Word(group.Key)),
                model.Words.Meaning(group.Key)) { Anchor = $"weight-{(int)group.Key}" }, .. group.Select(matter =>
                new Block.Card(matter))]),
    ]);

    private static IEnumerable<Block> Cautions(ReportModel model)
    {
        if (model.Cautions.Count == 0) yield break;
        yield return new Block.Paragraph(new Prose([new Run(model.Words.Say("report.cautions") + " ", Strong: true),
            .. model.Cautions.SelectMany((words, index) => (Run[])[new Run($"{MatterWriting.Letter(index + 1)} ", Strong: true),
            new Run(Phrase.End(words) + " ")])]))
        { Aside = true, Anchor = "cautions" };
    }
}
