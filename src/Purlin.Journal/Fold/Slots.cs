namespace Purlin.Journal.Fold;

/// <summary>What a state line gives a value: kind of slot, whose it is, and which one of it.</summary>
internal readonly record struct SlotKey(string Type, EntryName? Of, string Which, string Part = "");

/// <summary>
/// The slots: a value stands while its line stands and no later standing line of the same slot names it in <c>replaces</c>. A replacer that is
/// withdrawn replaces nothing, so undo brings back what was there.
/// </summary>
internal sealed class Slots
{
    private readonly Dictionary<SlotKey, List<Line>> standing = [];

    /// <summary>Every slot with the lines standing in it, in causal order.</summary>
    public IReadOnlyDictionary<SlotKey, List<Line>> Standing => standing;

    public static Slots Of(List<Line> order)
    {
        Dictionary<SlotKey, List<Line>> stated = [];
        foreach (var line in order)
        {
            if (!line.Stands || Key(line.Body) is not { } key) continue;
            if (!stated.TryGetValue(key, out var lines)) stated[key] = lines = [];
            lines.Add(line);
        }

        var slots = new Slots();
        foreach (var (key, lines) in stated)
        {
            if (lines.Count > 1) DropReplaced(lines);
            slots.standing[key] = lines;
        }

        return slots;
    }

    /// <summary>The lines standing in one slot; empty when nothing was stated.</summary>
    public IReadOnlyList<Line> At(SlotKey key) => standing.TryGetValue(key, out var lines) ? lines : [];

    /// <summary>The slot as the contract shows it; none when nothing was stated.</summary>
    public Slot<T>? Slot<T>(SlotKey key, Func<EntryBody, T> value) => standing.TryGetValue(key, out var lines) ? Slot(lines, value) : null;

    public static Slot<T> Slot<T>(IEnumerable<Line> lines, Func<EntryBody, T> value) =>
        new() { Standing = [.. lines.Select(line => new Stated<T>(value(line.Body), line.Name, line.At))] };

    public static SlotKey? Key(EntryBody body) => body switch
    {
        EntryBody.FactStated stated => new SlotKey(stated.Type, stated.Component, stated.Fact),
        EntryBody.PlaceNamed named => new SlotKey(named.Type, named.Place, ""),
        EntryBody.PlacePlaced placed => new SlotKey(placed.Type, placed.Place, ""),
        EntryBody.PhotoPlaced placed => new SlotKey(placed.Type, placed.Photo, ""),
        EntryBody.NoteWritten written => new SlotKey(written.Type, written.About, written.Part ?? ""),
        EntryBody.LooseEndTied tied => new SlotKey(tied.Type, null, tied.LooseEnd),
        EntryBody.JudgementOverruled overruled => new SlotKey(overruled.Type, null, overruled.Finding, overruled.Part),
        EntryBody.DutyMet met => new SlotKey(met.Type, null, met.Duty),
        _ => null,
    };

    private static void DropReplaced(List<Line> lines)
    {
        Dictionary<EntryName, int> positions = [];
        foreach (var line in lines) positions[line.Name] = line.Position;
        HashSet<EntryName> replaced = [];
        foreach (var line in lines)
        {
            foreach (var name in ((IStated)line.Body).Replaces)
            {
                if (positions.TryGetValue(name, out var position) && position < line.Position) replaced.Add(name);
            }
        }

        lines.RemoveAll(line => replaced.Contains(line.Name));
    }
}
