namespace Purlin.Journal.Fold;

/// <summary>
/// The lines by kind, of which the lists of an <see cref="Fold.Inspection"/> are gathered. What a line has become is remembered on it, so
/// that a list made again holds the same things, save those that changed.
/// </summary>
internal sealed class State
{
    private readonly Dictionary<Type, List<Line>> kinds = [];
    private readonly List<Line> takings = [];
    private PlaceTree? tree;
    private readonly IReadOnlyDictionary<EntryName, Line> byName;

    public State(List<Line> order, Slots slots, IReadOnlyDictionary<EntryName, Line> byName)
    {
        (Slots, this.byName) = (slots, byName);
        foreach (var line in order) Add(line);
    }

    /// <summary>Lines that take a proposal, standing or not.</summary>
    public IReadOnlyList<Line> Takings => takings;

    public Slots Slots { get; }

    /// <summary>The tree of places as it was last planted.</summary>
    public PlaceTree Tree => tree ??= PlaceTree.Of(this);

    /// <summary>Takes in a line that comes after all others.</summary>
    public void Add(Line line)
    {
        var kind = line.Body.GetType();
        if (!kinds.TryGetValue(kind, out var lines)) kinds[kind] = lines = [];
        lines.Add(line);
        if (line.Body.Origin is not null) takings.Add(line);
    }

    public Inspection Whole(string id, List<Strand> strands, List<Line> order)
    {
        var openings = Of<EntryBody.InspectionOpened>();
        var inspection = new Inspection
        {
            Id = id,
            Opening = openings.Find(line => line.Stands) is { } opening
                ? new Opening(opening.Name, (EntryBody.InspectionOpened)opening.Body) : null,
            Devices = [.. strands.Select(Device)],
            Editions = [.. Each<EntryBody.EditionSealed, SealedEdition>((line, body) => new SealedEdition(line.Name, body, line.Entry.Hash))
                .OrderBy(edition => edition.Body.Number)],
            Unknown = [.. Of<EntryBody.Unknown>().Where(line => line.Stands).Select(line => line.Name)],
            Withdrawn = [.. order.Where(line => !line.Stands).Select(line => line.Name)],
            Heads = strands.Where(strand => strand.Lines.Count > 0)
                .ToDictionary(strand => strand.Device, strand => strand.Lines[^1].Name.Seq, StringComparer.Ordinal),
        };
        foreach (var list in EntryKinds.Lists) inspection = list.Into(inspection, this);
        return inspection;
    }

    /// <summary>
    /// The inspection with the lists made again that hold one of these lines or rest on it. Not for kinds that fold everything anew.
    /// </summary>
    public Inspection After(Inspection before, IEnumerable<Line> touched)
    {
        HashSet<Gathered> changed = [];
        foreach (var line in touched)
        {
            changed.UnionWith(line.Body.OfKind.Touches);
            if (line.Body.Origin is not null) changed.Add(Gathered.Proposals);
            Forget(line);
        }

        foreach (var list in changed) before = list.Into(before, this);
        return before;
    }

    /// <summary>What a line became rests on what others say of it.</summary>
    private void Forget(Line line)
    {
        if (line.Body.Owner is { } owner && byName.TryGetValue(owner, out var owned)) owned.Item = null;
    }

    /// <summary>Slots with several values, of things that stand.</summary>
    public IEnumerable<Unsettled> Divergences()
    {
        Line[] openings = [.. Of<EntryBody.InspectionOpened>().Where(line => line.Stands)];
        if (openings.Length > 1)
            yield return new Unsettled(UnsettledKind.Divergence, [.. openings.Select(line => line.Name)],
                "The inspection was opened more than once. The first opening is used; take back the other.");
        foreach (var slot in Slots.Diverging())
        {
            var lines = slot.Standing;
            if (slot.Key is { Of: { } owner } && byName.TryGetValue(owner, out var owned) && !owned.Stands) continue;
            var question = ((EntryBody.Stating)lines[0].Body).Question;
            yield return new Unsettled(UnsettledKind.Divergence, [.. lines.Select(line => line.Name)],
                $"{lines.Count} values stand side by side: {question}. Choose one.");
        }
    }

    /// <summary>Plants the tree of places anew.</summary>
    public PlaceTree Planted() => tree = PlaceTree.Of(this);

    /// <summary>Slots of one kind in which something stands, by what tells them apart.</summary>
    public Dictionary<TKey, Slot<T>> Keyed<TKey, T>(string type, Func<SlotKey, TKey> name, Func<EntryBody, T> value)
        where TKey : notnull =>
        Slots.OfType(type).ToDictionary(slot => name(slot.Key), slot => slot.As(value));

    /// <summary>All lines of one kind, standing or not.</summary>
    public List<Line> Of<TBody>()
        where TBody : EntryBody => kinds.GetValueOrDefault(typeof(TBody)) ?? [];

    /// <summary>What the standing lines of one kind became; made where it was not there.</summary>
    public List<T> Each<TBody, T>(Func<Line, TBody, T> make)
        where TBody : EntryBody
        where T : class
    {
        List<T> all = [];
        foreach (var line in Of<TBody>())
            if (line.Stands) all.Add((T)(line.Item ??= make(line, (TBody)line.Body)));
        return all;
    }

    /// <summary>Whether an entry is of that kind, standing or not.</summary>
    public bool Is<TBody>(EntryName name)
        where TBody : EntryBody => byName.TryGetValue(name, out var line) && line.Body is TBody;

    private Device Device(Strand strand)
    {
        var joined = Of<EntryBody.DeviceJoined>().Find(line => line.Stands && line.Strand.Stem == strand.Stem);
        return new Device(strand.Device, (joined?.Body as EntryBody.DeviceJoined)?.Name, strand.Lines.Count > 0
            ? strand.Lines[^1].Name.Seq : 0);
    }
}
