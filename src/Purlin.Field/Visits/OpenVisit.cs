using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Field.Device;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Judgement.Book;

namespace Purlin.Field.Visits;

/// <summary>An act of this phone that can be taken back.</summary>
public sealed record Act(IReadOnlyList<EntryName> Entries, string Words);

/// <summary>
/// The inspection that is open: its lines as the device keeps them, folded and judged. The fold follows each act at once; judgement
/// follows a moment later, so that the thumb never waits for it.
/// </summary>
public sealed class OpenVisit
{
    private readonly Phone phone;
    private readonly TimeProvider clock;
    private readonly List<Entry> entries = [];
    private readonly JudgingMemory memory = new();
    private readonly Dictionary<string, int> heads = new(StringComparer.Ordinal);
    private readonly HashSet<string> hashes = new(StringComparer.Ordinal);
    private int version;

    public OpenVisit(Phone phone, TimeProvider clock)
    {
        this.phone = phone;
        this.clock = clock;
        phone.OnWritten += inspection => { if (inspection == Id && Id.Length > 0) _ = ReadOnAsync(); };
    }

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    public string Id { get; private set; } = "";

    public Inspection Inspection { get; private set; } = Folding.Fold([]);

    /// <summary>The latest judgement; none until the first is there.</summary>
    public JudgedInspection? Judged { get; private set; }

    /// <summary>What the undo bar names; none after an undo or at the start.</summary>
    public Act? Last { get; private set; }

    /// <summary>Why the last act was not kept; empty when it was.</summary>
    public string Refused { get; private set; } = "";

    /// <summary>Lines that could not be read, in words.</summary>
    public IReadOnlyList<string> Unreadable => unreadable;

    private readonly List<string> unreadable = [];

    /// <summary>Read when first asked for, since reading it takes a while on a phone.</summary>
    public RuleBook Book => field ??= RuleBook.BuiltIn;

    public IReadOnlyList<Entry> Entries => entries;

    public int YearNow => clock.GetLocalNow().Year;

    /// <summary>Opens an inspection of this phone; nothing happens when it is open already.</summary>
    public async Task OpenAsync(string inspection)
    {
        if (Id == inspection) return;
        Id = inspection;
        entries.Clear();
        heads.Clear();
        hashes.Clear();
        unreadable.Clear();
        Judged = null;
        Last = null;
        Refused = "";
        await ReadOnAsync();
    }

    /// <summary>Writes acts as one, and gives their names once the disk has them; none when they were not kept.</summary>
    public async Task<IReadOnlyList<EntryName>> WriteAsync(string words, params IReadOnlyList<EntryBody> bodies)
    {
        var kept = await phone.WriteAsync(Id, words, bodies);
        return await TakeAsync(kept, words);
    }

    /// <summary>Takes over what the device kept by itself: a photograph, a sound.</summary>
    public async Task<IReadOnlyList<EntryName>> TakeAsync(Kept kept, string words)
    {
        Refused = kept.Ok ? "" : kept.Words ?? "This was not kept. Everything before it is kept.";
        IReadOnlyList<EntryName> names = [.. kept.Names.Select(EntryName.Parse)];
        if (kept.Ok && names.Count > 0) Last = new Act(names, words);
        await ReadOnAsync();
        return names;
    }

    /// <summary>Takes back an act: each of its entries is withdrawn, nothing is deleted.</summary>
    public async Task UndoAsync(Act act)
    {
        var kept = await phone.WriteAsync(Id, "The undo", [.. act.Entries.Reverse().Select(Undoing)]);
        Refused = kept.Ok ? "" : kept.Words ?? "";
        if (kept.Ok) Last = null;
        await ReadOnAsync();
    }

    // What undoes a withdrawal is a restoring, so that a change of mind brings back what stood before.
    private EntryBody Undoing(EntryName name) => entries.FirstOrDefault(entry => entry.Name == name)?.Body is EntryBody.EntryWithdrawn withdrawn
        ? new EntryBody.EntryRestored { Entry = withdrawn.Entry }
        : new EntryBody.EntryWithdrawn { Entry = name };

    /// <summary>Lets an entry that was taken back stand again.</summary>
    public Task<IReadOnlyList<EntryName>> RestoreAsync(EntryName entry) =>
        WriteAsync("Restored", new EntryBody.EntryRestored { Entry = entry });

    private async Task ReadOnAsync()
    {
        var known = new JsonObject(heads.Select(head => KeyValuePair.Create(head.Key, (JsonNode?)head.Value))).ToJsonString();
        var bytes = await phone.AskAsync<byte[]>("linesBeyond", Id, known);
        if (Add(bytes))
        {
            Inspection = Folding.Fold(entries);
            Changed?.Invoke();
            await JudgeSoonAsync();
        }
        else Changed?.Invoke();
    }

    private bool Add(byte[] bytes)
    {
        var before = entries.Count;
        var from = 0;
        for (var at = Array.IndexOf(bytes, (byte)10); at >= 0; at = Array.IndexOf(bytes, (byte)10, from))
        {
            AddLine(bytes.AsMemory(from, at - from));
            from = at + 1;
        }
        return entries.Count > before;
    }

    private void AddLine(ReadOnlyMemory<byte> line)
    {
        EntryLine.Read(line).Match(
            entry =>
            {
                if (!hashes.Add(entry.Hash)) return true;
                if (!heads.TryGetValue(entry.Name.Device, out var head) || head < entry.Name.Seq) heads[entry.Name.Device] = entry.Name.Seq;
                entries.Add(entry);
                return true;
            },
            refusals =>
            {
                unreadable.Add(string.Join("; ", refusals));
                return false;
            });
    }

    private async Task JudgeSoonAsync()
    {
        var mine = ++version;
        await Task.Delay(30);
        if (mine != version) return;
        Judged = Judging.Judge(Inspection, Book, YearNow, memory);
        Changed?.Invoke();
    }

    /// <summary>Judges now, for pages that cannot be drawn without it.</summary>
    public JudgedInspection JudgedNow() => Judged ??= Judging.Judge(Inspection, Book, YearNow, memory);
}
