namespace Purlin.Journal.Told;

/// <summary>The places of the main house on the levels of its form, and what stands apart from it.</summary>
internal static class ToldPlaces
{
    public static IEnumerable<EntryBody.PlaceAdded> Of(ToldHouse house)
    {
        List<EntryBody.PlaceAdded> places = [.. StartingPlaces.For(house.Facts).Select(place =>
            Levelled(house.Form, place)).OfType<EntryBody.PlaceAdded>()];
        if (house.Form == HouseForm.ThreeFloors) Spread(places);
        if (house.Form is HouseForm.SplitLevel or HouseForm.SplitEntry) places.Add(new EntryBody.PlaceAdded
        {
            Kind = PlaceKind.Room,
            Name = house.LowerRoom,
            Level = -0.5
        });
        if (house.Porch) places.Insert(places.FindIndex(place => place.Kind == PlaceKind.Roof),
            new EntryBody.PlaceAdded { Kind = PlaceKind.Deck, Name = "Porch" });
        if (house.Pool) places.Add(new EntryBody.PlaceAdded { Kind = PlaceKind.Site, Name = "Pool" });
        for (var at = 1; at <= Math.Clamp(house.Outbuildings, 0, 6); at++)
            places.Add(new EntryBody.PlaceAdded
            {
                Kind = PlaceKind.Outbuilding,
                Name = house.Outbuildings == 1
                ? ToldPart.Sentence(PlaceKind.Outbuilding) : $"{ToldPart.Sentence(PlaceKind.Outbuilding)} {at}"
            });
        return places.Select((place, at) => place with { Order = at + 1 });
    }

    /// <summary>Of the bedrooms and baths of a high house every other one is on the floor between.</summary>
    private static void Spread(List<EntryBody.PlaceAdded> places)
    {
        Dictionary<string, int> met = new(StringComparer.Ordinal);
        for (var at = 0; at < places.Count; at++)
        {
            if (places[at].Storey is not > 1) continue;
            var count = met[places[at].Kind] = met.GetValueOrDefault(places[at].Kind) + 1;
            if (count % 2 == 1) places[at] = places[at] with { Storey = places[at].Storey - 1 };
        }
    }

    /// <summary>
    /// Where floors lie half a storey off, laundry and equipment are on the lower level and the bedrooms on the upper one; the stairs
    /// between need no place of their own.
    /// </summary>
    private static EntryBody.PlaceAdded? Levelled(string form, EntryBody.PlaceAdded place)
    {
        if (form is not (HouseForm.SplitLevel or HouseForm.SplitEntry) || place.Storey is not >= 0
            || place.Kind == PlaceKind.Garage) return place;
        if (place.Kind == PlaceKind.Stairs) return null;
        var isLower = place.Kind is PlaceKind.Laundry or PlaceKind.Mechanical;
        var isUpper = form == HouseForm.SplitEntry || place.Kind is PlaceKind.Bedroom or PlaceKind.Bathroom;
        return place with { Storey = null, Level = isLower ? -0.5 : isUpper ? 0.5 : 0 };
    }
}
