using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>
/// Lays the places of a house out in its cut: its stacks side by side on one datum, what stands outside beside and under them.
/// </summary>
internal static class SectionLayout
{
    private const double LeastRoofZone = 50;

    public static SectionPlan Of(Inspection inspection, SectionMeasures measures)
    {
        var sorted = PlacesInCut.Of(inspection);
        var shape = HouseShape.Of(inspection);
        var stacks = Stacks.Of(inspection, sorted);
        var wings = Wings.Of(sorted, measures, stacks);
        var widths = StackWidths.Of(stacks, wings.Room, measures);
        var heights = LevelHeights.Of(stacks, widths, measures);
        var bodies = BodiesOf(stacks, widths, heights, wings.Left, measures);
        var left = bodies[0].House.X;
        var house = bodies[^1].House.Right - left;
        var ground = bodies.Where(body => body.Stack.Lowest >= 0).Select(body =>
            body.House.Bottom + (body.Shape.Foundation switch { "slab" => 4, "basement" => 6, _ => 12 }))
            .DefaultIfEmpty(heights.Floor(0) + bodies[0].House.Y - heights.Floor(bodies[0].Stack.Highest + 1) + measures.FloorThickness).Max();
        Box earth = new(measures.Left, Math.Max(bodies.Max(body => body.Below.Bottom), ground) + 12,
            measures.Width - measures.Left - measures.Right, measures.Target + 4);
        var spans = Span.Of(bodies);
        var under = earth.Bottom + 14 + (spans.Count > 0 ? 20 : 0);
        return new SectionPlan
        {
            Measures = measures,
            Shape = shape,
            Bodies = bodies,
            Ground = ground,
            Earth = earth,
            Sites = Columns(sorted.Grounds, earth),
            Spans = spans,
            Garage = wings.Garage is { } garage ? new Cell(garage, GarageBox(bodies[^1].House, shape, measures, ground)) : null,
            Deck = wings.Deck is { } deck ? new Cell(deck,
                new Box(left - measures.DeckWing, Math.Min(bodies[0].House.Bottom, ground) - 56, measures.DeckWing - 2,
                Math.Max(ground + 2 - bodies[0].House.Bottom, 2) + 56)) : null,
            Pool = wings.Pool is { } pool ? new Cell(pool,
                new Box(measures.Width - measures.Right - measures.PoolWing + 6, ground - 22, measures.PoolWing - 6,
                measures.Target + 12)) : null,
            Tiles = Tiles(sorted, wings, bodies, measures, house, under, out var height),
            Height = height,
        };
    }

    private static IReadOnlyList<Body> BodiesOf(IReadOnlyList<Stack> stacks, IReadOnlyList<double> widths, LevelHeights heights,
        double left, SectionMeasures measures)
    {
        List<Body> bodies = [];
        for (var at = 0; at < stacks.Count; at++)
        {
            var stack = stacks[at];
            Box house = new(left, heights.Ceiling(stack.Highest), widths[at],
                heights.Floor(stack.Lowest) + measures.FloorThickness - heights.Ceiling(stack.Highest));
            bodies.Add(Body(stack, house, heights, measures) with
            {
                FallsRight = stack.Part?.Side != "left" && at > 0,
                HasLeft = at > 0,
                HasRight = at < stacks.Count - 1
            });
            left += widths[at];
        }
        Join(bodies);
        // All of it comes down until the highest ridge stands below the upper edge of the sheet.
        var down = -bodies.Min(body => Math.Min(body.RoofBox.Y - (body.Shape.Chimney ? 22 : 14), body.RoofBox.Bottom - LeastRoofZone));
        return [.. bodies.Select(body => Moved(body, down, measures))];
    }

    private static Body Body(Stack stack, Box house, LevelHeights heights, SectionMeasures measures)
    {
        var top = stack.Levels[^1];
        var eaves = top.IsUnderRoof ? heights.Floor(top.At) - ((heights.Floor(top.At) - heights.Ceiling(top.At)) * 0.25) : house.Y;
        var natural = house.Width / 2 * Math.Max(stack.Shape.Pitch, 3) / 12;
        var least = stack.Attics.Count > 0 ? measures.RoofLeast : stack.Part is null or { Kind: PartKind.Main } && stack.Roofs.Count > 0
            ? Math.Min(measures.Target + 18, Math.Max(34, natural)) : 24;
        // Rooms under the slope take two thirds of the width: the slope passes over their corners.
        var under = top.IsUnderRoof ? (eaves - house.Y) / 0.36 : 0;
        var rise = stack.Shape.RoofForm == "flat" ? Math.Max(least - 6, 18)
            : Math.Max(under, Math.Clamp(natural, least, Math.Max(least, measures.RoofMost)));
        return new Body
        {
            Stack = stack,
            House = house,
            RoofBox = new Box(house.X, eaves - rise, house.Width, rise),
            Roofs = [],
            Attics = [],
            Storeys = [.. stack.Levels.Reverse().Select(level => Band(level, house, heights, measures))],
            Below = new Box(house.X, house.Bottom, house.Width, 13),
            BelowRows = [],
        };
    }

