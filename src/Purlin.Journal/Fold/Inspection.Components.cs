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
            .. state.Each<EntryBody.InspectionOpened, Component>((line, _) => new Component { Id = line.Name, Kind = "house", Facts = Facts(state, line.Name) }),
            .. state.Each<EntryBody.ComponentAdded, Component>((line, body) => Of(state, line, body)),
        ],
    });

    private static Component Of(State state, Line line, EntryBody.ComponentAdded body) =>
        new() { Id = line.Name, Kind = body.Kind, Place = body.Place, Name = body.Name, Facts = Facts(state, line.Name) };

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
