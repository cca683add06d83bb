using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What the standard of practice asks: on paper the sections that are met, in words only what is not; line by line in the page.</summary>
internal static class CoverageWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        if (record.Judged.Coverage.Count == 0) yield break;
        List<Block> blocks = [];
        foreach (var coverage in record.Judged.Coverage)
        {
            var standard = record.Book.Standards.GetValueOrDefault(coverage.Standard);
            blocks.Add(new Block.Heading(standard?.Title ?? coverage.Title));
            if (standard?.Edition is { Length: > 0 } edition) blocks.Add(new Block.Paragraph(Phrase.End(edition)) { Aside = true });
            int Standing(DutyStanding state) => coverage.Duties.Count(duty => duty.State == state);
            blocks.Add(new Block.Paragraph(words.Say("report.duties.count", ("count", coverage.Duties.Count), ("met", Standing(DutyStanding.Met)), ("limited", Standing(DutyStanding.Limited)), ("absent", Standing(DutyStanding.NotPresent)), ("open", Standing(DutyStanding.Open)))));
            blocks.Add(new Block.Folded(words.Say("report.duties.each"), [.. Whole(coverage, standard, words)], [.. Short(coverage, words)]));
        }
        yield return new Chapter("coverage", words.Say("report.duties.title"), words.Say("report.duties.lead"), blocks) { Form = ChapterForm.Reference };
    }

    private static IEnumerable<Block> Whole(Coverage coverage, Standard? standard, Phrase words)
    {
        var measures = (standard?.Duties ?? []).GroupBy(duty => duty.Id).ToDictionary(group => group.Key, group => group.SelectMany(duty => duty.Thresholds).ToArray());
        foreach (var system in coverage.Duties.GroupBy(duty => duty.System))
            yield return new Block.Table(Phrase.Sentence(words.Word(system.Key)), [words.Say("report.column.section"), words.Say("report.column.duty"), words.Say("report.column.stands")],
                [.. system.Select(duty => (IReadOnlyList<Prose>)[Section(duty), Phrase.End(duty.Text) + Measures(measures.GetValueOrDefault(duty.Section, []), words), Phrase.End($"{Word(duty.State, words)}. {duty.Words}")])])
            { Shares = [0.24, 0.42, 0.34], Fine = true };
    }

    private static IEnumerable<Block> Short(Coverage coverage, Phrase words)
    {
        List<Prose> lines = [];
        foreach (var (state, word) in ((DutyStanding, string)[])[(DutyStanding.Met, words.Say("report.duty.met")), (DutyStanding.NotPresent, words.Say("report.duty.absent.here"))])
        {
            string[] sections = [.. coverage.Duties.Where(duty => duty.State == state).Select(Section).Distinct()];
            if (sections.Length > 0) lines.Add(new Prose(new Run(word, Strong: true), new Run($": {Together(sections)}.")));
        }
        lines.AddRange(coverage.Duties.Where(duty => duty.State is DutyStanding.Limited or DutyStanding.Open)
            .Select(duty => new Prose(new Run($"{Word(duty.State, words)}, {Section(duty)}", Strong: true), new Run($": {Phrase.End(duty.Text)} {Phrase.End(duty.Words)}"))));
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

    private static string Word(DutyStanding state, Phrase words) =>
        words.Say(state switch { DutyStanding.Met => "report.duty.met", DutyStanding.Limited => "report.duty.limited", DutyStanding.NotPresent => "report.duty.absent", _ => "report.duty.open" });

    private static string Section(DutyState duty) => duty.Section;

    /// <summary>Measures that the standard names itself: below which width of opening nobody has to go in.</summary>
    private static string Measures(IReadOnlyList<Threshold> measures, Phrase words) =>
        measures.Count == 0 ? "" : " " + words.Say("report.measures", ("measures", SaidValue.Of(measures.Select(measure => Measure(measure, words)))));

    private static string Measure(Threshold measure, Phrase words)
    {
        var than = measure.Comparison switch { "above" => words.Say("report.measure.above"), "below" => words.Say("report.measure.below"), "at_least" => words.Say("report.measure.at-least"), "at_most" => words.Say("report.measure.at-most"), _ => "" };
        var role = measure.Role switch { "defect_when" => words.Say("report.measure.defect"), "exempt_when" => words.Say("report.measure.exempt"), "applies_when" => words.Say("report.measure.applies"), "test_setup" => words.Say("report.measure.test"), _ => "" };
        return $"{measure.Measure} {than} {measure.Value} {measure.Unit}".Replace("  ", " ", StringComparison.Ordinal).TrimEnd() + role;
    }
}
