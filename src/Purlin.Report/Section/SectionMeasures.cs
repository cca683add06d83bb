namespace Purlin.Report.Section;

/// <summary>Sizes of the two forms of the sheet, in its own unit.</summary>
internal sealed record SectionMeasures
{
    public static SectionMeasures Upright { get; } = new();

    public static SectionMeasures Wide { get; } = new()
    {
        Width = 700,
        Left = 76,
        Right = 52,
        Row = 92,
        DeckWing = 78,
        GarageWing = 112,
        Letter = 11.5,
        LeastCell = 52,
        Squeeze = 44,
        RoofLeast = 118,
        RoofMost = 168,
        Tile = 104,
        Crawl = 58,
    };

    /// <summary>For a first page, where nothing is tapped.</summary>
    public static SectionMeasures Front { get; } = new() { IsSmall = true, Left = 14, Right = 6, Row = 62, RoofLeast = 74, RoofMost = 92, Tile = 58, Crawl = 42, LeastCell = 30, Squeeze = 26, Letter = 11, DeckWing = 46, GarageWing = 62 };

    public double Width { get; init; } = 360;

    /// <summary>Left of the house: storey names, and balloons on the wide sheet.</summary>
    public double Left { get; init; } = 18;

    public double Right { get; init; } = 8;

    /// <summary>Height of a row of rooms.</summary>
    public double Row { get; init; } = 78;

    public double DeckWing { get; init; } = 50;

    public double GarageWing { get; init; } = 66;

    public double PoolWing { get; init; } = 56;

    public double Letter { get; init; } = 11.5;

    /// <summary>Narrowest room: a thumb's target and a little air.</summary>
    public double LeastCell { get; init; } = 46;

    /// <summary>Whether only what fits whole is named.</summary>
    public bool IsSmall { get; init; }

    /// <summary>Down to this width rooms are squeezed before they need a second row.</summary>
    public double Squeeze { get; init; } = 44;

    public double RoofLeast { get; init; } = 104;

    public double RoofMost { get; init; } = 128;

    /// <summary>Height of a small elevation with its name.</summary>
    public double Tile { get; init; } = 84;

    public double Crawl { get; init; } = 54;

    public double FloorThickness { get; init; } = 7;

    public double Wall { get; init; } = 5;

    /// <summary>Smallest side of anything that is tapped, WCAG 2.2 success criterion 2.5.5.</summary>
    public double Target { get; init; } = 44;
}
