namespace Purlin.Journal;

/// <summary>What is known of a house before arriving. Everything but the address may be missing: <c>null</c> means not recorded.</summary>
public sealed record Property
{
    /// <summary>Street and place, one line.</summary>
    public required string Address { get; init; }

    /// <summary>Year it was built.</summary>
    public int? YearBuilt { get; init; }

    /// <summary>Heated floor area.</summary>
    public Amount? FloorArea { get; init; }

    /// <summary>Storeys above ground, 1 to 4; a half storey counts up.</summary>
    public int? Storeys { get; init; }

    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>.</summary>
    public string? Foundation { get; init; }

    /// <summary><c>gable</c>, <c>hip</c>, <c>flat</c>, <c>shed</c>, <c>gambrel</c>.</summary>
    public string? RoofForm { get; init; }

    /// <summary>Roof pitch as rise in 12, when known.</summary>
    public double? RoofPitch { get; init; }

    /// <summary><c>none</c>, <c>attached</c>, <c>detached</c>, <c>carport</c>.</summary>
    public string? Garage { get; init; }

    /// <summary><c>walkable</c>, <c>hatch only</c>, <c>finished</c>, <c>none</c>.</summary>
    public string? Attic { get; init; }

    /// <summary>Whether there is a chimney.</summary>
    public bool? Chimney { get; init; }

    /// <summary>Whether there is a deck or porch.</summary>
    public bool? Deck { get; init; }

    /// <summary>Bedrooms.</summary>
    public int? Bedrooms { get; init; }

    /// <summary>Bathrooms.</summary>
    public int? Bathrooms { get; init; }

    /// <summary>Compass point the front door faces: N, NE, E, SE, S, SW, W, NW.</summary>
    public string? Facing { get; init; }
}
