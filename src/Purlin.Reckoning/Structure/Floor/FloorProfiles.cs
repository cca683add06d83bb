using System.Collections.Immutable;

namespace Purlin.Reckoning.Structure.Floor;

/// <summary>
/// Every pair of readings with at least one reading between them. Seen from one end, the readings are sorted by direction; only those
/// within a narrow fan can lie on the line to the other end, so 500 readings take a fraction of a second.
/// </summary>
internal sealed class FloorProfiles
{
    // Two readings closer than this are one spot; a reading this close to an end is not between the ends.
    private const double SameSpotFeet = 0.01;

    private readonly IReadOnlyList<FloorPoint> points;
    private readonly double[] bend;
    private readonly double toleranceFeet;
    private readonly bool[,] beyond;

    private FloorProfiles(IReadOnlyList<FloorPoint> points, LevelPlane plane, double toleranceFeet)
    {
        this.points = points;
        this.toleranceFeet = toleranceFeet;
        // Taking the plane off first changes no deflection on a straight line, and keeps tilt out of it for a reading a little off the
        // line.
        bend = [.. points.Select(plane.Residual)];
        beyond = new bool[points.Count, points.Count];
    }

    /// <summary>All segments, the sharpest bend first.</summary>
    public static ImmutableArray<FloorSegment> Find(IReadOnlyList<FloorPoint> points, LevelPlane plane, double toleranceFeet)
    {
        var profiles = new FloorProfiles(points, plane, toleranceFeet);
        List<(FloorSegment Segment, int From, int To)> found = [];
        for (var from = 0; from < points.Count; from++) profiles.LookFrom(from, found);
        return [.. found
            .Select(one => one.Segment with { Whole = !profiles.beyond[one.From, one.To] && !profiles.beyond[one.To, one.From] })
            .OrderByDescending(segment => Math.Round(segment.Ratio, 12)).ThenByDescending(segment => segment.LengthInches)
                .ThenBy(segment => segment.From.Index).ThenBy(segment => segment.To.Index)];
    }

    private void LookFrom(int from, List<(FloorSegment Segment, int From, int To)> found)
    {
        var sights = Sights(from);
        if (sights.Length == 0) return;
        var fan = Math.Asin(Math.Min(1, toleranceFeet / sights.Min(sight => sight.Feet))) + 1e-9;
        for (var at = 0; at < sights.Length; at++)
        {
            var (to, deepest, between) = (sights[at], -1, 0);
            var deflection = 0.0;
            foreach (var other in Fan(sights, at, fan))
            {
                var turn = other.Angle - to.Angle;
                if (Math.Cos(turn) <= 0 || Math.Abs(other.Feet * Math.Sin(turn)) > toleranceFeet) continue;
                var along = other.Feet * Math.Cos(turn);
                if (along > to.Feet + SameSpotFeet) beyond[from, to.Point] = true;
                if (from > to.Point || along < SameSpotFeet || along > to.Feet - SameSpotFeet) continue;
                between++;
                var off = Settled(bend[other.Point] - (bend[from] + (bend[to.Point] - bend[from]) * along / to.Feet));
                if (deepest >= 0 && Math.Abs(off) <= Math.Abs(deflection)) continue;
                (deepest, deflection) = (other.Point, off);
            }
            if (deepest < 0) continue;
            var segment = new FloorSegment
            {
                From = points[from],
                To = points[to.Point],
                At = points[deepest],
                Between = between,
                DeflectionInches = deflection,
                LengthInches = 12 * to.Feet,
                Whole = false,
            };
            found.Add((segment, from, to.Point));
        }
    }

    private Sight[] Sights(int from)
    {
        var here = points[from];
        return [.. Enumerable.Range(0, points.Count)
            .Select(index => (index, X: points[index].XFeet - here.XFeet, Y: points[index].YFeet - here.YFeet))
            .Select(there => new Sight(there.index, Math.Atan2(there.Y, there.X), Math.Sqrt(there.X * there.X + there.Y * there.Y)))
            .Where(sight => sight.Point != from && sight.Feet > SameSpotFeet)
            .OrderBy(sight => sight.Angle)];
    }

    private static IEnumerable<Sight> Fan(Sight[] sights, int centre, double width)
    {
        for (var step = 1; step < sights.Length; step++)
        {
            var other = sights[(centre + step) % sights.Length];
            if (Turn(other.Angle - sights[centre].Angle) > width) break;
            yield return other;
        }
        for (var step = 1; step < sights.Length; step++)
        {
            var other = sights[(centre - step + sights.Length) % sights.Length];
            if (Turn(sights[centre].Angle - other.Angle) > width) break;
            yield return other;
        }
    }

    // A thousand-millionth of an inch is rounding, not a floor.
    private static double Settled(double inches) => Math.Abs(inches) < 1e-9 ? 0 : inches;

    private static double Turn(double angle) => angle < 0 ? angle + 2 * Math.PI : angle;

    private readonly record struct Sight(int Point, double Angle, double Feet);
}
