using Purlin.Journal.Fold;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

internal static class CoverWriting
{
    public const string Invented = "Invented data: a demonstration, no real house";

    public static Cover Of(Record record, EditionMark mark)
    {
        var opening = record.Inspection.Opening?.Body;
        List<Cell> cells = [];
        void Say(CellKind kind, string label, string? text) { if (!string.IsNullOrWhiteSpace(text)) cells.Add(new Cell(kind, label, text)); }
        // What was stated later stands for what the opening left empty.
        string? Stated(string fact, string? held) => record.House?.Fact(fact)?.Value.Text is { Length: > 0 } text ? text : held;
        Say(CellKind.Client, "Prepared for", Joined(Stated("client", opening?.Client), Stated("client contact", null)));
        Say(CellKind.Inspector, "Inspected by", Joined(Stated("inspector", opening?.Inspector), Stated("licence number", null) is { } number ? $"license {number}" : null, Stated("licence ends", null) is { } ends ? $"valid to {ends}" : null));
        Say(CellKind.Contact, "How to reach us", Stated("inspector contact", null));
        Say(CellKind.Day, "Day of the visit", opening is null ? null : $"{Phrase.Day(opening.Date)}{Hours(Stated("visit began", null), Stated("visit ended", null))}");
        Say(CellKind.Weather, "Weather", Stated("weather", opening?.Weather) is { } weather ? Phrase.Sentence(weather) : null);
        Say(CellKind.Present, "Who was there", opening?.Present is { } present ? Phrase.Sentence(present) : null);
        Say(CellKind.Issue, "Issue", mark is EditionMark.Sealed ? $"{mark.Line}, {Phrase.Day(DateOnly.FromDateTime(mark.At.Date))}" : mark.Line);
        List<string> marks = [];
        if (opening?.Demo == true) marks.Add(Invented);
        if (mark is EditionMark.WorkingCopy) marks.Add(mark.Line);
        return new Cover
        {
            Address = opening?.Property.Address ?? "Address not recorded",
            House = House(record.Inspection),
            Cells = cells,
            Marks = marks,
            Seal = mark is EditionMark.Sealed issued ? Sealing.InGroups(issued.Root) : "",
            Made = mark is EditionMark.Sealed ? $"Sealed {Phrase.Moment(mark.At)} UTC" : $"Record up to {Phrase.Moment(mark.At)} UTC",
        };
    }

    private static string Joined(params string?[] parts) => string.Join(", ", parts.OfType<string>());

    private static string Hours(string? began, string? ended) => (began, ended) switch
    {
        (null, null) => "",
        (null, _) => $", until {ended}",
        (_, null) => $", from {began}",
        _ => $", {began} to {ended}",
    };

    private static string House(Inspection inspection)
    {
        if (inspection.Opening?.Body.Property is not { } property) return "";
        List<string> parts = [];
        if (property.YearBuilt is { } year) parts.Add($"built {year}");
        if (property.Storeys is { } stories) parts.Add(stories == 1 ? "one story" : $"{Phrase.InWords(stories)} stories");
        if (property.FloorArea is { } area) parts.Add($"{area.Value:#,0} {area.Unit}");
        if (property.Foundation is { } foundation) parts.Add(foundation == "slab" ? "on a slab" : $"over {(foundation == "piers" ? "" : "a ")}{foundation}");
        if (property.RoofForm is { } roof) parts.Add($"{roof} roof");
        return Phrase.Sentence(string.Join(", ", parts));
    }
}
