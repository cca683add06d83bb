namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>What is there, the house itself first (kind <c>house</c>, named by the opening entry).</summary>
    public IReadOnlyList<Component> Components { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Components with their facts, the house first.</summary>
    public static Gathered Components { get; } = new((state, inspection) => inspection with
    {
        Components =
        [
            .. Houses(state).Select(house => house.Component),
            .. Unringed(state.Each<EntryBody.ComponentAdded, Component>((line, body) => Of(state, line, body))),
        ],
    });

    private static Component Of(State state, Line line, EntryBody.ComponentAdded body)
    {
        var placed = state.Slots.Slot(new SlotKey("component.placed", line.Name, ""), move => (EntryBody.ComponentPlaced)move);
        var (place, part, of) = placed is { Value: var now } ? (now.Place, now.Part, now.Of) : (body.Place, body.Part, body.Of);
        return new Component
        {
            Id = line.Name,
            Kind = body.Kind,
            Place = place,
            Part = part,
            Of = of,
            Name = body.Name,
            Facts = Facts(state, line.Name)
        };
    }

    /// <summary>
    /// Two devices can each make one component a piece of the other; such a ring says nothing, so each in it, and what leads into it,
    /// stands by itself.
    /// </summary>
    private static List<Component> Unringed(List<Component> all)
    {
        if (!all.Exists(component => component.Of is not null)) return all;
        var over = all.ToDictionary(component => component.Id, component => component.Of);
        Dictionary<EntryName, bool> ends = [];
        foreach (var component in all)
        {
            List<EntryName> path = [];
            EntryName? at = component.Id;
            while (at is { } name && over.TryGetValue(name, out var next) && ends.TryAdd(name, false))
            {
                path.Add(name);
                at = next;
            }
            // Met again before it came to an end, or known never to come to one.
            var isRing = at is { } met && ends.TryGetValue(met, out var known) && !known;
            foreach (var name in path) ends[name] = !isRing;
        }
        return [.. all.Select(component => component.Of is { } of && (!over.ContainsKey(of) || !ends[component.Id])
            ? component with { Of = null } : component)];
    }

    private static Dictionary<string, Slot<Fact>> Facts(State state, EntryName owner)
    {
        Dictionary<string, Slot<Fact>> facts = new(StringComparer.Ordinal);
        foreach (var slot in state.Slots.FactsOf(owner)) facts[slot.Key.Which] = slot.As(body => FactOf((EntryBody.FactStated)body));
        return facts;
    }

    private static Fact FactOf(EntryBody.FactStated stated) => new(stated.Value, stated.Unit, stated.Basis);
}

/// <summary>A thing that is there, with its facts.</summary>
public sealed record Component
{
    /// <summary>The entry that added it.</summary>
    public required EntryName Id { get; init; }

    /// <summary>Kind as the rule book names it.</summary>
    public required string Kind { get; init; }

    /// <summary>Where it is; none for what runs through the whole house.</summary>
    public EntryName? Place { get; init; }

    /// <summary>The part of the house it says itself that it belongs to; see <see cref="Inspection.PartOf(Component)"/>.</summary>
    public EntryName? Part { get; init; }

    /// <summary>The component it is a piece of; none for what stands by itself, and where the pieces name one another in a ring.</summary>
    public EntryName? Of { get; init; }

    /// <summary>What tells it from its like.</summary>
    public string? Name { get; init; }

    /// <summary>Facts by name: <c>year</c>, <c>material</c>, ...</summary>
    public IReadOnlyDictionary<string, Slot<Fact>> Facts { get; init; } = new Dictionary<string, Slot<Fact>>();

    /// <summary>The fact to draw first; none when not recorded.</summary>
    public Fact? Fact(string name) => Facts.TryGetValue(name, out var slot) ? slot.Value : null;
}

/// <summary>A fact and how it is known.</summary>
/// <param name="Value">As written.</param>
/// <param name="Unit">Unit of a number that has one.</param>
/// <param name="Basis">See <see cref="Journal.Basis"/>.</param>
public sealed record Fact(FactValue Value, string? Unit, string Basis);
