namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Parts of the house, the main part first; none before the inspection is opened.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>The part of the house that a place or component belongs to: the main part for what says none; none before the inspection is opened.</summary>
    public Part? PartOf(EntryName? thing)
    {
        if (Parts.Count < 2 || thing is not { } name) return Parts.Count > 0 ? Parts[0] : null;
        foreach (var part in Parts)
            if (part.Id == name) return part;
        foreach (var place in Places)
            if (place.Id == name) return Part(place.Part);
        foreach (var component in Components)
            if (component.Id == name) return PartOf(component);
        return Parts[0];
    }

    /// <summary>The part of the house that a component belongs to: its own, else that of its place.</summary>
    public Part? PartOf(Component component)
    {
        ArgumentNullException.ThrowIfNull(component);
        return component.Part is { } own && Parts.Any(part => part.Id == own) ? Part(own) : PartOf(component.Place);
    }

    /// <summary>The year of the part of the house that a place or component belongs to, and how it is known; none when not recorded.</summary>
    public Fact? YearOf(EntryName? thing) => PartOf(thing)?.Year;

    private Part? Part(EntryName? name) => Parts.FirstOrDefault(part => part.Id == name) ?? (Parts.Count > 0 ? Parts[0] : null);
}

internal sealed partial class Gathered
{
    /// <summary>Parts of the house.</summary>
    public static Gathered Parts { get; } = new((state, inspection) => inspection with
    {
        Parts =
        [
            .. Houses(state).Take(1).Select(house => house.Main),
            .. state.Each<EntryBody.PartAdded, Part>((line, body) => PartOf(state, line, body)),
        ],
    });

    private static List<House> Houses(State state) => state.Each<EntryBody.InspectionOpened, House>((line, body) =>
    {
        var facts = Facts(state, line.Name);
        return new House(new Component { Id = line.Name, Kind = "house", Facts = facts }, MainOf(state, line, body.Property, facts));
    });

    /// <summary>What was known of the property before any part was spoken of is known of the main part, as told.</summary>
    private static Part MainOf(State state, Line line, Property property, IReadOnlyDictionary<string, Slot<Fact>> facts) => new()
    {
        Id = line.Name,
        Kind = PartKind.Main,
        Name = facts.GetValueOrDefault("name")?.Value.Value.Text ?? "Main house",
        Facts = facts,
        Levels = LevelsOf(state, line.Name) ?? LevelsOf(property),
        Claddings = CladdingsOf(state, line.Name),
        Told = Told(property),
    };

    private static Part PartOf(State state, Line line, EntryBody.PartAdded body)
    {
        var facts = Facts(state, line.Name);
        return new Part
        {
            Id = line.Name,
            Kind = body.Kind,
            Name = facts.GetValueOrDefault("name")?.Value.Value.Text ?? body.Name,
            Joins = body.Joins,
            Side = body.Side,
            Facts = facts,
            Levels = LevelsOf(state, line.Name) ?? [],
            Claddings = CladdingsOf(state, line.Name),
        };
    }

    private static IReadOnlyList<Level>? LevelsOf(State state, EntryName part) =>
        state.Slots.At(new SlotKey("part.leveled", part, "")) is [var line, ..] ? ((EntryBody.PartLeveled)line.Body).Levels : null;

    private static IReadOnlyList<Level> LevelsOf(Property property)
    {
        if (property.Storeys is not { } storeys) return [];
        var above = Enumerable.Range(0, Math.Clamp(storeys, 1, 4)).Select(at => new Level(at, LevelForm.Full));
        return property.Foundation == "basement" ? [new Level(-1, LevelForm.Full, "Basement"), .. above] : [.. above];
    }

    private static Dictionary<string, Slot<EntryBody.PartClad>> CladdingsOf(State state, EntryName part)
    {
        Dictionary<string, Slot<EntryBody.PartClad>> sides = new(StringComparer.Ordinal);
        foreach (var side in PartSide.Walls)
            if (state.Slots.Slot(new SlotKey("part.clad", part, side), body => (EntryBody.PartClad)body) is { } slot) sides[side] = slot;
        return sides;
    }

    private static Dictionary<string, Fact> Told(Property property)
    {
        Dictionary<string, Fact> told = new(StringComparer.Ordinal);
        if (property.YearBuilt is { } year) told["year"] = new Fact(FactValue.Of((double)year), null, Basis.Told);
        if (property.Foundation is { } foundation) told["foundation"] = new Fact(FactValue.Of(foundation), null, Basis.Told);
        if (property.RoofForm is { } form) told[Part.RoofFormFact] = new Fact(FactValue.Of(form), null, Basis.Told);
        if (property.RoofPitch is { } pitch) told["roof pitch"] = new Fact(FactValue.Of(pitch), "in 12", Basis.Told);
        if (property.Attic is { } attic) told["attic"] = new Fact(FactValue.Of(attic), null, Basis.Told);
        return told;
    }
}

/// <summary>What the opening entry became: the house as a component, and its main part.</summary>
internal sealed record House(Component Component, Part Main);

/// <summary>A part of the house. Evidence of one part never answers for another.</summary>
public sealed record Part
{
    /// <summary>The entry that added it; the opening entry for the main part.</summary>
    public required EntryName Id { get; init; }

    /// <summary>See <see cref="PartKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>The part it joins; none for the main part, and for one that joins the main part.</summary>
    public EntryName? Joins { get; init; }

    /// <summary>On which side of that, see <see cref="PartSide"/>.</summary>
    public string? Side { get; init; }

    /// <summary>Facts stated of it by name: <c>year</c>, <c>foundation</c>, <c>roof form</c>, <c>roof pitch</c>, ...</summary>
    public IReadOnlyDictionary<string, Slot<Fact>> Facts { get; init; } = new Dictionary<string, Slot<Fact>>();

    /// <summary>Its levels, the lowest first; empty when not recorded.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>What each side is clad with, by <see cref="PartSide.Walls"/>; sides that nobody spoke of are not in it.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.PartClad>> Claddings { get; init; } = new Dictionary<string, Slot<EntryBody.PartClad>>();

    /// <summary>What was told of it before the visit, where nothing was stated on site.</summary>
    internal IReadOnlyDictionary<string, Fact> Told { get; init; } = new Dictionary<string, Fact>();

    /// <summary>Year it was built.</summary>
    public Fact? Year => Fact("year");

    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>.</summary>
    public Fact? Foundation => Fact("foundation");

    /// <summary>Name of the fact that tells the form of the roof.</summary>
    public const string RoofFormFact = "roof form";

    /// <summary><c>gable</c>, <c>hip</c>, <c>flat</c>, <c>shed</c>, <c>gambrel</c>.</summary>
    public Fact? RoofForm => Fact(RoofFormFact);

    /// <summary>What is known: as stated on site, else as told before; none when not recorded.</summary>
    public Fact? Fact(string name) => Facts.TryGetValue(name, out var slot) ? slot.Value : Told.GetValueOrDefault(name);
}
