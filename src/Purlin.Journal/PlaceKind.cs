namespace Purlin.Journal;

/// <summary>The kinds of place the section drawing knows how to draw.</summary>
public static class PlaceKind
{
    /// <summary>The ground around the house.</summary>
    public const string Site = "site";

    /// <summary>One side of the house, seen from outside.</summary>
    public const string Side = "exterior side";

    /// <summary>The roof.</summary>
    public const string Roof = "roof";

    /// <summary>The attic.</summary>
    public const string Attic = "attic";

    /// <summary>The crawl space.</summary>
    public const string CrawlSpace = "crawl space";

    /// <summary>The basement.</summary>
    public const string Basement = "basement";

    /// <summary>The garage or carport.</summary>
    public const string Garage = "garage";

    /// <summary>The mechanical room or closet.</summary>
    public const string Mechanical = "mechanical";

    /// <summary>The kitchen.</summary>
    public const string Kitchen = "kitchen";

    /// <summary>A bathroom.</summary>
    public const string Bathroom = "bathroom";

    /// <summary>A laundry.</summary>
    public const string Laundry = "laundry";

    /// <summary>A bedroom.</summary>
    public const string Bedroom = "bedroom";

    /// <summary>A living or dining room, study, or other room.</summary>
    public const string Room = "room";

    /// <summary>A hall.</summary>
    public const string Hall = "hall";

    /// <summary>Stairs inside.</summary>
    public const string Stairs = "stairs";

    /// <summary>A deck, porch or balcony.</summary>
    public const string Deck = "deck";

    /// <summary>A shed or other building on the lot.</summary>
    public const string Outbuilding = "outbuilding";

    /// <summary>All of them, outside first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Site, Side, Roof, Attic, CrawlSpace, Basement, Garage, Mechanical, Kitchen, Bathroom, Laundry, Bedroom, Room, Hall, Stairs, Deck,
        Outbuilding,
    ];
}
