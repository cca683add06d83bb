using Purlin.Journal;

namespace Purlin.Office.Tests.Office;

/// <summary>Lines as devices write them.</summary>
internal static class Lines
{
    private static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    public static List<Entry> Notes(string inspection, string device, int count)
    {
        var pen = new Pen(inspection, device);
        return [.. Enumerable.Range(1, count).Select(number => pen.Write(new EntryBody.NoteWritten { Part = $"n{number}", Text = $"line {number} of {device}" }, Start.AddSeconds(number)))];
    }
}
