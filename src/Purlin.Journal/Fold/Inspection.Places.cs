namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>The tree of places.</summary>
    public IReadOnlyList<Place> Places { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>The tree of places.</summary>
    public static Gathered Places { get; } = new((state, inspection) => inspection with { Places = state.Planted().Places() });
}

/// <summary>A node of the tree of places.</summary>
public sealed record Place
{
    /// <summary>The entry that added it.</summary>
    public required EntryName Id { get; init; }

    /// <summary>See <see cref="PlaceKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>What people call it, after renaming.</summary>
    public required string Name { get; init; }

    /// <summary>The place it is in, after moving and with cycles cut.</summary>
    public EntryName? Parent { get; init; }

    /// <summary>Storey: 0 is the ground floor; none outdoors.</summary>
    public int? Storey { get; init; }

    /// <summary>Height of its floor in storeys, in halves; none outdoors.</summary>
    public double? Level { get; init; }

    /// <summary>The part of the house it belongs to, by itself or by the place it is in; none for the main part.</summary>
    public EntryName? Part { get; init; }

    /// <summary>Key among its neighbours.</summary>
    public double Order { get; init; }
}
