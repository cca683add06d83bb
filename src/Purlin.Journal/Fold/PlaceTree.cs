namespace Purlin.Journal.Fold;

/// <summary>
/// The tree of places after moves. Two devices can each put one place inside the other's; of the edges of such a ring the latest in causal
/// order is ignored and shown, and the place falls back to the next value that stands, then to where it was added.
/// </summary>
internal sealed class PlaceTree
{
    private readonly Dictionary<EntryName, Line> places = [];
    private readonly Dictionary<EntryName, Queue<Edge>> edges = [];
    private readonly Dictionary<EntryName, bool> parts;
    private readonly Slots slots;

    private PlaceTree(State state)
    {
        slots = state.Slots;
        // Whether it is the main part.
        parts = state.Of<EntryBody.PartAdded>().Where(line => line.Stands).ToDictionary(line => line.Name, _ => false);
        foreach (var line in state.Of<EntryBody.InspectionOpened>()) parts[line.Name] = true;
    }

    /// <summary>Rings that had to be cut.</summary>
    public List<Unsettled> Cut { get; } = [];

    public static PlaceTree Of(State state)
    {
        var tree = new PlaceTree(state);
        foreach (var line in state.Of<EntryBody.PlaceAdded>())
        {
            if (line.Stands) tree.places[line.Name] = line;
        }

        foreach (var line in tree.places.Values) tree.edges[line.Name] = tree.EdgesOf(line);
        tree.CutRings();
        tree.CutDepth();
        return tree;
    }

    public IReadOnlyList<Place> Places()
    {
        List<Place> all = [];
        foreach (var line in places.Values.OrderBy(line => line.Position))
        {
            var added = (EntryBody.PlaceAdded)line.Body;
            var edge = edges[line.Name].Peek();
            all.Add(new Place
            {
                Id = line.Name,
                Kind = added.Kind,
                Name = NameOf(line),
                Parent = edge.Parent,
                Storey = edge.Level is { } level
                    ? (int)Math.Floor(level) : added.Storey ?? (added.Level is { } first ? (int)Math.Floor(first) : null),
                Level = edge.Level ?? added.Level ?? added.Storey,
                Part = PartOf(line.Name),
                Order = edge.Order ?? added.Order ?? all.Count + 1,
            });
        }

        return all;
    }

    /// <summary>Its own part, else that of the place it is in; none for the main part.</summary>
    private EntryName? PartOf(EntryName place)
    {
        for (EntryName? at = place; at is { } name; at = edges[name].Peek().Parent)
            if ((edges[name].Peek().Part ?? ((EntryBody.PlaceAdded)places[name].Body).Part) is { } own
                && parts.TryGetValue(own, out var isMain)) return isMain ? null : own;
        return null;
    }

    private string NameOf(Line line) =>
        slots.At(new SlotKey("place.named", line.Name, "")) is [var first, ..]
        ? ((EntryBody.PlaceNamed)first.Body).Name : ((EntryBody.PlaceAdded)line.Body).Name;

    private Queue<Edge> EdgesOf(Line line)
    {
        Queue<Edge> all = [];
        foreach (var move in slots.At(new SlotKey("place.placed", line.Name, "")))
        {
            var placed = (EntryBody.PlacePlaced)move.Body;
            all.Enqueue(new Edge(Lifted(placed.Parent), placed.Order, move) { Part = placed.Part, Level = placed.Level });
        }

        all.Enqueue(new Edge(Lifted(((EntryBody.PlaceAdded)line.Body).Parent), null, line));
        all.Enqueue(new Edge(null, null, line));
        return all;
    }

    /// <summary>A parent that does not stand is no parent.</summary>
    private EntryName? Lifted(EntryName? parent) => parent is { } name && places.ContainsKey(name) ? name : null;

    private void CutRings()
    {
        HashSet<EntryName> settled = [];
        foreach (var start in places.Values.OrderBy(line => line.Position))
        {
            while (Ring(start.Name, settled) is { } ring)
            {
                var last = ring.MaxBy(name => edges[name].Peek().By.Position);
                var ignored = edges[last].Dequeue();
                Cut.Add(new Unsettled(
                    UnsettledKind.ParentCycle,
                    [ignored.By.Name, .. ring.Order()],
                    $"{string.Join(" and ", ring.Order().Select(name => $"“{NameOf(places[name])}”"))} were put inside one another; the later move ({ignored.By.Name}) is not followed. Place one of them again."));
            }
        }
    }

    /// <summary>
    /// A place put deeper than any house goes falls back like one in a ring: whoever walks up from it must come to an end soon.
    /// </summary>
    private void CutDepth()
    {
        Dictionary<EntryName, int> depths = [];
        foreach (var line in places.Values.OrderBy(line => line.Position))
        {
            List<EntryName> path = [];
            for (EntryName? at = line.Name; at is { } name && !depths.ContainsKey(name); at = edges[name].Peek().Parent) path.Add(name);
            path.Reverse();
            foreach (var name in path) depths[name] = Depth(name, depths);
        }
    }

    private int Depth(EntryName name, Dictionary<EntryName, int> depths)
    {
        if (edges[name].Peek().Parent is not { } parent) return 0;
        if (depths[parent] < Limits.PlaceDepth) return depths[parent] + 1;
        var by = edges[name].Peek().By.Name;
        edges[name] = new Queue<Edge>([new Edge(null, null, places[name])]);
        // Said once for a few of them: of nineteen thousand nobody reads more.
        if (Cut.Count < Limits.NamesInList)
            Cut.Add(new Unsettled(UnsettledKind.ParentCycle, [by, name],
                $"“{NameOf(places[name])}” was put more than {Limits.PlaceDepth} places deep; it stands by itself. Place it again."));
        return 0;
    }

    private List<EntryName>? Ring(EntryName start, HashSet<EntryName> settled)
    {
        List<EntryName> path = [];
        Dictionary<EntryName, int> steps = [];
        EntryName? at = start;
        while (at is { } name && !settled.Contains(name))
        {
            if (steps.TryGetValue(name, out var from)) return path[from..];
            steps[name] = path.Count;
            path.Add(name);
            at = edges[name].Peek().Parent;
        }

        settled.UnionWith(path);
        return null;
    }

    private sealed record Edge(EntryName? Parent, double? Order, Line By)
    {
        public EntryName? Part { get; init; }

        public double? Level { get; init; }
    }
}
