using Purlin.Field.Device;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Report;

namespace Purlin.Field.Visits;

/// <summary>
/// The inspection that is open: its lines as the device keeps them, folded and judged. The fold follows each act at once; judgement
/// follows a moment later, so that the thumb never waits for it.
/// </summary>
public sealed class OpenVisit
{
    private readonly Phone phone;
    private readonly TimeProvider clock;
    private KeptLines lines;
    private JudgingMemory memory = new();
    private int version;
    private string at = "";

    public OpenVisit(Phone phone, TimeProvider clock)
    {
        this.phone = phone;
        this.clock = clock;
        lines = new KeptLines(phone, "");
        phone.OnWritten += OnWritten;
    }

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    public string Id { get; private set; } = "";

    public Inspection Inspection => lines.Fold.Inspection;

    /// <summary>The inspection as it was last worked through; none until the first time.</summary>
    public Work? Work { get; private set; }

    /// <summary>The latest judgement; none until the first is there.</summary>
    public JudgedInspection? Judged => Work?.Judged;

    /// <summary>What the undo bar names: the last act on this screen; none at first.</summary>
    public Act? Last { get; private set; }

    /// <summary>What of the inspection could not be read or judged, with what is safe and what to do; empty when all could.</summary>
    public string Trouble { get; private set; } = "";

    /// <summary>The last act that was begun here, for what must come after it: the photograph of what was just seen.</summary>
    public Task Settled { get; private set; } = Task.CompletedTask;

    /// <summary>Why the last act was not kept; empty when it was.</summary>
    public string Refused { get; private set; } = "";

    /// <summary>Lines that could not be read, in words.</summary>
    public IReadOnlyList<string> Unreadable => lines.Unreadable;

    /// <summary>The rule book with the inspection's own wording over it. Read when first asked for, since reading it takes a while on a phone.</summary>
    public RuleBook Book => memory.Laid.Of(RuleBook.BuiltIn, Inspection).Book;

    public IReadOnlyList<Entry> Entries => lines.Fold.Entries;

    /// <summary>Opens an inspection of this phone; nothing happens when it is open already.</summary>
    public async Task OpenAsync(string inspection)
    {
        if (Id == inspection) return;
        Id = inspection;
        (lines, memory) = (new KeptLines(phone, inspection), new JudgingMemory());
        (Work, Last, Refused, Trouble) = (null, null, "", "");
        await ReadOnAsync();
    }

    /// <summary>The person is on this screen now. The undo of an act on another one does not follow: a stale one would take back what nobody sees.</summary>
    public void ComeTo(string screen)
    {
        if (at == screen) return;
        at = screen;
        if (Last is null && Refused.Length == 0) return;
        (Last, Refused) = (null, "");
        Changed?.Invoke();
    }

    /// <summary>
    /// Writes acts as one, and gives their names once the disk has them; none when they were not kept. What an act replaces is worked out here
    /// for all of them, since forgetting it would set two answers side by side.
    /// </summary>
    public Task<IReadOnlyList<EntryName>> WriteAsync(string words, params IReadOnlyList<EntryBody> bodies)
    {
        var act = KeepAsync(words, bodies);
        Settled = act;
        return act;
    }

    private async Task<IReadOnlyList<EntryName>> KeepAsync(string words, IReadOnlyList<EntryBody> bodies)
    {
        var screen = at;
        var kept = await phone.WriteAsync(Id, words, [.. bodies.Select(Inspection.Replacing)]);
        return await TakeAsync(kept, words, screen);
    }

    /// <summary>Takes over what the device kept by itself: a photograph, a sound.</summary>
    public Task<IReadOnlyList<EntryName>> TakeAsync(Kept kept, string words) => TakeAsync(kept, words, at);

