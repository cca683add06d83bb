using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>Lays the places of a house out in its cut, from the roof down.</summary>
internal static class SectionLayout
{
    private const double Overhang = 11;

    public static SectionPlan Of(Inspection inspection, SectionMeasures measures)
    {
        var sorted = PlacesInCut.Of(inspection);
        var shape = HouseShape.Of(inspection);
        var deck = sorted.Decks.Count > 0 ? measures.DeckWing : 0;
        var garage = sorted.Garages.Count > 0 ? measures.GarageWing : 0;
        var left = measures.Left + Math.Max(deck, Overhang);
        var width = measures.Width - measures.Right - Math.Max(garage, Overhang) - left;

        var roof = RoofBox(shape, sorted, measures, left, width);
        var top = roof.Bottom;
        List<StoreyBand> storeys = [];
        for (var number = shape.Storeys - 1; number >= 0; number--)
        {
            var band = Band(number, sorted.Rooms.Where(room => sorted.StoreyOf(room) == number).ToList(), new Box(left, top, width, 0), measures);
            storeys.Add(band);
            top = band.Box.Bottom + measures.FloorThickness;
        }
        Box house = new(left, roof.Bottom, width, top - roof.Bottom);
        var below = Below(shape, sorted, house, measures);
        var ground = shape.Foundation switch { "slab" => top + 4, "basement" => top + 6, _ => top + 12 };
        Box earth = new(measures.Left, Math.Max(below.Box.Bottom, ground) + 12, measures.Width - measures.Left - measures.Right, measures.Target + 4);
        return new SectionPlan
        {
            Measures = measures,
            Shape = shape,
            House = house,
            RoofBox = roof,
            Roofs = Columns(sorted.Roofs, RoofZone(roof, sorted)),
            Attics = Columns(sorted.Attics, AtticZone(roof, measures)),
            Storeys = storeys,
            Below = below.Box,
            BelowRows = below.Rows,
            Ground = ground,
            Earth = earth,
            Sites = Columns(sorted.Sites, earth),
            Garage = garage > 0 ? new Cell(sorted.Garages[0], GarageBox(house, shape, measures, ground)) : null,
            Deck = deck > 0 ? new Cell(sorted.Decks[0], new Box(left - deck, house.Bottom - 56, deck - 2, Math.Max(ground + 2 - house.Bottom, 2) + 56)) : null,
            Tiles = Tiles(sorted, measures, width, earth.Bottom + 14, out var height),
            Height = height,
        };
    }

    private static Box RoofBox(HouseShape shape, PlacesInCut sorted, SectionMeasures measures, double left, double width)
    {
        var natural = width / 2 * Math.Max(shape.Pitch, 3) / 12;
        var least = sorted.Attics.Count > 0 ? measures.RoofLeast : measures.Target + 18;
        var rise = shape.RoofForm == "flat" ? least - 6 : Math.Clamp(natural, least, measures.RoofMost);
        return new Box(left, shape.Chimney ? 22 : 14, width, rise);
    }

    private static Box RoofZone(Box roof, PlacesInCut sorted) =>
        new(roof.X, roof.Y - 6, roof.Width, sorted.Attics.Count > 0 ? Math.Max(46, roof.Height * 0.5) : roof.Height + 2);

    private static Box AtticZone(Box roof, SectionMeasures measures)
    {
        var height = Math.Max(measures.Target + 2, roof.Height * 0.46);
        return new Box(roof.X, roof.Bottom - height, roof.Width, height);
    }

    private static Box GarageBox(Box house, HouseShape shape, SectionMeasures measures, double ground)
    {
        var tall = Math.Min(measures.Row + 18, house.Height - 2);
        var gap = shape.Garage == "detached" ? 9 : 0;
        return new Box(house.Right + gap, ground - tall, measures.GarageWing - 10 - gap, tall);
    }

    private static StoreyBand Band(int number, List<Place> rooms, Box at, SectionMeasures measures)
    {
        var rows = Rows(rooms, at, measures.Row, measures);
        return new StoreyBand(number, at with { Height = Math.Max(1, rows.Count) * measures.Row }, rows);
    }

