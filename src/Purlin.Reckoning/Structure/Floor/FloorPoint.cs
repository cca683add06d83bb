namespace Purlin.Reckoning.Structure.Floor;

/// <summary>One reading of a survey, corrected for its covering.</summary>
internal sealed record FloorPoint
{
    /// <summary>Its place in the list as given, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>What the inspector calls it; its number from 1 when it has no name.</summary>
    public required string Label { get; init; }

    public required double XFeet { get; init; }

    public required double YFeet { get; init; }

    public required double LevelInches { get; init; }
}
