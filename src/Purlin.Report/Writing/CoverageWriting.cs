using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What the standard of practice asks, line by line, and what was done about it.</summary>
internal static class CoverageWriting
{
    public static IEnumerable<Chapter> Of(Record record)
    {
        if (record.Judged.Coverage.Count == 0) yield break;
        List<Block> blocks = [];
        foreach (var coverage in record.Judged.Coverage)
        {
            int Standing(DutyStanding state) => coverage.Duties.Count(duty => duty.State == state);
            var standard = record.Book.Standards.GetValueOrDefault(coverage.Standard);
            blocks.Add(new Block.Heading(standard?.Title ?? coverage.Title));
            if (standard?.Edition is { Length: > 0 } edition) blocks.Add(new Block.Paragraph(Phrase.End(edition)) { Aside = true });
            blocks.Add(new Block.Paragraph($"{Phrase.Many(coverage.Duties.Count, "duty", "duties")}: {Standing(DutyStanding.Met)} met, {Standing(DutyStanding.Limited)} limited, {Standing(DutyStanding.NotPresent)} not present in this house, {Standing(DutyStanding.Open)} open."));
            foreach (var system in coverage.Duties.GroupBy(duty => duty.System))
                blocks.Add(new Block.Table(Phrase.Sentence(system.Key), ["Section", "Duty, in our words", "How it stands"], [.. system.Select(Row)]) { Shares = [0.24, 0.42, 0.34], Fine = true });
        }
        yield return new Chapter("coverage", "What the standard asks", "The standard of practice obliges an inspector to look at, describe or state certain things. This is how each stands here.", blocks);
    }

    private static IReadOnlyList<string> Row(DutyState duty)
    {
        var state = duty.State switch { DutyStanding.Met => "Met.", DutyStanding.Limited => "Limited.", DutyStanding.NotPresent => "Not present.", _ => "Open." };
        return [duty.Section + (duty.Mark.Length > 0 ? $" ({duty.Mark})" : ""), Phrase.End(duty.Text), Phrase.End($"{state} {(duty.State == DutyStanding.Limited ? duty.Words : Short(duty.Words))}")];
    }

    // A reason is never cut. A duty met in twenty places is met: the trail of each matter and the list of what was looked for say where.
    private static string Short(string words)
    {
        const int Most = 120;
        if (words.Length <= Most) return words;
        var cut = words.LastIndexOfAny([',', ';'], Most);
        return cut > Most / 2 ? $"{words[..cut]}, and more" : words;
    }
}
