using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>A stack and where it stands on the sheet.</summary>
internal sealed record Body
{
    public required Stack Stack { get; init; }

    /// <summary>The walls, from the eaves to the lowest floor.</summary>
    public required Box House { get; init; }

    /// <summary>From the ridge to the eaves; over all bodies that share the roof.</summary>
    public required Box RoofBox { get; init; }

    /// <summary>Whether its roof was drawn with the body before it.</summary>
    public bool IsRoofed => Stack.SharesRoof;

    /// <summary>Whether its lean-to falls to the right.</summary>
    public bool FallsRight { get; init; }

    /// <summary>Whether another body stands against its left wall, and its right.</summary>
    public bool HasLeft { get; init; }

    /// <inheritdoc cref="HasLeft"/>
    public bool HasRight { get; init; }

    public required IReadOnlyList<Cell> Roofs { get; init; }

    public required IReadOnlyList<Cell> Attics { get; init; }

    /// <summary>Top level first.</summary>
    public required IReadOnlyList<StoreyBand> Storeys { get; init; }

    /// <summary>Crawl space, basement, or the thickness of the slab.</summary>
    public required Box Below { get; init; }

    public required IReadOnlyList<IReadOnlyList<Cell>> BelowRows { get; init; }

    public HouseShape Shape => Stack.Shape;

    /// <summary>Whether it stands on a slab with nothing below it.</summary>
    public bool IsOnSlab => Shape.Foundation == "slab" && BelowRows.Count == 0;

    /// <summary>The underside of all that was dug for it.</summary>
    public double Under(double ground) => IsOnSlab && Stack.Lowest >= 0 ? ground : Below.Bottom;

    /// <summary>The upper edge of its roof from eave to eave.</summary>
    public IReadOnlyList<Spot> RoofLine => RoofPart.Outline(RoofBox, Shape.RoofForm, FallsRight);
}
