namespace Purlin.Report.Writing;

/// <summary>Annex A: on what each matter rests, why it weighs what it weighs, and which rule its years speak of.</summary>
internal static class EvidenceWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        if (model.Matters.Count == 0) yield break;
        var words = model.Words;
        List<Block> blocks = [];
        foreach (var matter in model.Matters)
        {
            blocks.Add(new Block.Heading($"{matter.Number}. {matter.Title}") { Anchor = matter.EvidenceAnchor });
            blocks.Add(new Block.Paragraph(string.Join(' ', matter.Why)));
            if (matter.Trail.Count > 0) blocks.Add(new Block.Items([.. matter.Trail.Select(Line)]) { Fine = true });
            if (matter.ThenAndNow.Length > 0) blocks.Add(new Block.Paragraph(matter.ThenAndNow));
            if (References(matter, words) is { Count: > 0 } references) blocks.Add(new Block.Paragraph(references) { Aside = true });
        }
        yield return new Chapter("evidence", words.Say("report.evidence.title"), words.Say("report.evidence.lead"), blocks) { Form = ChapterForm.Annex };
    }

    private static Prose Line(TrailLine line) => $"{line.Text} [{line.Entry}{(line.At.Length > 0 ? $", {line.At}" : "")}]";

    private static Prose References(Matter matter, Phrase words)
    {
        List<Prose> parts = [Prose.Link(words.Say("report.matter", ("number", matter.Number)), matter.Anchor)];
        if (matter.Workings.Count > 0) parts.Add(words.Linked("report.reckoned-in", "workings", Prose.Join(", ", matter.Workings.Select(number => Prose.Link($"W{number}", $"working-{number}")))));
        if (matter.Sources.Count > 0) parts.Add(words.Linked("report.sources-of", "sources", Prose.Join(", ", matter.Sources.Select(number => Prose.Link($"S{number}", $"S{number}")))));
        return Prose.Join(". ", parts).Then(".");
    }
}
