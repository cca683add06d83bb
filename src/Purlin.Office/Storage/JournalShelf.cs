using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>
/// The journals of a tenant as the office works with them. The last few stay folded in memory; each use first asks the store how far the journal goes and reads
/// what it lacks, so that memory never says more or less than the disk, whoever else writes there. Journals wait for themselves only: one that takes long to
/// fold holds up none of the others, and not the writer.
/// </summary>
public sealed class JournalShelf(IJournals journals, ReceiptChain receipts, TimeProvider clock)
{
    private const int JournalsInMemory = 8;
    private const long BytesInMemory = 64L * 1024 * 1024;
    private const int Tries = 20;

    private readonly Lock turn = new();
    private readonly List<OpenJournal> shelf = [];

    /// <summary>Reads from a journal, alone with it. What is asked must be over when <paramref name="ask"/> returns.</summary>
    public async Task<T> With<T>(string inspection, Func<OpenJournal, T> ask, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(ask);
        return await Alone(inspection, (journal, _) => Task.FromResult(ask(journal)), cancel);
    }

    /// <summary>Takes what arrives, in one transaction: lines, held lines, receipt. Acknowledged only when this returns; none when the inspection was erased.</summary>
    public Task<Arrival?> Take(string inspection, LineBlock arriving, CancellationToken cancel) => Alone(
        inspection,
        async (journal, heads) =>
        {
            if (heads.ErasedAt is not null) return null;
            for (var tries = 0; ; tries++)
            {
                var admitted = Admission.Of(journal.Lines, arriving);
                if (admitted.Taken.Count + admitted.Held.Count == 0) return new Arrival(admitted, heads.Heads, heads.Receipt);
                if (await Add(journal, heads, admitted, null) is { } arrival) return arrival;
                heads = await Again(journal, tries);
            }
        },
        cancel);

    /// <summary>Lets the office's own pen write one line, with the edition it seals, in one transaction.</summary>
    /// <param name="inspection">Where.</param>
    /// <param name="write">Given the lines, makes the next one; may be asked again when somebody else wrote meanwhile.</param>
    /// <param name="cancel">Stops the wait, not the write.</param>
    public Task<Arrival> Write(string inspection, Func<EntrySet, (Entry Line, IssuedEdition Edition)> write, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(write);
        return Alone(
            inspection,
            async (journal, heads) =>
            {
                for (var tries = 0; ; tries++)
                {
                    var (line, edition) = write(journal.Lines);
                    if (await Add(journal, heads, new Admission { Taken = [line], Held = [], Waiting = [] }, edition) is { } arrival) return arrival;
                    heads = await Again(journal, tries);
                }
            },
            cancel);
    }

    private async Task<Arrival?> Add(OpenJournal journal, JournalHeads heads, Admission admitted, IssuedEdition? edition)
    {
        var now = clock.GetUtcNow();
        // The bytes of a delivery are let go: each line that stays gets its own.
        Entry[] taken = [.. admitted.Taken.Select(OnItsOwn)];
        HeldLine[] held = [.. admitted.Held.Select(line => line with { Raw = line.Raw.ToArray() })];
        var named = journal.Named(taken);
        var after = journal.With(taken, held);
        Appending what = new()
        {
            Inspection = journal.Inspection,
            Expected = heads.Root,
            Taken = named,
            Held = held,
            Outline = after.Outline(),
            Sign = link => receipts.Sign(link, journal.Inspection, after.Outline(), now),
            Edition = edition,
            At = now,
        };
        byte[]? receipt = null;
        var sign = what.Sign;
        if (!await journals.Append(what with { Sign = link => receipt = sign(link) })) return null;
        journal.Become(after, what.Outline.Root, heads.Position + taken.Length + held.Length);
        return new Arrival(admitted, what.Outline.Heads, receipt);
    }

    private static Entry OnItsOwn(Entry entry) => new()
    {
        Line = entry.Line.ToArray(),
        Hash = entry.Hash,
        Version = entry.Version,
        Inspection = entry.Inspection,
        Name = entry.Name,
        Hlc = entry.Hlc,
        Previous = entry.Previous,
        Seen = entry.Seen,
        Body = entry.Body,
    };

    private async Task<JournalHeads> Again(OpenJournal journal, int tries)
    {
        if (tries >= Tries) throw new IOException("the journal went on being written from elsewhere");
        var heads = await journals.Heads(journal.Inspection, CancellationToken.None);
        await journal.CatchUp(journals, heads, CancellationToken.None);
        return heads;
    }

    private async Task<T> Alone<T>(string inspection, Func<OpenJournal, JournalHeads, Task<T>> work, CancellationToken cancel)
    {
        var journal = Find(inspection);
        await journal.Turn.WaitAsync(cancel);
        try
        {
            var heads = await journals.Heads(inspection, cancel);
            await journal.CatchUp(journals, heads, cancel);
            // What is worked out from lines costs time by their number; the thread that answers others goes on meanwhile.
            return await Task.Run(() => work(journal, heads), CancellationToken.None);
        }
        catch
        {
            journal.Forget();
            throw;
        }
        finally
        {
            journal.Turn.Release();
            Trim();
        }
    }

    private OpenJournal Find(string inspection)
    {
        lock (turn)
        {
            var journal = shelf.Find(one => one.Inspection == inspection) ?? new OpenJournal(inspection);
            shelf.Remove(journal);
            shelf.Add(journal);
            return journal;
        }
    }

    /// <summary>Lets go of what was used longest ago. One that is in use is dropped from the shelf all the same: its user ends with it.</summary>
    private void Trim()
    {
        lock (turn)
        {
            while (shelf.Count > JournalsInMemory || (shelf.Count > 1 && shelf.Sum(journal => journal.Bytes) > BytesInMemory))
            {
                if (shelf.FindIndex(journal => journal.Turn.CurrentCount == 1) is var idle and >= 0 && idle < shelf.Count - 1) shelf.RemoveAt(idle);
                else return;
            }
        }
    }
}

/// <summary>What became of a delivery.</summary>
/// <param name="Admitted">Taken, held, waiting, turned away.</param>
/// <param name="Heads">What the office holds now.</param>
/// <param name="Receipt">The office's latest receipt for the inspection; none when it holds nothing.</param>
public sealed record Arrival(Admission Admitted, IReadOnlyDictionary<string, int> Heads, byte[]? Receipt);
