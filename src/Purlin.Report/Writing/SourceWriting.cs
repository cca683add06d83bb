namespace Purlin.Report.Writing;

/// <summary>The documents cited, once each.</summary>
internal static class SourceWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        if (model.SourceNumbers.Listed.Count == 0) yield break;
        yield return new Chapter("sources", model.Words.Say("report.sources.title"), model.Words.Say("report.sources.lead"),
            [new Block.Items([.. model.SourceNumbers.Listed.Select(source => (Prose)Phrase.End(source))]) { Numbered = true, Fine = true, Mark = "S" }])
        { Form = ChapterForm.Reference };
    }
}
