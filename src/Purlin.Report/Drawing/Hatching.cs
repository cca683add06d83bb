namespace Purlin.Report.Drawing;

/// <summary>Material hatches of the building trades, made as lines so that every writer draws the same.</summary>
public static class Hatching
{
    /// <summary>Parallel lines in a polygon.</summary>
    /// <param name="corners">The polygon.</param>
    /// <param name="degrees">Direction of the lines; 0 is level, 45 rises to the right.</param>
    /// <param name="spacing">Between lines.</param>
    public static Trace Lines(IReadOnlyList<Spot> corners, double degrees, double spacing)
    {
        ArgumentNullException.ThrowIfNull(corners);
        double radians = degrees * Math.PI / 180, cos = Math.Cos(radians), sin = Math.Sin(radians);
        var turned = corners.Select(spot => new Spot(spot.X * cos - spot.Y * sin, spot.X * sin + spot.Y * cos)).ToArray();
        List<Trace> lines = [];
        for (var y = Math.Ceiling(turned.Min(spot => spot.Y) / spacing) * spacing; y < turned.Max(spot => spot.Y); y += spacing)
        {
            var crossings = Crossings(turned, y);
            for (var index = 0; index + 1 < crossings.Count; index += 2)
                lines.Add(Trace.Through(Back(crossings[index], y, cos, sin), Back(crossings[index + 1], y, cos, sin)));
        }
        return Trace.Join(lines);
    }

    /// <summary>Earth: groups of three short strokes, each group across its neighbour, dense under the ground line and thinning out downwards.</summary>
    public static Trace Earth(IReadOnlyList<Spot> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        List<Trace> strokes = [];
        double left = corners.Min(spot => spot.X), right = corners.Max(spot => spot.X), top = corners.Min(spot => spot.Y), bottom = corners.Max(spot => spot.Y);
        var row = 0;
        var rows = Math.Max(1, (int)((bottom - top - 4) / 11));
        for (var y = top + 2; y < bottom - 4; y += 11, row++)
        {
            var column = 0;
            for (var x = left + 1 + row % 2 * 7; x < right - 8; x += 14, column++)
            {
                if (Scatter(row * 97 + column) < 0.75 * row / rows - 0.12) continue;
                AddGroup(strokes, corners, x, y, (row + column) % 2 == 0);
            }
        }
        return Trace.Join(strokes);
    }

    /// <summary>Concrete: grains and small stones.</summary>
    public static Trace Concrete(IReadOnlyList<Spot> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        List<Trace> grains = [];
        double left = corners.Min(spot => spot.X), right = corners.Max(spot => spot.X), top = corners.Min(spot => spot.Y), bottom = corners.Max(spot => spot.Y);
        var seed = 1;
        for (var y = top + 2.5; y < bottom - 1; y += 4.6)
            for (var x = left + 2.5; x < right - 1; x += 6.4, seed++)
            {
                Spot at = new(x + (Scatter(seed) - 0.5) * 4, y + (Scatter(seed + 5000) - 0.5) * 2.6);
                if (!Inside(corners, at)) continue;
                grains.Add(seed % 3 == 0 ? Stone(at) : Trace.Between(at.X, at.Y, at.X + 0.5, at.Y));
            }
        return Trace.Join(grains);
    }

    /// <summary>Masonry: courses with joints in running bond.</summary>
    public static Trace Masonry(Box box, double course = 5, double unit = 11)
    {
        List<Trace> lines = [];
        var row = 0;
        for (var y = box.Bottom; y > box.Y + 0.5; y -= course, row++)
        {
            var upper = Math.Max(box.Y, y - course);
            if (row > 0) lines.Add(Trace.Between(box.X, y, box.Right, y));
            for (var x = box.X + (row % 2 == 0 ? unit : unit / 2); x < box.Right - 0.5; x += unit) lines.Add(Trace.Between(x, upper, x, y));
        }
        return Trace.Join(lines);
    }

    /// <summary>Insulation: the loops of a batt between two levels.</summary>
    public static Trace Insulation(Box box, double pitch = 8)
    {
        var count = Math.Max(1, (int)Math.Round(box.Width / pitch));
        var step = box.Width / count;
        var loop = Trace.At(box.X, box.Bottom);
        for (var index = 0; index < count; index++)
        {
            double x = box.X + index * step, middle = x + step / 2;
            loop = loop.By(x + step * 0.55, box.Bottom, x - step * 0.05, box.Y, middle, box.Y).By(x + step * 1.05, box.Y, x + step * 0.45, box.Bottom, x + step, box.Bottom);
        }
        return loop;
    }

    /// <summary>Wood cut along the grain.</summary>
    public static Trace WoodGrain(Box box)
    {
        List<Trace> grain = [];
        var count = Math.Max(1, (int)(box.Height / 2.2));
        for (var index = 1; index <= count; index++)
        {
            double y = box.Y + index * box.Height / (count + 1), sway = (Scatter(index + (int)box.X) - 0.5) * 1.6;
            grain.Add(Trace.At(box.X + 1, y).By(box.X + box.Width * 0.3, y + sway, box.X + box.Width * 0.6, y - sway, box.Right - 1, y));
        }
        return Trace.Join(grain);
    }

    /// <summary>Wood cut across the grain: the crossed end of a joist.</summary>
    public static Trace WoodEnd(Box box) => Trace.Around(box).With(Trace.Between(box.X, box.Y, box.Right, box.Bottom)).With(Trace.Between(box.X, box.Bottom, box.Right, box.Y));

    /// <summary>Whether a spot is inside a polygon.</summary>
    public static bool Inside(IReadOnlyList<Spot> corners, Spot spot)
    {
        ArgumentNullException.ThrowIfNull(corners);
        return Crossings(corners, spot.Y).Count(x => x > spot.X) % 2 == 1;
    }

    private static void AddGroup(List<Trace> strokes, IReadOnlyList<Spot> corners, double x, double y, bool rising)
    {
        for (var index = 0; index < 3; index++)
        {
            double from = x + index * 3.1;
            Spot start = new(from, rising ? y + 6.4 : y), end = new(from + 6.4, rising ? y : y + 6.4);
            if (Inside(corners, start) && Inside(corners, end)) strokes.Add(Trace.Through(start, end));
        }
    }

    private static Trace Stone(Spot at) => Trace.At(at.X - 1.3, at.Y + 0.9).To(at.X + 0.1, at.Y - 1.1).To(at.X + 1.5, at.Y + 0.7).To(at.X - 1.3, at.Y + 0.9);

    private static List<double> Crossings(IReadOnlyList<Spot> corners, double y)
    {
        List<double> crossings = [];
        for (var index = 0; index < corners.Count; index++)
        {
            Spot from = corners[index], to = corners[(index + 1) % corners.Count];
            if (from.Y <= y == to.Y <= y) continue;
            crossings.Add(from.X + (y - from.Y) / (to.Y - from.Y) * (to.X - from.X));
        }
        crossings.Sort();
        return crossings;
    }

    private static Spot Back(double x, double y, double cos, double sin) => new(x * cos + y * sin, -x * sin + y * cos);

    // A fixed spread of numbers between 0 and 1: the same drawing is the same bytes.
    private static double Scatter(int seed)
    {
        var mixed = unchecked((uint)seed * 2654435761u);
        mixed ^= mixed >> 15;
        mixed = unchecked(mixed * 2246822519u);
        mixed ^= mixed >> 13;
        return mixed / (double)uint.MaxValue;
    }
}
