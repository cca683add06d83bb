using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What the standard of practice asks: on paper the sections that are met, in words only what is not; line by line in the page.</summary>
internal static class CoverageWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        if (record.Judged.Coverage.Count == 0) yield break;
        List<Block> blocks = [];
        foreach (var coverage in record.Judged.Coverage)
        {
            var standard = record.Book.Standards.GetValueOrDefault(coverage.Standard);
            blocks.Add(new Block.Heading(standard?.Title ?? coverage.Title));
            if (standard?.Edition is { Length: > 0 } edition) blocks.Add(new Block.Paragraph(Phrase.End(edition)) { Aside = true });
            int Standing(DutyStanding state) => coverage.Duties.Count(duty => duty.State == state);
            blocks.Add(new Block.Paragraph($"{Phrase.Many(coverage.Duties.Count, "duty", "duties")}: {Standing(DutyStanding.Met)} met, {Standing(DutyStanding.Limited)} limited, {Standing(DutyStanding.NotPresent)} not present in this house, {Standing(DutyStanding.Open)} open."));
            blocks.Add(new Block.Folded("Duty by duty", [.. Whole(coverage, standard)], [.. Short(coverage)]));
        }
        yield return new Chapter("coverage", "What the standard asks", "The standard of practice obliges an inspector to look at, describe or state certain things. This is how each stands here.", blocks) { Form = ChapterForm.Reference };
    }

    private static IEnumerable<Block> Whole(Coverage coverage, Standard? standard)
    {
        var measures = (standard?.Duties ?? []).GroupBy(duty => duty.Id).ToDictionary(group => group.Key, group => group.SelectMany(duty => duty.Thresholds).ToArray());
        foreach (var system in coverage.Duties.GroupBy(duty => duty.System))
            yield return new Block.Table(Phrase.Sentence(system.Key), ["Section", "Duty, in our words", "How it stands"],
                [.. system.Select(duty => (IReadOnlyList<Prose>)[Section(duty), Phrase.End(duty.Text) + Measures(measures.GetValueOrDefault(duty.Section, [])), Phrase.End($"{Word(duty.State)}. {duty.Words}")])])
            { Shares = [0.24, 0.42, 0.34], Fine = true };
    }

    private static IEnumerable<Block> Short(Coverage coverage)
    {
        List<Prose> lines = [];
        foreach (var (state, word) in ((DutyStanding, string)[])[(DutyStanding.Met, "Met"), (DutyStanding.NotPresent, "Not present here")])
        {
            string[] sections = [.. coverage.Duties.Where(duty => duty.State == state).Select(Section).Distinct()];
            if (sections.Length > 0) lines.Add(new Prose(new Run(word, Strong: true), new Run($": {Together(sections)}.")));
        }
        lines.AddRange(coverage.Duties.Where(duty => duty.State is DutyStanding.Limited or DutyStanding.Open)
            .Select(duty => new Prose(new Run($"{Word(duty.State)}, {Section(duty)}", Strong: true), new Run($": {Phrase.End(duty.Text)} {Phrase.End(duty.Words)}"))));
        yield return new Block.Items(lines) { Fine = true };
    }

    // Sections of one rule: the part that they share is said once.
    private static string Together(IReadOnlyList<string> sections)
    {
        List<string> said = [];
        var before = "";
        foreach (var section in sections)
        {
            var at = section.IndexOf('(', StringComparison.Ordinal);
            var rule = at > 0 ? section[..at] : section;
            said.Add(rule == before && at > 0 ? section[at..] : section);
            before = rule;
        }
        return string.Join(", ", said);
    }

    private static string Word(DutyStanding state) => state switch { DutyStanding.Met => "Met", DutyStanding.Limited => "Limited", DutyStanding.NotPresent => "Not present", _ => "Open" };

    private static string Section(DutyState duty) => duty.Section;

    /// <summary>Measures that the standard names itself: below which width of opening nobody has to go in.</summary>
    private static string Measures(IReadOnlyList<Threshold> measures) => measures.Count == 0 ? "" : " It names: " + string.Join("; ", measures.Select(Measure)) + ".";

    private static string Measure(Threshold measure)
    {
        var than = measure.Comparison switch { "above" => "more than", "below" => "less than", "at_least" => "at least", "at_most" => "at most", _ => "" };
        var role = measure.Role switch { "defect_when" => ", to be reported", "exempt_when" => ", not asked for", "applies_when" => ", then it applies", "test_setup" => ", for the test", _ => "" };
        return $"{measure.Measure} {than} {measure.Value} {measure.Unit}".Replace("  ", " ", StringComparison.Ordinal).TrimEnd() + role;
    }
}
