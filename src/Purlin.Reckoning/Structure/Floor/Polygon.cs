using System.Collections.Immutable;

namespace Purlin.Reckoning.Structure.Floor;

/// <summary>A closed outline on the floor, in feet.</summary>
internal sealed class Polygon(ImmutableArray<(double X, double Y)> corners)
{
    public ImmutableArray<(double X, double Y)> Corners { get; } = corners;

    public double AreaSquareFeet => Math.Abs(Sides().Sum(side => side.A.X * side.B.Y - side.B.X * side.A.Y)) / 2;

    /// <summary>The smallest convex outline round the points (Andrew's monotone chain, 1979).</summary>
    public static Polygon Around(IEnumerable<(double X, double Y)> points)
    {
        (double X, double Y)[] sorted = [.. points.Distinct().OrderBy(point => point.X).ThenBy(point => point.Y)];
        List<(double X, double Y)> hull = [];
        foreach (var half in (IEnumerable<(double X, double Y)>[])[sorted, sorted.Reverse()])
        {
            var first = hull.Count;
            foreach (var point in half)
            {
                while (hull.Count >= first + 2 && Cross(hull[^2], hull[^1], point) <= 0) hull.RemoveAt(hull.Count - 1);
                hull.Add(point);
            }
            hull.RemoveAt(hull.Count - 1);
        }
        return new Polygon([.. hull]);
    }

    public bool Holds((double X, double Y) point)
    {
        var inside = false;
        foreach (var (a, b) in Sides())
        {
            if (a.Y > point.Y != b.Y > point.Y && point.X < (b.X - a.X) * (point.Y - a.Y) / (b.Y - a.Y) + a.X) inside = !inside;
        }
        return inside;
    }

    /// <summary>Distance to the nearest side.</summary>
    public double ToEdge((double X, double Y) point) => Sides().Min(side => Distance(side.A, side.B, point));

    /// <summary>The parts of a line of straight pieces that lie inside.</summary>
    public IEnumerable<ImmutableArray<(double X, double Y)>> Clip(ImmutableArray<(double X, double Y)> line)
    {
        List<(double X, double Y)> piece = [];
        for (var at = 1; at < line.Length; at++)
        {
            double[] cuts = [0, .. Cuts(line[at - 1], line[at]).Order(), 1];
            for (var cut = 1; cut < cuts.Length; cut++)
            {
                var (start, end) = (Between(line[at - 1], line[at], cuts[cut - 1]), Between(line[at - 1], line[at], cuts[cut]));
                if (cuts[cut] - cuts[cut - 1] < 1e-12) continue;
                if (Holds(Between(start, end, 0.5)))
                {
                    if (piece.Count == 0) piece.Add(start);
                    piece.Add(end);
                }
                else if (piece.Count > 0)
                {
                    yield return [.. piece];
                    piece.Clear();
                }
            }
        }
        if (piece.Count > 0) yield return [.. piece];
    }

    private IEnumerable<double> Cuts((double X, double Y) from, (double X, double Y) to)
    {
        foreach (var (a, b) in Sides())
        {
            var spread = (to.X - from.X) * (b.Y - a.Y) - (to.Y - from.Y) * (b.X - a.X);
            if (spread == 0) continue;
            var along = ((a.X - from.X) * (b.Y - a.Y) - (a.Y - from.Y) * (b.X - a.X)) / spread;
            var across = ((a.X - from.X) * (to.Y - from.Y) - (a.Y - from.Y) * (to.X - from.X)) / spread;
            if (along is > 0 and < 1 && across is >= 0 and <= 1) yield return along;
        }
    }

    private IEnumerable<((double X, double Y) A, (double X, double Y) B)> Sides() =>
        Corners.Select((corner, index) => (corner, Corners[(index + 1) % Corners.Length]));

    private static double Distance((double X, double Y) a, (double X, double Y) b, (double X, double Y) point)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = dx * dx + dy * dy;
        var along = length == 0 ? 0 : Math.Clamp(((point.X - a.X) * dx + (point.Y - a.Y) * dy) / length, 0, 1);
        return Math.Sqrt(Math.Pow(point.X - a.X - along * dx, 2) + Math.Pow(point.Y - a.Y - along * dy, 2));
    }

    private static (double X, double Y) Between((double X, double Y) a, (double X, double Y) b, double share) =>
        (a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));

    private static double Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
