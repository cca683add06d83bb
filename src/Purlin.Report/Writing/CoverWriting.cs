using Purlin.Journal.Fold;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

internal static class CoverWriting
{
    public static Cover Of(Record record, EditionMark mark)
    {
        var (opening, words) = (record.Inspection.Opening?.Body, record.Words);
        List<CoverCell> cells = [];
        void Say(CellKind kind, string label, string? text) { if (!string.IsNullOrWhiteSpace(text)) cells.Add(new CoverCell(kind, label, text)); }
        // What was stated later stands for what the opening left empty.
        string? Stated(string fact, string? held) => record.House?.Fact(fact)?.Value.Text is { Length: > 0 } text ? text : held;
        Say(CellKind.Client, words.Say("report.cover.client"), Joined(Stated("client", opening?.Client), Stated("client contact", null)));
        Say(CellKind.Inspector, words.Say("report.cover.inspector"), Joined(Stated("inspector", opening?.Inspector), Stated("licence number", null) is { } number ? words.Say("report.cover.license", ("number", number)) : null, Stated("licence ends", null) is { } ends ? words.Say("report.cover.valid", ("day", ends)) : null));
        Say(CellKind.Contact, words.Say("report.cover.contact"), Stated("inspector contact", null));
        Say(CellKind.Day, words.Say("report.cover.day"), opening is null ? null : words.Say("report.cover.hours", ("day", opening.Date), ("began", Stated("visit began", null) ?? ""), ("ended", Stated("visit ended", null) ?? "")));
        Say(CellKind.Weather, words.Say("report.cover.weather"), Stated("weather", opening?.Weather) is { } weather ? Phrase.Sentence(weather) : null);
        Say(CellKind.Present, words.Say("report.cover.present"), opening?.Present is { } present ? Phrase.Sentence(present) : null);
        Say(CellKind.Issue, words.Say("report.cover.issue"), mark is EditionMark.Sealed ? $"{words.Issue(mark)}, {words.Day(DateOnly.FromDateTime(mark.At.Date))}" : words.Issue(mark));
        List<string> marks = [];
        if (opening?.Demo == true) marks.Add(words.Say("report.invented"));
        if (mark is EditionMark.WorkingCopy) marks.Add(words.Issue(mark));
        if (words.Say("language.unconfirmed") is { Length: > 0 } unconfirmed) marks.Add(unconfirmed);
        return new Cover
        {
            Address = opening?.Property.Address ?? words.Say("report.cover.no-address"),
            House = House(record.Inspection, words),
            Cells = cells,
            Marks = marks,
            Seal = mark is EditionMark.Sealed issued ? Sealing.InGroups(issued.Root) : "",
            Made = mark is EditionMark.Sealed ? words.Say("report.cover.sealed", ("moment", words.Moment(mark.At))) : words.Say("report.cover.up-to", ("moment", words.Moment(mark.At))),
        };
    }

    private static string Joined(params string?[] parts) => string.Join(", ", parts.OfType<string>());

    private static string House(Inspection inspection, Phrase words)
    {
        if (inspection.Opening?.Body.Property is not { } property) return "";
        List<string> parts = [];
        if (property.YearBuilt is { } year) parts.Add(words.Say("report.house.built", ("year", $"{year}")));
        if (property.Storeys is { } stories) parts.Add(words.Say("report.house.stories", ("count", stories), ("words", words.InWords(stories))));
        if (property.FloorArea is { } area) parts.Add(words.Say("report.house.area", ("area", area.Value, area.Unit)));
        if (property.Foundation is { } foundation) parts.Add(foundation is "slab" or "crawl space" or "basement" or "piers" ? words.Say($"report.house.over.{foundation}") : words.Say("report.house.over", ("what", foundation)));
        if (property.RoofForm is { } roof) parts.Add(words.Say("report.house.roof", ("form", words.Word(roof))));
        return Phrase.Sentence(words.Row(parts));
    }
}
