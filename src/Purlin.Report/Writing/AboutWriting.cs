using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>What the report is and is not, and which issues of it there are.</summary>
internal static class AboutWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, mark) = (model.Record, model.Mark);
        List<string> lines =
        [
            "It says what was seen, measured and tried on the day of the visit, in the parts that could be looked at without taking the house apart.",
            "It is not a promise about the future, about hidden parts, or about what nobody could see that day.",
            "It is not a check against the building code. Where a year or an edition is named, it tells when a rule was first asked for, as published. Local rules may differ; the local building office decides.",
            "It was made for the person it is prepared for. Others who read it may not know what was agreed; show it to whom you like, and let them ask us.",
            "A weight is worked out from what can come of a matter, how soon, and how far it spreads. The inspector can change it and then says why.",
            "Work on electricity, gas, structure, roofs and in tight spaces can hurt. Leave it to the trades named here.",
            "Facts that were told to us or presumed say so. They were not checked.",
        ];
        if (record.Judged.Coverage.Count > 0) lines.Insert(1, $"It follows: {Phrase.List([.. record.Judged.Coverage.Select(coverage => record.Book.Standards.GetValueOrDefault(coverage.Standard)?.Title ?? coverage.Title)])}.");
        var left = record.Judged.Findings.Count(finding => finding.LeftOut);
        if (left > 0) lines.Add($"{Phrase.Many(left, "judged matter was", "judged matters were")} left out by the inspector, each with a reason that is kept in the record.");
        List<Block> blocks = [new Block.Items([.. lines.Select(line => (Prose)line)]), Who(model.Cover)];
        if (record.Inspection.Opening?.Body.Demo == true) blocks.Insert(0, new Block.Paragraph(CoverWriting.Invented + ". House, people, readings and pictures were made up to show how the program works."));
        blocks.Add(new Block.Heading("Issues of this report"));
        blocks.AddRange(Issues(record, mark));
        blocks.Add(new Block.Paragraph($"Rule book {record.Judged.RuleBook}, hash {Sealing.InGroups(record.Book.Hash)}. {model.Cover.Made}. Record of {Phrase.Many(record.Inspection.Entries, "entry", "entries")}, inspection {record.Inspection.Id}.") { Aside = true });
        yield return new Chapter("about", "What this report is, and is not", "", blocks) { Form = ChapterForm.Reference };
    }

    private static Block.Table Who(Cover cover) => new("Who, when, and by whom.", ["", ""],
        [.. cover.Cells.Select(cell => (IReadOnlyList<Prose>)[cell.Label, cell.Text]), ["Signed, dated", "\n______________________________"]])
    { Shares = [0.32, 0.68], Fine = true };

    private static IEnumerable<Block> Issues(Record record, EditionMark mark)
    {
        if (record.Inspection.Editions.Count > 0)
            yield return new Block.Table("Editions that were sealed. A correction is a new edition; none is ever changed.", ["Edition", "Day", "Seal"],
                [.. record.Inspection.Editions.OrderBy(edition => edition.Body.Number).Select(edition => (IReadOnlyList<Prose>)[$"{edition.Body.Number}", Phrase.Day(new DateOnly(edition.Body.At.Year, edition.Body.At.Month, edition.Body.At.Day)), Sealing.InGroups(edition.Seal)])])
            { Shares = [0.14, 0.26, 0.6] };
        yield return mark switch
        {
            EditionMark.Sealed issued => new Block.Paragraph(Edition(issued)),
            _ => new Block.Paragraph("This is a working copy. It has not been issued and may still change. Do not rely on it."),
        };
    }

    private static string Edition(EditionMark.Sealed issued)
    {
        var day = Phrase.Day(new DateOnly(issued.At.Year, issued.At.Month, issued.At.Day));
        var key = issued.OfficeKey is { } print
            ? $" Fingerprint of the key the office signs with: {Sealing.InGroups(print)}. Hold an archive against it; a key that lies in the archive itself proves nothing."
            : "";
        return $"This is edition {issued.Number} of {day}. Root of the record it was made from: {Sealing.InGroups(issued.Root)}. "
            + "With this root and the archive anyone can check, with no network, that neither the record nor this report was altered since." + key;
    }
}