    private async Task<IReadOnlyList<EntryName>> TakeAsync(Kept kept, string words, string screen)
    {
        Refused = kept.Ok ? "" : kept.Words ?? "This was not kept. Everything before it is kept.";
        IReadOnlyList<EntryName> names = [.. kept.Names.Select(EntryName.Parse)];
        // What a field kept as one left it is no act of the screen one has come to meanwhile.
        if (kept.Ok && names.Count > 0 && screen == at) Last = new Act(names, words);
        await ReadOnAsync();
        return names;
    }

    /// <summary>The last act was written in the inspector's own book too, and is taken back there with it.</summary>
    public void LastIsInOwnBook(IReadOnlyList<EntryName> names)
    {
        if (Last is { } act) Last = act with { InOwnBook = names };
        Changed?.Invoke();
    }

    /// <summary>Takes back an act: each of its entries is withdrawn, nothing is deleted.</summary>
    public async Task UndoAsync(Act act)
    {
        var kept = await phone.WriteAsync(Id, "The undo", act.Undoing(Entries));
        var names = kept.Names;
        if (kept.Ok && act.InOwnBook.Count > 0) kept = await phone.WriteAsync(OwnWording.Journal, "The undo", act.TurningInOwnBook());
        Refused = kept.Ok ? "" : kept.Words ?? "";
        if (kept.Ok) Last = new Act([.. names.Select(EntryName.Parse)], act.Words) { IsUndo = !act.IsUndo, InOwnBook = act.InOwnBook };
        await ReadOnAsync();
    }

    /// <summary>Keeps what a part of the screen still held when it went away.</summary>
    public void Later(Func<Task> keep) => _ = LaterAsync(keep);

    private async Task LaterAsync(Func<Task> keep)
    {
        try
        {
            // What is done behind one's back is not the last act, neither of this screen nor of one that was come to meanwhile.
            var (screen, last) = (at, Last);
            await keep();
            if (screen != at) return;
            Last = last;
            Changed?.Invoke();
        }
        catch (Exception failed)
        {
            Tell($"What was entered last could not be kept ({failed.Message}). Everything with a tick is kept; enter it again.");
        }
    }

    private void OnWritten(string journal)
    {
        // The camera over the whole screen has an undo of its own: what was done before it is not the last act any more.
        if (journal.Length == 0) (Last, Refused) = (null, "");
        if (Id.Length > 0 && (journal == Id || journal.Length == 0)) _ = FollowAsync();
    }

    private async Task FollowAsync()
    {
        try
        {
            await ReadOnAsync();
        }
        catch (Exception failed)
        {
            Tell($"What was written last could not be read here ({failed.Message}). It is kept on the phone; open the inspection again to see it.");
        }
    }

    private void Tell(string trouble)
    {
        Trouble = trouble;
        Changed?.Invoke();
    }

    /// <summary>Reads what the device wrote since, and judges it soon. A step calls it that goes on from what the device wrote by itself: an edition that has come from the office.</summary>
    public async Task ReadOnAsync()
    {
        var mine = lines;
        var fresh = await mine.ReadOnAsync();
        // Another inspection may have been opened while the device was read.
        if (mine != lines) return;
        Changed?.Invoke();
        if (fresh) await JudgeSoonAsync();
    }

    private async Task JudgeSoonAsync()
    {
        var mine = ++version;
        await Task.Delay(30);
        if (mine != version) return;
        try
        {
            Work = WorkThrough();
            Trouble = "";
        }
        catch (Exception failed)
        {
            // What was judged before stays on the screen, and is said to be old.
            Tell($"What was recorded last could not be judged ({failed.Message}). It is kept; matters and open questions are shown as they stood before it. Go on, or take the last act back.");
            return;
        }
        Changed?.Invoke();
    }

    /// <summary>Works the inspection through now, when nothing did so yet, for pages that cannot be drawn without it.</summary>
    public Work WorkNow() => Work ??= WorkThrough();

    private Work WorkThrough() => Report.Work.Of(Inspection, Entries, RuleBook.BuiltIn, clock.GetLocalNow().Year, memory);
}
