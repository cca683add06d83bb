namespace Purlin.Report.Writing;

/// <summary>Annex A: on what each matter rests, why it weighs what it weighs, and which rule its years speak of.</summary>
internal static class EvidenceWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        if (model.Matters.Count == 0) yield break;
        List<Block> blocks = [];
        foreach (var matter in model.Matters)
        {
            blocks.Add(new Block.Heading($"{matter.Number}. {matter.Title}") { Anchor = matter.EvidenceAnchor });
            blocks.Add(new Block.Paragraph(string.Join(' ', matter.Why)));
            if (matter.Trail.Count > 0) blocks.Add(new Block.Items([.. matter.Trail.Select(Line)]) { Fine = true });
            if (matter.ThenAndNow.Length > 0) blocks.Add(new Block.Paragraph(matter.ThenAndNow));
            if (References(matter) is { Count: > 0 } references) blocks.Add(new Block.Paragraph(references) { Aside = true });
        }
        yield return new Chapter("evidence", "Annex. Evidence, matter by matter", "What was written down on site, with the name of each entry and its time (UTC, by the clock of the device). Anyone with the archive can check it.", blocks) { Form = ChapterForm.Annex };
    }

    private static Prose Line(TrailLine line) => $"{line.Text} [{line.Entry}{(line.At.Length > 0 ? $", {line.At}" : "")}]";

    private static Prose References(Matter matter)
    {
        List<Prose> parts = [Prose.Link($"Matter {matter.Number}", matter.Anchor)];
        if (matter.Workings.Count > 0) parts.Add(new Prose(new Run("Reckoned in ")).Then(Prose.Join(", ", matter.Workings.Select(number => Prose.Link($"W{number}", $"working-{number}")))));
        if (matter.Sources.Count > 0) parts.Add(new Prose(new Run("Sources ")).Then(Prose.Join(", ", matter.Sources.Select(number => Prose.Link($"S{number}", $"S{number}")))));
        return Prose.Join(". ", parts).Then(".");
    }
}
