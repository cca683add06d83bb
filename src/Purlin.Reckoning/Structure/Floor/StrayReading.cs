namespace Purlin.Reckoning.Structure.Floor;

/// <summary>
/// One reading that the others do not bear out. Each reading is left out in turn and foretold by a smooth surface through the rest
/// (a quadratic from 12 readings on, a plane below); its distance from that, in units of the scatter of the rest, follows Student's t.
/// Deleted residuals and their distribution: Cook and Weisberg, Residuals and Influence in Regression (1982), section 2.2.
/// </summary>
internal static class StrayReading
{
    private const int FewestForPlane = 6;
    private const int FewestForQuadratic = 12;

    // One survey in a thousand with no slip in it is called stray; Bonferroni's share of that for each reading.
    private const double FalseAlarms = 0.001;

    /// <summary>The stray reading and how far it stands from what the others foretell, inches; none when all bear each other out.</summary>
    public static (FloorPoint Point, double Inches)? Find(IReadOnlyList<FloorPoint> points, double leastInches, double accuracyInches)
    {
        if (points.Count < FewestForPlane) return null;
        var rows = Rows(points, points.Count >= FewestForQuadratic);
        var terms = rows[0].Length;
        if (Inverse(rows, terms) is not { } inverse
            && (terms == 3 || (inverse = Inverse(rows = Rows(points, quadratic: false), terms = 3)!) is null)) return null;
        var levels = points.Select(point => point.LevelInches).ToArray();
        var fit = Times(inverse, Enumerable.Range(0, terms).Select(term => rows.Select((row, at) => row[term] * levels[at]).Sum())
            .ToArray());
        var off = rows.Select((row, at) => levels[at] - Dot(row, fit)).ToArray();
        var squares = off.Sum(value => value * value);
        var freedom = points.Count - terms - 1;
        (FloorPoint, double)? worst = null;
        var worstChance = FalseAlarms / points.Count;
        for (var at = 0; at < rows.Length; at++)
        {
            var free = 1 - Dot(rows[at], Times(inverse, rows[at]));
            if (free < 1e-9) continue;
            var deleted = off[at] / free;
            if (Math.Abs(deleted) < leastInches) continue;
            // The rest never scatter less than the instrument does.
            var scatter = Math.Max(Math.Sqrt(Math.Max(squares - off[at] * off[at] / free, 0) / freedom), accuracyInches / 2);
            var chance = TwoSided(Math.Abs(off[at]) / (scatter * Math.Sqrt(free)), freedom);
            if (chance >= worstChance) continue;
            (worst, worstChance) = ((points[at], deleted), chance);
        }
        return worst;
    }

    private static double[][] Rows(IReadOnlyList<FloorPoint> points, bool quadratic)
    {
        var (mx, my) = (points.Average(point => point.XFeet), points.Average(point => point.YFeet));
        var scale = points.Max(point => Math.Max(Math.Abs(point.XFeet - mx), Math.Abs(point.YFeet - my)));
        return [.. points.Select(point => ((point.XFeet - mx) / scale, (point.YFeet - my) / scale)).Select(point =>
        {
            var (x, y) = point;
            return quadratic ? new[] { 1, x, y, x * x, x * y, y * y } : [1, x, y];
        })];
    }

    // None when the terms cannot be told apart (all readings in two rows).
    private static double[][]? Inverse(double[][] rows, int terms)
    {
        var work = Enumerable.Range(0, terms).Select(i => Enumerable.Range(0, 2 * terms)
            .Select(j => j < terms ? rows.Sum(row => row[i] * row[j]) : j - terms == i ? 1.0 : 0.0).ToArray()).ToArray();
        return Elimination.Solve(work, 1e-9 * rows.Length) ? [.. work.Select(row => row[terms..])] : null;
    }

    private static double[] Times(double[][] matrix, double[] vector) => [.. matrix.Select(row => Dot(row, vector))];

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();

    // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4: finite series for whole degrees of freedom.
    internal static double TwoSided(double t, int freedom)
    {
        if (double.IsInfinity(t)) return 0;
        var angle = Math.Atan(t / Math.Sqrt(freedom));
        var (sin, cos) = Math.SinCos(angle);
        var even = freedom % 2 == 0;
        var (sum, term) = (0.0, even ? 1.0 : cos);
        for (var k = even ? 2 : 3; k <= freedom; k += 2)
        {
            sum += term;
            term *= cos * cos * (k - 1) / k;
        }
        var within = even ? sin * sum : 2 / Math.PI * (angle + (freedom == 1 ? 0 : sin * sum));
        return 1 - within;
    }
}
