using System.Collections.Immutable;

namespace Purlin.Reckoning.Structure.Floor;

/// <summary>Lines of equal level, to be drawn: marching squares over the level field, chained, cut to the outline, thinned.</summary>
internal static class FloorContours
{
    private const int CellsAlong = 48;

    // Contour intervals a person would choose, inches; the finest that gives at most this many lines is taken.
    private static readonly ImmutableArray<double> Intervals = [0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10, 20, 50];
    private const int MostLevels = 12;

    /// <summary>The interval for a range of levels, when none was asked for.</summary>
    public static double Interval(double rangeInches) =>
        Intervals.FirstOrDefault(interval => rangeInches / interval <= MostLevels, Intervals[^1]);

    /// <summary>The contour levels strictly between lowest and highest.</summary>
    public static IEnumerable<double> Levels(double lowest, double highest, double interval)
    {
        for (var count = (long)Math.Floor(lowest / interval) + 1; count * interval < highest - 1e-9; count++)
        {
            if (count * interval > lowest + 1e-9) yield return count * interval;
        }
    }

    /// <summary>The lines of one level.</summary>
    public static ImmutableArray<ImmutableArray<(double X, double Y)>> At(double level, LevelGrid grid, Polygon outline) =>
        [.. Chain(Crossings(level, grid)).SelectMany(outline.Clip).Where(line => line.Length > 1)
        .Select(line => Thin(line, grid.StepFeet / 20)).Where(line => Length(line) > grid.StepFeet)];

    /// <summary>The field over the outline and a cell beyond, so that lines reach the edge before they are cut there.</summary>
    public static LevelGrid Grid(LevelField field, Polygon outline)
    {
        var (left, right) = (outline.Corners.Min(corner => corner.X), outline.Corners.Max(corner => corner.X));
        var (low, high) = (outline.Corners.Min(corner => corner.Y), outline.Corners.Max(corner => corner.Y));
        var step = Math.Max(right - left, high - low) / CellsAlong;
        var levels = new double[(int)Math.Ceiling((right - left) / step) + 3, (int)Math.Ceiling((high - low) / step) + 3];
        for (var i = 0; i < levels.GetLength(0); i++)
        {
            for (var j = 0; j < levels.GetLength(1); j++) levels[i, j] = field.At(left + (i - 1) * step, low + (j - 1) * step);
        }
        return new LevelGrid(left - step, low - step, step, levels);
    }

    // Each crossing is named by the grid edge it lies on, so that neighbours join exactly. A level that meets a node is nudged past it.
    private static IEnumerable<(Edge From, Edge To, LevelGrid Grid, double Level)> Crossings(double level, LevelGrid grid)
    {
        level += 1e-9;
        for (var i = 0; i + 1 < grid.Levels.GetLength(0); i++)
        {
            for (var j = 0; j + 1 < grid.Levels.GetLength(1); j++)
            {
                Edge[] round = [new(i, j, false), new(i + 1, j, true), new(i, j + 1, false), new(i, j, true)];
                double[] corners = [grid.Levels[i, j], grid.Levels[i + 1, j], grid.Levels[i + 1, j + 1], grid.Levels[i, j + 1]];
                if (corners.Any(double.IsNaN)) continue;
                var crossed = Enumerable.Range(0, 4).Where(side => corners[side] > level != corners[(side + 1) % 4] > level).ToArray();
                if (crossed.Length == 2) yield return (round[crossed[0]], round[crossed[1]], grid, level);
                if (crossed.Length != 4) continue;
                // A saddle: the middle decides which corners belong together.
                var turn = corners.Average() > level == corners[0] > level ? 0 : 1;
                yield return (round[turn], round[turn + 1], grid, level);
                yield return (round[(turn + 2) % 4], round[(turn + 3) % 4], grid, level);
            }
        }
    }

    private static List<ImmutableArray<(double X, double Y)>> Chain(IEnumerable<(Edge From, Edge To, LevelGrid Grid, double Level)> crossings)
    {
        var all = crossings.ToArray();
        var joined = all.SelectMany((one, index) => new[] { (Edge: one.From, Index: index), (Edge: one.To, Index: index) })
            .ToLookup(end => end.Edge, end => end.Index);
        var used = new bool[all.Length];
        List<ImmutableArray<(double X, double Y)>> lines = [];
        // Open lines from their ends first; what is left is closed.
        foreach (var start in all.SelectMany((one, index) => new[] { (Edge: one.From, index), (Edge: one.To, index) })
            .OrderBy(end => joined[end.Edge].Count()))
        {
            if (used[start.index]) continue;
            List<(double X, double Y)> line = [start.Edge.Cross(all[start.index].Grid, all[start.index].Level)];
            var (at, next) = (start.Edge, start.index);
            while (next >= 0)
            {
                used[next] = true;
                at = all[next].From == at ? all[next].To : all[next].From;
                line.Add(at.Cross(all[next].Grid, all[next].Level));
                next = joined[at].Where(index => !used[index]).DefaultIfEmpty(-1).First();
            }
            lines.Add([.. line]);
        }
        return lines;
    }

    // Douglas and Peucker (1973): a point stays when the line would move by more than the tolerance without it.
    private static ImmutableArray<(double X, double Y)> Thin(ImmutableArray<(double X, double Y)> line, double tolerance)
    {
        var kept = new bool[line.Length];
        (kept[0], kept[^1]) = (true, true);
        var open = new Stack<(int From, int To)>([(0, line.Length - 1)]);
        while (open.TryPop(out var part))
        {
            if (part.To - part.From < 2) continue;
            var furthest = Enumerable.Range(part.From + 1, part.To - part.From - 1)
                .MaxBy(at => Off(line[part.From], line[part.To], line[at]));
            if (Off(line[part.From], line[part.To], line[furthest]) <= tolerance) continue;
            kept[furthest] = true;
            open.Push((part.From, furthest));
            open.Push((furthest, part.To));
        }
        return [.. line.Where((_, at) => kept[at])];
    }

    private static double Off((double X, double Y) a, (double X, double Y) b, (double X, double Y) point)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt(dx * dx + dy * dy);
        var (px, py) = (point.X - a.X, point.Y - a.Y);
        return length < 1e-12 ? Math.Sqrt(px * px + py * py) : Math.Abs(dx * py - dy * px) / length;
    }

    private static double Length(ImmutableArray<(double X, double Y)> line) =>
        line.Zip(line.Skip(1), (a, b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y))).Sum();

    private readonly record struct Edge(int I, int J, bool Up)
    {
        public (double X, double Y) Cross(LevelGrid grid, double level)
        {
            var (from, to) = (grid.Levels[I, J], Up ? grid.Levels[I, J + 1] : grid.Levels[I + 1, J]);
            var along = (level - from) / (to - from);
            return (grid.Left + (I + (Up ? 0 : along)) * grid.StepFeet, grid.Bottom + (J + (Up ? along : 0)) * grid.StepFeet);
        }
    }
}

/// <summary>Levels at the nodes of a square grid.</summary>
/// <param name="Left">x of the first column, feet.</param>
/// <param name="Bottom">y of the first row, feet.</param>
/// <param name="StepFeet">Distance between nodes.</param>
/// <param name="Levels">Inches; not a number where nothing is known.</param>
internal sealed record LevelGrid(double Left, double Bottom, double StepFeet, double[,] Levels);
