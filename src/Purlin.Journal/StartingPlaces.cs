namespace Purlin.Journal;

/// <summary>
/// The places a house of these facts has, so that the drawing stands before the first step is taken. The inspector adds and renames freely.
/// </summary>
public static class StartingPlaces
{
    /// <summary>The places to add when an inspection is opened, outside first, then from the roof down.</summary>
    public static IReadOnlyList<EntryBody.PlaceAdded> For(Property property)
    {
        ArgumentNullException.ThrowIfNull(property);
        List<EntryBody.PlaceAdded> places = [Of(PlaceKind.Site, "Site")];
        foreach (var side in (ReadOnlySpan<string>)["Front", "Left side", "Rear", "Right side"]) places.Add(Of(PlaceKind.Side, side));
        if (property.Deck == true) places.Add(Of(PlaceKind.Deck, "Deck"));
        places.Add(Of(PlaceKind.Roof, "Roof"));
        if (property.Attic is not ("none" or "finished")) places.Add(Of(PlaceKind.Attic, "Attic"));
        AddRooms(places, property);
        if (property.Garage is not (null or "none")) places.Add(Of(PlaceKind.Garage, "Garage", 0));
        if (property.Foundation == "basement") places.Add(Of(PlaceKind.Basement, "Basement", -1));
        if (property.Foundation is "crawl space" or "piers") places.Add(Of(PlaceKind.CrawlSpace, "Crawl space", -1));
        return [.. places.Select((place, index) => place with { Order = index + 1 })];
    }

    private static void AddRooms(List<EntryBody.PlaceAdded> places, Property property)
    {
        var upper = Math.Clamp(property.Storeys ?? 1, 1, 4) - 1;
        var baths = Math.Clamp(property.Bathrooms ?? 1, 0, 12);
        var bedrooms = Math.Clamp(property.Bedrooms ?? 2, 0, 12);
        places.Add(Of(PlaceKind.Hall, "Entry and hall", 0));
        places.Add(Of(PlaceKind.Room, "Living room", 0));
        places.Add(Of(PlaceKind.Kitchen, "Kitchen", 0));
        places.Add(Of(PlaceKind.Laundry, "Laundry", 0));
        for (var bath = 1; bath <= baths; bath++)
            places.Add(Of(PlaceKind.Bathroom, baths == 1 ? "Bathroom" : $"Bathroom {bath}", bath == 1 ? 0 : upper));
        for (var bedroom = 1; bedroom <= bedrooms; bedroom++)
            places.Add(Of(PlaceKind.Bedroom, $"Bedroom {bedroom}", upper == 0 || bedroom == 1 ? 0 : upper));
        if (upper > 0) places.Add(Of(PlaceKind.Stairs, "Stairs", 0));
        places.Add(Of(PlaceKind.Mechanical, "Mechanical closet", property.Foundation == "basement" ? -1 : 0));
    }

    private static EntryBody.PlaceAdded Of(string kind, string name, int? storey = null) =>
        new() { Kind = kind, Name = name, Storey = storey };
}
