using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>
/// What stands on one another under one roof: a part of the house, or that half of a split one whose floors lie half a storey off.
/// </summary>
internal sealed record Stack
{
    /// <summary>The part of the house; none where nobody spoke of parts.</summary>
    public Journal.Fold.Part? Part { get; init; }

    public required HouseShape Shape { get; init; }

    /// <summary>The lowest first; never empty.</summary>
    public required IReadOnlyList<StackLevel> Levels { get; init; }

    /// <summary>Crawl space, basement and the rooms of it.</summary>
    public IReadOnlyList<Place> Below { get; init; } = [];

    public IReadOnlyList<Place> Roofs { get; init; } = [];

    public IReadOnlyList<Place> Attics { get; init; } = [];

    /// <summary>Whether the roof of the stack before goes on over this one, as over the two halves of a duplex.</summary>
    public bool SharesRoof { get; init; }

    public double Lowest => Levels[0].At;

    public double Highest => Levels[^1].At;
}

/// <summary>A level of a stack.</summary>
/// <param name="At">Height of its floor in storeys over the ground floor of the main part, in halves.</param>
/// <param name="IsUnderRoof">Whether its rooms stand under the slope of the roof.</param>
/// <param name="Rooms">In the order of the walk.</param>
internal sealed record StackLevel(double At, bool IsUnderRoof, IReadOnlyList<Place> Rooms);
