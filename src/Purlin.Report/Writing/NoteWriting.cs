using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Report.Fonts;

namespace Purlin.Report.Writing;

/// <summary>Notes that go under a thing or a place, as they stand there.</summary>
internal sealed class NoteWriting(Record record)
{
    private readonly HashSet<SpokenNote> told = [];

    /// <summary>What was noted of a thing, one line a note.</summary>
    public IReadOnlyList<string> Under(EntryName thing)
    {
        SpokenNote[] here = [.. record.Judged.Notes.Where(note => note.Under == thing && note.Text.Length > 0)];
        told.UnionWith(here);
        return [.. here.Select(Line)];
    }

    /// <summary>What was noted of places, and of things that are in no table: all that <see cref="Under"/> has not told.</summary>
    public IEnumerable<Block> Elsewhere()
    {
        var rows = record.Judged.Notes.Where(note => note.Under is not null && note.Text.Length > 0 && !told.Contains(note))
            .GroupBy(note => record.PlaceName(note.Under) is { Length: > 0 } place ? place : record.Words.Say("report.the-house"))
            .Select(group => (IReadOnlyList<Prose>)[group.Key, string.Join('\n', group.Select(Line))]).ToList();
        if (rows.Count > 0) yield return new Block.Table(record.Words.Say("report.noted.table"), [record.Words.Say("report.column.place"), record.Words.Say("report.column.noted")], rows) { Shares = [0.3, 0.7], Fine = true };
    }

    private string Line(SpokenNote note) => record.Words.Say("report.noted", ("words", Phrase.End(Phrase.Sentence(Typesetting.Clean(note.Text)))));
}