    private static (Box Box, IReadOnlyList<IReadOnlyList<Cell>> Rows) Below(HouseShape shape, PlacesInCut sorted, Box house, SectionMeasures measures)
    {
        var under = sorted.Below;
        var height = under.Any(place => place.Kind != PlaceKind.CrawlSpace) || shape.Foundation == "basement" ? measures.Row
            : under.Count > 0 || shape.Foundation is "crawl space" or "piers" ? measures.Crawl : 0;
        if (height == 0) return (new Box(house.X, house.Bottom, house.Width, 13), []);
        var rows = Rows(under, house with { Y = house.Bottom }, height, measures);
        return (new Box(house.X, house.Bottom, house.Width, height * Math.Max(1, rows.Count)), rows);
    }

    private static List<IReadOnlyList<Cell>> Rows(IReadOnlyList<Place> rooms, Box at, double tall, SectionMeasures measures)
    {
        if (rooms.Count == 0) return [];
        for (var count = 1; ; count++)
        {
            var rows = Share(rooms, count, rooms.Sum(RoomWidth));
            if (count < rooms.Count && rows.Any(row => row.Count * measures.Squeeze > at.Width)) continue;
            return [.. rows.Select((row, index) => Cells(row, at with { Y = at.Y + index * tall, Height = tall }, measures.LeastCell))];
        }
    }

    private static List<List<Place>> Share(IReadOnlyList<Place> rooms, int count, double whole)
    {
        List<List<Place>> rows = [];
        var done = 0.0;
        foreach (var room in rooms)
        {
            var row = Math.Min(count - 1, (int)((done + RoomWidth(room) / 2) / whole * count));
            while (rows.Count <= row) rows.Add([]);
            rows[row].Add(room);
            done += RoomWidth(room);
        }
        rows.RemoveAll(row => row.Count == 0);
        return rows;
    }

    // Every room gets the least width; what is left is shared by kind.
    private static List<Cell> Cells(List<Place> row, Box at, double least)
    {
        double whole = row.Sum(RoomWidth), rest = Math.Max(0, at.Width - row.Count * least);
        var x = at.X;
        List<Cell> cells = [];
        foreach (var room in row)
        {
            var width = at.Width / row.Count < least ? at.Width / row.Count : least + RoomWidth(room) / whole * rest;
            cells.Add(new Cell(room, new Box(x, at.Y, width, at.Height)));
            x += width;
        }
        return cells;
    }

    private static List<Cell> Columns(IReadOnlyList<Place> places, Box box)
    {
        var count = Math.Min(places.Count, ColumnsIn(box.Width));
        return [.. places.Take(count).Select((place, index) => new Cell(place, box.Column(index, count)))];
    }

    private static int ColumnsIn(double width) => Math.Max(1, (int)(width / 58));

    private static List<Cell> Tiles(PlacesInCut sorted, SectionMeasures measures, double house, double y, out double height)
    {
        IReadOnlyList<Place> places =
        [
            .. sorted.Sides, .. sorted.Garages.Skip(1), .. sorted.Decks.Skip(1), .. sorted.Elsewhere,
            .. sorted.Roofs.Skip(ColumnsIn(house)), .. sorted.Attics.Skip(ColumnsIn(house)), .. sorted.Sites.Skip(ColumnsIn(measures.Width - measures.Left - measures.Right)),
        ];
        height = y;
        if (places.Count == 0) return [];
        Box strip = new(measures.Left, y, measures.Width - measures.Left - measures.Right, measures.Tile);
        var across = 4;
        height = y + (places.Count + across - 1) / across * (measures.Tile + 8) + 2;
        return [.. places.Select((place, index) => new Cell(place, strip.Column(index % across, across, 8) with { Y = y + index / across * (measures.Tile + 8) }))];
    }

    private static double RoomWidth(Place place) => place.Kind switch
    {
        PlaceKind.Room or PlaceKind.Kitchen => 1.45,
        PlaceKind.Bedroom or PlaceKind.Basement or PlaceKind.CrawlSpace => 1.3,
        _ => 1,
    };
}
