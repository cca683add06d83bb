using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>A journal in memory: its lines, and their state once somebody asks for it.</summary>
public sealed class OpenJournal
{
    private string root = "";
    private int position;
    private Outline? outline;
    private Inspection? state;

    internal OpenJournal(string inspection) => Lines = new EntrySet(inspection);

    /// <summary>The inspection.</summary>
    public string Inspection => Lines.Inspection;

    /// <summary>Its lines.</summary>
    public EntrySet Lines { get; private set; }

    /// <summary>Its state, folded when first asked for after a change.</summary>
    public Inspection State => state ??= Folding.Fold(Lines.Entries);

    internal SemaphoreSlim Turn { get; } = new(1);

    /// <summary>Bytes of its lines.</summary>
    internal long Bytes { get; private set; }

    internal Outline Outline() => outline ??= Storage.Outline.Of(Lines, State);

    /// <summary>Reads what the store holds beyond this.</summary>
    internal async Task CatchUp(IJournals journals, JournalHeads heads, CancellationToken cancel)
    {
        if (heads.ErasedAt is not null)
        {
            Forget();
            return;
        }

        if (heads.Root == root) return;
        var lines = await journals.Read(Inspection, position, cancel);
        List<Entry> entries = [];
        List<HeldLine> unread = [];
        foreach (var line in lines.Where(line => line.Why is null))
        {
            // What an older program took and this one would not is evidence all the same.
            var read = EntryLine.Read(line.Raw);
            if (read.IsAccepted) entries.Add(read.OrThrow());
            else unread.Add(HeldLine.Of(line.Raw, Inspection, read.Refusals));
        }

        var held = lines.Where(line => line.Why is not null).ToList();
        Become(LookAgain(With(entries, unread), held), heads.Root, lines.Count == 0 ? position : lines[^1].Position);
    }

    /// <summary>The same with these lines more, as an object of its own: this one does not change until it is known that they were kept.</summary>
    internal OpenJournal With(IReadOnlyCollection<Entry> taken, IReadOnlyCollection<HeldLine> held)
    {
        var after = new OpenJournal(Inspection) { Lines = EntrySet.Of(Inspection, Lines.Entries.Concat(taken), Lines.Held.Concat(held)) };
        after.Bytes = Bytes + taken.Sum(entry => (long)entry.Line.Length) + held.Sum(line => (long)line.Raw.Length);
        return after;
    }

    /// <summary>What those lines made of it has been kept.</summary>
    internal void Become(OpenJournal after, string root, int position)
    {
        (Lines, Bytes, state, outline) = (after.Lines, after.Bytes, after.state, after.outline);
        (this.root, this.position) = (root, position);
    }

    /// <summary>Drops what is in memory; the next use reads it anew.</summary>
    internal void Forget() => Become(new OpenJournal(Inspection), "", 0);

    /// <summary>A fork's second line bears a mark in the order of arrival: its key must differ, its bytes say the rest.</summary>
    internal IReadOnlyList<(string Device, Entry Entry)> Named(IReadOnlyList<Entry> taken)
    {
        Dictionary<EntryName, int> names = [];
        foreach (var entry in Lines.Entries) names[entry.Name] = names.GetValueOrDefault(entry.Name) + 1;
        List<(string, Entry)> named = [];
        foreach (var entry in taken)
        {
            var branch = names[entry.Name] = names.GetValueOrDefault(entry.Name) + 1;
            named.Add((branch == 1 ? entry.Name.Device : $"{entry.Name.Device}~{branch}", entry));
        }

        return named;
    }

    /// <summary>Lines that an older program had to hold and this one can read are taken now; their rows stay where they are. The others stay held.</summary>
    private static OpenJournal LookAgain(OpenJournal journal, List<KeptLine> kept)
    {
        List<Entry> readable = [];
        List<HeldLine> held = [];
        foreach (var line in kept)
        {
            var read = EntryLine.Read(line.Raw);
            if (read.IsAccepted && read.OrThrow() is { } entry && entry.Inspection == journal.Inspection) readable.Add(entry);
            held.Add(HeldLine.Of(line.Raw, journal.Inspection, [new Refusal("line", line.Why!, "see the words of the check")]));
        }

        var taken = Admission.Of(journal.Lines, new LineBlock { Entries = readable, Held = [] }).Taken;
        var hashes = taken.Select(entry => entry.Hash).ToHashSet(StringComparer.Ordinal);
        // What is still beyond a limit, or behind a gap, is held as before; a line that was taken is not.
        return journal.With(taken, [.. held.Where(line => !hashes.Contains(line.Hash))]);
    }
}
