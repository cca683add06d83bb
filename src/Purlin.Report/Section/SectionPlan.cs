using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>A place and where it is drawn.</summary>
internal sealed record Cell(Place Place, Box Box);

/// <summary>One storey: its rows of rooms. Rooms that do not fit one row stand in a second cut of the same storey.</summary>
internal sealed record StoreyBand(int Number, Box Box, IReadOnlyList<IReadOnlyList<Cell>> Rows);

/// <summary>Where everything stands on the sheet; worked out once, then drawn.</summary>
internal sealed record SectionPlan
{
    public required SectionMeasures Measures { get; init; }

    public required HouseShape Shape { get; init; }

    public required double Height { get; init; }

    /// <summary>The walls, from the eaves to the lowest floor above ground.</summary>
    public required Box House { get; init; }

    /// <summary>From the ridge to the eaves.</summary>
    public required Box RoofBox { get; init; }

    public required IReadOnlyList<Cell> Roofs { get; init; }

    public required IReadOnlyList<Cell> Attics { get; init; }

    /// <summary>Top storey first.</summary>
    public required IReadOnlyList<StoreyBand> Storeys { get; init; }

    /// <summary>Crawl space, basement, or the thickness of the slab.</summary>
    public required Box Below { get; init; }

    public required IReadOnlyList<IReadOnlyList<Cell>> BelowRows { get; init; }

    /// <summary>The ground line outside.</summary>
    public required double Ground { get; init; }

    public required Box Earth { get; init; }

    public required IReadOnlyList<Cell> Sites { get; init; }

    public Cell? Garage { get; init; }

    public Cell? Deck { get; init; }

    /// <summary>The sides as small elevations, then whatever has no room in the section.</summary>
    public required IReadOnlyList<Cell> Tiles { get; init; }

    public double Floor => House.Bottom;

    /// <summary>Every place with its box, in the order of a walk: from the roof down, then outside.</summary>
    public IEnumerable<Cell> All =>
        [.. Roofs, .. Attics, .. Storeys.SelectMany(storey => storey.Rows).SelectMany(row => row), .. BelowRows.SelectMany(row => row), .. One(Deck), .. One(Garage), .. Sites, .. Tiles];

    private static IEnumerable<Cell> One(Cell? cell) => cell is null ? [] : [cell];
}
