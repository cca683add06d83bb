namespace Purlin.Journal.Fold;

/// <summary>
/// The folded entries with all that was worked out on the way, so that a line which comes after all others costs only what it touches.
/// </summary>
internal sealed class Folded
{
    private readonly List<Strand> strands;
    private readonly List<Line> order;
    private readonly Dictionary<EntryName, Line> byName;
    private readonly Standing standing;
    private readonly Slots slots;
    private readonly State state;
    private readonly IReadOnlyList<Unsettled> doubts;
    private readonly bool forged;

    public Folded(string id, IReadOnlyList<Entry> distinct)
    {
        strands = Strands.Of(distinct);
        order = CausalOrder.Sort(strands, out forged);
        byName = new Dictionary<EntryName, Line>(order.Count);
        foreach (var line in order) byName[line.Name] = line;
        standing = Standing.Of(order, byName);
        slots = Slots.Of(order);
        state = new State(order, slots, byName);
        doubts = [.. Doubts.Of(strands, order, byName)];
        Inspection = state.Whole(id, strands, order) with
        {
            Unsettled = Unsettled(),
            Missing = Doubts.Missing(strands),
            Misread = Misread(),
            Entries = order.Count,
            Slots = slots,
        };
    }

    public Inspection Inspection { get; private set; }

    /// <summary>Takes in an entry that surely comes after all others and raises no doubt; false, and nothing taken, when that is not so.</summary>
    public bool TryAdd(Entry entry)
    {
        if (forged || entry.Body.OfKind.FoldsAnew || strands.Find(strand => strand.Device == entry.Name.Device) is not { } strand || !Continues(strand, entry)) return false;
        var line = CausalOrder.Next(strand, entry);
        if (!IsLast(line)) return false;
        // What a withdrawal can turn must be of a kind whose lists are known, down to the last thing that it lets stand again.
        if (!FollowsAll(line, [])) return false;

        line.Position = order.Count;
        strand.Entries.Add(entry);
        strand.Lines.Add(line);
        order.Add(line);
        byName[line.Name] = line;
        state.Add(line);
        slots.Add(line);
        var turned = standing.Add(line);
        Line[] touched = [line, .. turned];
        foreach (var one in touched)
            if (one.Body is EntryBody.Stating stating) slots.Find(stating.Slot)!.Settle();
        Inspection = state.After(Inspection, touched) with
        {
            Unsettled = Unsettled(),
            Withdrawn = turned.Count == 0 ? Inspection.Withdrawn : [.. order.Where(one => !one.Stands).Select(one => one.Name)],
            Misread = turned.Count == 0 && entry.Misread.Count == 0 ? Inspection.Misread : Misread(),
            Devices = [.. Inspection.Devices.Select(device => device.Id == strand.Device ? device with { Head = line.Name.Seq } : device)],
            Heads = new Dictionary<string, int>(Inspection.Heads, StringComparer.Ordinal) { [strand.Device] = line.Name.Seq },
            Entries = order.Count,
        };
        return true;
    }

    private IReadOnlyList<MisreadEntry> Misread() =>
        [.. order.Where(line => line.Stands).SelectMany(line => line.Entry.Misread.Select(what => new MisreadEntry(line.Name,
            line.Body.Type, what)))];

    private IReadOnlyList<Unsettled> Unsettled() => [.. state.Divergences(), .. state.Tree.Cut, .. standing.Disputes, .. doubts];

    private bool Continues(Strand strand, Entry entry) =>
        strands.TrueForAll(other => other == strand || other.Stem != strand.Stem)
        && strand.Lines is [.., var last] && last.Name.Seq == entry.Name.Seq - 1 && last.Entry.Hash == entry.Previous;

    /// <summary>After everything it knew, later by the clock than everything else, and before nothing that claims to have seen it.</summary>
    private bool IsLast(Line line)
    {
        foreach (var strand in strands)
        {
            if (strand.Lines is not [.., var last]) continue;
            // A clock that went back is to be told of, and may put it before others.
            if (Line.ByTime(line, strand.Latest()) < 0) return false;
            if (strand != line.Strand && last.Knew.TryGetValue(line.Name.Device, out var claimed) && claimed >= line.Name.Seq) return false;
        }

        return true;
    }

    private bool FollowsAll(Line line, HashSet<EntryName> met)
    {
        if (line.Body is not (EntryBody.EntryWithdrawn or EntryBody.EntryRestored)) return true;
        foreach (var name in line.References)
            if (met.Add(name) && byName.TryGetValue(name, out var target) && (target.Body.OfKind.FoldsAnew || !FollowsAll(target, met))) return false;
        return true;
    }
}