    /// <summary>One roof over bodies that share it, as high as the highest of theirs asks.</summary>
    private static void Join(List<Body> bodies)
    {
        for (var at = bodies.Count - 1; at > 0; at--)
        {
            if (!bodies[at].Stack.SharesRoof) continue;
            Box mine = bodies[at].RoofBox, before = bodies[at - 1].RoofBox;
            var rise = Math.Max(mine.Height, before.Height);
            bodies[at - 1] = bodies[at - 1] with { RoofBox = new Box(before.X, before.Bottom - rise, mine.Right - before.X, rise) };
        }
    }

    private static Body Moved(Body body, double down, SectionMeasures measures)
    {
        Box Lower(Box box) => box with { Y = box.Y + down };
        IReadOnlyList<Cell> Row(IReadOnlyList<Cell> row) => [.. row.Select(cell => cell with { Box = Lower(cell.Box) })];
        var (house, roof) = (Lower(body.House), Lower(body.RoofBox));
        var below = Below(body.Stack, house, measures);
        var top = body.Storeys[0];
        // Over rooms under the slope only the peak is attic.
        Box peak = body.Stack.Levels[^1].IsUnderRoof ? new Box(roof.X, roof.Y, roof.Width,
            Math.Max(measures.Target + 8, Lower(top.Box).Y - roof.Y)) : roof;
        return body with
        {
            House = house,
            RoofBox = roof,
            Storeys = [.. body.Storeys.Select(band => band with { Box = Lower(band.Box), Rows = [.. band.Rows.Select(Row)] })],
            Below = below.Box,
            BelowRows = below.Rows,
            Roofs = body.IsRoofed ? [] : Columns(body.Stack.Roofs, RoofZone(roof, body.Stack)),
            Attics = Columns(body.Stack.Attics, AtticZone(body.IsRoofed ? roof : peak, measures)),
        };
    }

    // A low roof is touched in the air above it, since its rooms are touched below.
    private static Box RoofZone(Box roof, Stack stack) => stack.Attics.Count > 0
        ? new(roof.X, roof.Y - 6, roof.Width, Math.Max(46, roof.Height * 0.5))
        : new(roof.X, Math.Min(roof.Y - 6, roof.Bottom - LeastRoofZone), roof.Width, Math.Max(roof.Height + 6, LeastRoofZone));

    private static Box AtticZone(Box roof, SectionMeasures measures)
    {
        var height = Math.Max(measures.Target + 2, roof.Height * 0.46);
        return new Box(roof.X, roof.Bottom - height, roof.Width, height);
    }

    private static Box GarageBox(Box house, HouseShape shape, SectionMeasures measures, double ground)
    {
        var tall = Math.Min(measures.Row + 18, Math.Max(measures.Target + 20, ground - house.Y - 2));
        var gap = shape.Garage == "detached" ? 9 : 0;
        return new Box(house.Right + gap, ground - tall, measures.GarageWing - 10 - gap, tall);
    }

    private static StoreyBand Band(StackLevel level, Box house, LevelHeights heights, SectionMeasures measures)
    {
        var top = heights.Ceiling(level.At);
        Box box = new(house.X, top, house.Width, heights.Floor(level.At) - top);
        var inset = level.IsUnderRoof ? StackWidths.Knee(house.Width) : 0;
        return new StoreyBand(level.At, box, Rows.In(level.Rooms, box with { X = box.X + inset, Width = box.Width - (2 * inset) },
            measures));
    }

    private static (Box Box, IReadOnlyList<IReadOnlyList<Cell>> Rows) Below(Stack stack, Box house, SectionMeasures measures)
    {
        var under = stack.Below;
        var height = under.Any(place => place.Kind != PlaceKind.CrawlSpace) || stack.Shape.Foundation == "basement" ? measures.Row
            : under.Count > 0 || stack.Shape.Foundation is "crawl space" or "piers" ? measures.Crawl : 0;
        if (height == 0) return (new Box(house.X, house.Bottom, house.Width, 13), []);
        Box box = new(house.X, house.Bottom, house.Width, Rows.Tall(Rows.Count(under, house.Width, measures), height, measures));
        return (box, Rows.In(under, box, measures));
    }

    private static List<Cell> Columns(IReadOnlyList<Place> places, Box box)
    {
        var count = Math.Min(places.Count, ColumnsIn(box.Width));
        return [.. places.Take(count).Select((place, index) => new Cell(place, box.Column(index, count)))];
    }

    private static int ColumnsIn(double width) => Math.Max(1, (int)(width / 58));

    private static List<Cell> Tiles(PlacesInCut sorted, Wings wings, IReadOnlyList<Body> bodies, SectionMeasures measures, double house,
        double y, out double height)
    {
        var drawn = bodies.SelectMany(body => body.Roofs.Concat(body.Attics)).Select(cell => cell.Place).ToHashSet();
        IReadOnlyList<Place> places =
        [
            .. sorted.Sides, .. wings.Beside, .. sorted.Elsewhere,
                .. sorted.Roofs.Concat(sorted.Attics).Where(place => !drawn.Contains(place)),
            .. sorted.Grounds.Skip(ColumnsIn(measures.Width - measures.Left - measures.Right)),
        ];
        height = y;
        if (places.Count == 0) return [];
        Box strip = new(measures.Left, y, measures.Width - measures.Left - measures.Right, measures.Tile);
        var across = 4;
        height = y + (places.Count + across - 1) / across * (measures.Tile + 8) + 2;
        return [.. places.Select((place, index) => new Cell(place,
            strip.Column(index % across, across, 8) with { Y = y + index / across * (measures.Tile + 8) }))];
    }
}
