using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>Balloons in the free margins, each with its leader to the thing: left ones down the left, right ones down the right, so that no two cross.</summary>
internal static class Pinning
{
    private const double Radius = 15.5;
    private const double Apart = (2 * Radius) + 8;

    public static IEnumerable<Mark> Marks(IReadOnlyList<PlacePin> pins, IReadOnlyList<PlacedThing> placed, IReadOnlyDictionary<string, Surface> surfaces)
    {
        var tips = pins.Select(pin => (Pin: pin, Tip: TipOf(pin, placed, surfaces))).Where(one => one.Tip is not null).Select(one => (one.Pin, Tip: one.Tip!.Value)).ToList();
        foreach (var right in (bool[])[false, true])
        {
            var column = tips.Where(one => one.Tip.X > Frame.Width / 2 == right).OrderBy(one => one.Tip.Y).ThenBy(one => one.Pin.Number).ToList();
            var heights = Heights(column.ConvertAll(one => one.Tip.Y));
            for (var index = 0; index < column.Count; index++)
            {
                Spot at = new(right ? Frame.Width - Radius - 4 : Radius + 4, heights[index]);
                foreach (var mark in Callout.Leader(column[index].Pin.Bars, at, column[index].Tip, Radius)) yield return mark;
                yield return Callout.Balloon(column[index].Pin.Number, column[index].Pin.Bars, at, column[index].Pin.Words, Radius);
            }
        }
    }

    private static Spot? TipOf(PlacePin pin, IReadOnlyList<PlacedThing> placed, IReadOnlyDictionary<string, Surface> surfaces)
    {
        if (placed.FirstOrDefault(one => one.Thing.Id == pin.Thing) is { } thing) return new Spot(thing.Covers.Centre.X, thing.Covers.Centre.Y);
        return surfaces.TryGetValue(pin.Thing, out var surface) ? new Spot(surface.Name.X, surface.Name.Y + 5) : null;
    }

    /// <summary>Each as near its own height as the others let it, all on the sheet.</summary>
    private static List<double> Heights(List<double> wanted)
    {
        const double Top = Radius + 4, Bottom = Frame.Height - Radius - 4;
        List<double> heights = [];
        foreach (var height in wanted) heights.Add(Math.Max(Math.Clamp(height, Top, Bottom), heights.Count == 0 ? Top : heights[^1] + Apart));
        var limit = Bottom;
        for (var index = heights.Count - 1; index >= 0; index--, limit = heights[index + 1] - Apart) heights[index] = Math.Min(heights[index], limit);
        return heights;
    }
}
