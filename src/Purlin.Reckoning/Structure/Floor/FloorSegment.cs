namespace Purlin.Reckoning.Structure.Floor;

/// <summary>Part of a profile: a chord between two readings, and how far the floor leaves it at the reading that leaves it most.</summary>
internal sealed record FloorSegment
{
    public required FloorPoint From { get; init; }

    public required FloorPoint To { get; init; }

    /// <summary>The reading furthest from the chord.</summary>
    public required FloorPoint At { get; init; }

    /// <summary>Readings between the ends.</summary>
    public required int Between { get; init; }

    /// <summary>Positive where the floor stands above the chord (a crown), negative where it sags.</summary>
    public required double DeflectionInches { get; init; }

    /// <summary>Distance between the ends.</summary>
    public required double LengthInches { get; init; }

    /// <summary>Whether no reading lies further out on the same line: a whole profile.</summary>
    public required bool Whole { get; init; }

    /// <summary>Deflection over length.</summary>
    public double Ratio => Math.Abs(DeflectionInches) / LengthInches;
}
