namespace Purlin.Journal.Fold;

/// <summary>What a state line gives a value: kind of slot, whose it is, and which one of it.</summary>
internal readonly record struct SlotKey(string Type, EntryName? Of, string Which, string Part = "");

/// <summary>One slot: every line that states a value for it, and those of them whose values stand.</summary>
internal sealed class SlotLines(SlotKey key)
{
    public SlotKey Key { get; } = key;

    /// <summary>All lines of the slot, in causal order.</summary>
    public List<Line> Stated { get; } = [];

    /// <summary>Those that stand and that no later standing one replaces, in causal order.</summary>
    public List<Line> Standing { get; private set; } = [];

    /// <summary>Position of the first line that is not withdrawn, replaced or not: where the slot came up.</summary>
    public int First { get; private set; } = int.MaxValue;

    /// <summary>The first line that is not withdrawn, replaced or not; none when all are.</summary>
    public Line? FirstLine { get; private set; }

    /// <summary>
    /// A value stands while its line stands and no later standing line of the same slot names it in <c>replaces</c>. A replacer that is
    /// withdrawn replaces nothing, so undo brings back what was there.
    /// </summary>
    public void Settle()
    {
        Standing = Stated.FindAll(line => line.Stands);
        First = Standing.Count == 0 ? int.MaxValue : Standing[0].Position;
        FirstLine = Standing.Count == 0 ? null : Standing[0];
        if (Standing.Count < 2) return;
        Dictionary<EntryName, int> positions = [];
        foreach (var line in Standing) positions[line.Name] = line.Position;
        HashSet<EntryName> replaced = [];
        foreach (var line in Standing)
        {
            foreach (var name in ((EntryBody.Stating)line.Body).Replaces)
            {
                if (positions.TryGetValue(name, out var position) && position < line.Position) replaced.Add(name);
            }
        }

        Standing.RemoveAll(line => replaced.Contains(line.Name));
    }

    public Slot<T> As<T>(Func<EntryBody, T> value) =>
        new() { Standing = [.. Standing.Select(line => new Stated<T>(value(line.Body), line.Name, line.At) { Line = line })] };
}

/// <summary>The slots of an inspection, by key, by kind, and facts by whose they are.</summary>
internal sealed class Slots
{
    private readonly Dictionary<SlotKey, SlotLines> all = [];
    private readonly Dictionary<string, List<SlotLines>> byType = new(StringComparer.Ordinal);
    private readonly Dictionary<EntryName, List<SlotLines>> factsOf = [];

    public static Slots Of(List<Line> order)
    {
        var slots = new Slots();
        foreach (var line in order) slots.Add(line);
        foreach (var slot in slots.all.Values) slot.Settle();
        return slots;
    }

    /// <summary>Takes a line into its slot; none when it states nothing. The slot is to be settled afterwards.</summary>
    public SlotLines? Add(Line line)
    {
        if (line.Body is not EntryBody.Stating { Slot: var key }) return null;
        if (!all.TryGetValue(key, out var slot))
        {
            all[key] = slot = new SlotLines(key);
            Into(byType, key.Type, slot);
            if (key is { Type: "fact.stated", Of: { } owner }) Into(factsOf, owner, slot);
        }

        slot.Stated.Add(line);
        return slot;
    }

    /// <summary>Slots of one kind in which something stands, in the order in which they came up.</summary>
    public IEnumerable<SlotLines> OfType(string type) => InOrder(byType.GetValueOrDefault(type));

    /// <summary>Facts of one component, in the order in which they came up.</summary>
    public IEnumerable<SlotLines> FactsOf(EntryName component) => InOrder(factsOf.GetValueOrDefault(component));

    /// <summary>Slots in which several values stand, by the first of them.</summary>
    public IEnumerable<SlotLines> Diverging() =>
        all.Values.Where(slot => slot.Standing.Count > 1).OrderBy(slot => slot.Standing[0].Position);

    /// <summary>The slot of that key; none when nothing was stated.</summary>
    public SlotLines? Find(SlotKey key) => all.GetValueOrDefault(key);

    /// <summary>The lines standing in one slot; empty when nothing was stated.</summary>
    public IReadOnlyList<Line> At(SlotKey key) => all.TryGetValue(key, out var slot) ? slot.Standing : [];

    /// <summary>The slot as the contract shows it; none when nothing stands in it.</summary>
    public Slot<T>? Slot<T>(SlotKey key, Func<EntryBody, T> value) =>
        all.TryGetValue(key, out var slot) && slot.Standing.Count > 0 ? slot.As(value) : null;

    private static void Into<TKey>(Dictionary<TKey, List<SlotLines>> index, TKey key, SlotLines slot)
        where TKey : notnull
    {
        if (!index.TryGetValue(key, out var list)) index[key] = list = [];
        list.Add(slot);
    }

    private static IEnumerable<SlotLines> InOrder(List<SlotLines>? list) =>
        list is null ? [] : list.Where(slot => slot.Standing.Count > 0).OrderBy(slot => slot.First);
}
