using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>The paper of a second visit: every earlier matter with what became of it, the new evidence beside the old.</summary>
internal static class SecondWriting
{
    public static IEnumerable<Chapter> Of(ReportModel now, ReportModel earlier)
    {
        var words = now.Words;
        Comparing comparing = new(earlier.Record, now.Record);
        (Matter Matter, Compared Compared)[] all = [.. earlier.Matters.Zip(earlier.Record.Matters, (matter, finding) => (matter,
            comparing.Of(finding)))];
        yield return new Chapter("second", words.Say("report.second.title"), Lead(now, earlier, all.Select(one => one.Compared.Became)),
            [Table(all, words)]);
        if (all.Length > 0) yield return new Chapter("second-each", words.Say("report.second.each"), "", [.. Each(now, all)]);
        if (New(now, earlier) is { } table) yield return new Chapter("second-new", words.Say("report.second.new"),
            words.Say("report.second.new.lead"), [table]);
        foreach (var chapter in LimitationWriting.Of(now)) yield return chapter;
        foreach (var chapter in AboutWriting.Of(now)) yield return chapter;
    }

    private static string Lead(ReportModel now, ReportModel earlier, IEnumerable<Became> became)
    {
        var words = now.Words;
        var named = now.Record.Inspection.Opening?.Body.Earlier;
        var opened = earlier.Record.Inspection.Opening?.Body;
        var counts = became.CountBy(one => one).OrderBy(pair => pair.Key).Select(pair => words.Say("report.second.count", ("count",
            pair.Value), ("what", words.Say(Key(pair.Key)))));
        var first = named is null || named.Inspection != earlier.Record.Inspection.Id ? words.Say("report.second.unnamed")
            : named.Edition is { } edition ? words.Say("report.second.edition", ("number", edition), ("day", named.Date), ("seal",
                Edition.Sealing.InGroups(named.Seal ?? "")))
            : words.Say("report.second.visit", ("day", opened?.Date ?? named.Date));
        return $"{first} {Phrase.End(Phrase.Sentence(words.List(counts)))}";
    }

    private static string Key(Became became) => became switch
    {
        Became.Done => "report.second.done",
        Became.Partly => "report.second.partly",
        Became.NotDone => "report.second.not-done",
        Became.NotSeen => "report.second.not-seen",
        _ => "report.second.not-looked",
    };

    private static Block.Table Table((Matter Matter, Compared Compared)[] all, Phrase words) => new(words.Say("report.second.table"),
        [words.Say("report.column.matter"), words.Say("report.column.became"), words.Say("report.column.where"),
        words.Say("report.column.by-when")],
        [.. all.Select(one => (IReadOnlyList<Prose>)[Prose.Link($"{one.Matter.Number}. {one.Matter.Title}", $"second-{one.Matter.Number}"),
            new Prose(new Run(Phrase.Sentence(words.Say(Key(one.Compared.Became))), Strong: true)), string.Join(", ", one.Matter.Places),
            words.Word(one.Matter.Due.By)])])
    { Shares = [0.42, 0.2, 0.2, 0.18], Fine = true };

    private static IEnumerable<Block> Each(ReportModel now, (Matter Matter, Compared Compared)[] all)
    {
        var (record, words) = (now.Record, now.Words);
        var number = 0;
        foreach (var (matter, compared) in all)
        {
            yield return new Block.Heading($"{matter.Number}. {matter.Title}") { Anchor = $"second-{matter.Number}" };
            yield return new Block.Paragraph(new Prose(new Run(Phrase.Sentence(words.Say(Key(compared.Became))) + ". ", Strong: true),
                new Run(words.Say("report.second.asked", ("what", matter.Say(MatterPart.Do))))));
            Prose[] lines = [new Prose(new Run(words.Say("report.second.then") + " ", Strong: true), new Run(matter.Say(MatterPart.Seen))),
                .. compared.Evidence.Select(record.Say).Where(line => line.Length > 0).Select(line =>
                    new Prose(new Run(words.Say("report.second.now") + " ", Strong: true), new Run(line)))];
            yield return new Block.Items(lines) { Fine = true };
            // Old and new side by side, numbered anew: the numbers of the first paper lead nowhere here.
            Picture[] shown = [.. matter.Pictures.Take(1).Select(picture =>
                picture with { Caption = $"{words.Say("report.second.then")} {picture.Caption}" }),
                .. now.Taken(compared.Photos).Take(2).Select(picture =>
                    picture with { Caption = $"{words.Say("report.second.now")} {picture.Caption}" })];
            if (shown.Length > 0) yield return new Block.Pictures([.. shown.Select(picture => picture with { Number = ++number })]);
        }
    }

    // What the second visit found that the first did not speak of.
    private static Block.Table? New(ReportModel now, ReportModel earlier)
    {
        var known = earlier.Record.Matters.SelectMany(finding => finding.Grouped.Prepend(finding.Condition))
            .ToHashSet(StringComparer.Ordinal);
        Matter[] found = [.. now.Matters.Zip(now.Record.Matters, (matter, finding) => (matter, finding)).Where(one =>
            !known.Contains(one.finding.Condition)).Select(one => one.matter)];
        var words = now.Words;
        return found.Length == 0 ? null : new Block.Table("", [words.Say("report.column.matter"), words.Say("report.column.where"),
            words.Say("report.column.do"), words.Say("report.column.whom")],
            [.. found.Select(matter => (IReadOnlyList<Prose>)[matter.Title, matter.Say(MatterPart.Where), matter.Say(MatterPart.Do),
                words.Trade(matter.Trade)])])
        { Shares = [0.28, 0.18, 0.38, 0.16], Fine = true };
    }
}
