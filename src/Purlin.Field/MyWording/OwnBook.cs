using Purlin.Field.Device;
using Purlin.Field.Visits;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;

namespace Purlin.Field.MyWording;

/// <summary>
/// The inspector's own sentences and conditions between visits: a journal of its own on this phone, kept, sent and merged like that of an
/// inspection, so that it outlives the phone. A new inspection takes over what it holds; a change made during a visit is written to both.
/// </summary>
public sealed class OwnBook
{
    private readonly Phone phone;
    private readonly KeptLines lines;
    private (Inspection Of, Overlay Overlay)? read;
    private (Overlay Of, IReadOnlyList<OverlayConflict> Conflicts)? looked;

    public OwnBook(Phone phone)
    {
        this.phone = phone;
        lines = new KeptLines(phone, OwnWording.Journal);
        phone.OnWritten += journal => { if (journal == OwnWording.Journal) _ = FollowAsync(); };
    }

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    public bool IsRead { get; private set; }

    public Inspection State => lines.Fold.Inspection;

    /// <summary>Everything of the inspector's own.</summary>
    public Overlay Overlay
    {
        get
        {
            if (read is not { } known || !ReferenceEquals(known.Of, State)) read = known = (State, OwnWording.Of(State));
            return known.Overlay;
        }
    }

    /// <summary>Where the rule book has moved on under it.</summary>
    public IReadOnlyList<OverlayConflict> Conflicts
    {
        get
        {
            if (looked is not { } known || !ReferenceEquals(known.Of, Overlay)) looked = known = (Overlay, RuleBook.BuiltIn.Lay(Overlay).Conflicts);
            return known.Conflicts;
        }
    }

    /// <summary>What can be taken back here; none after that or at the start.</summary>
    public Act? Last { get; private set; }

    /// <summary>Why the last act was not kept; empty when it was.</summary>
    public string Refused { get; private set; } = "";

    /// <summary>Reads what the phone holds and gives it.</summary>
    public async Task<Overlay> ReadAsync()
    {
        await lines.ReadOnAsync();
        IsRead = true;
        Changed?.Invoke();
        return Overlay;
    }

    private async Task FollowAsync()
    {
        try
        {
            await ReadAsync();
        }
        catch (Exception failed)
        {
            Refused = $"Your own words could not be read here ({failed.Message}). They are kept on the phone; open this screen again to see them.";
            Changed?.Invoke();
        }
    }

    /// <summary>Says a sentence so, from now on and in the inspection that is open; empty words give it back to the book.</summary>
    public async Task<bool> SayAsync(string key, string now, OpenVisit? visit)
    {
        await ReadAsync();
        var says = Sentence.In(RuleBook.BuiltIn, key) ?? "";
        if (now == says) now = "";
        var words = now.Length == 0 ? "Said as the book does" : $"Said my way: {now}";
        return await WriteAsync(words, OwnWording.Say(State, key, says, now), visit is null ? null : OwnWording.Say(visit.Inspection, key, says, now), visit);
    }

    /// <summary>Writes a condition of one's own, from now on and in the inspection that is open.</summary>
    public async Task<bool> WriteAsync(Condition own, OpenVisit? visit)
    {
        await ReadAsync();
        return await WriteAsync($"Own condition: {own.Name}", OwnWording.Write(State, own), visit is null ? null : OwnWording.Write(visit.Inspection, own), visit);
    }

    /// <summary>Gives a condition of one's own up. An inspection in which it was looked for keeps it: its evidence speaks of it.</summary>
    public async Task<bool> GiveUpAsync(string id, OpenVisit? visit)
    {
        await ReadAsync();
        var isUsed = visit?.Inspection.Observations.Any(look => look.Body.Condition == id) ?? true;
        return await WriteAsync("Own condition given up", OwnWording.GiveUp(State, id), isUsed ? null : OwnWording.GiveUp(visit!.Inspection, id), visit);
    }

    /// <summary>Takes over wording from elsewhere.</summary>
    public async Task<bool> TakeAsync(Overlay brought)
    {
        await ReadAsync();
        return await KeepAsync("Wording taken over", OwnWording.Entries(brought, State)) is not null;
    }

    public async Task UndoAsync()
    {
        if (Last is not { } act) return;
        var kept = await phone.WriteAsync(OwnWording.Journal, "The undo", act.Entries.Reverse().Select(name => new EntryBody.EntryWithdrawn { Entry = name }));
        Refused = kept.Ok ? "" : kept.Words ?? "";
        if (kept.Ok) Last = null;
        await ReadAsync();
    }

    private async Task<bool> WriteAsync(string words, EntryBody? own, EntryBody? inVisit, OpenVisit? visit)
    {
        IReadOnlyList<EntryName>? names = own is null ? [] : await KeepAsync(words, [own]);
        if (names is null) return false;
        if (inVisit is null || visit is null) return true;
        await visit.WriteAsync(words, inVisit);
        if (visit.Refused.Length > 0) return false;
        visit.LastIsInOwnBook(names);
        Last = null;
        return true;
    }

    private async Task<IReadOnlyList<EntryName>?> KeepAsync(string words, IReadOnlyList<EntryBody> bodies)
    {
        if (bodies.Count == 0) return [];
        var kept = await phone.WriteAsync(OwnWording.Journal, words, bodies);
        Refused = kept.Ok ? "" : kept.Words ?? "This was not kept. Everything before it is kept.";
        if (!kept.Ok) return null;
        IReadOnlyList<EntryName> names = [.. kept.Names.Select(EntryName.Parse)];
        Last = new Act(names, words);
        await ReadAsync();
        return names;
    }
}
