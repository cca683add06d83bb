namespace Purlin.Reckoning.Structure.Floor;

/// <summary>
/// Level anywhere on the floor: the best-fit plane plus moving least squares of what is left (Lancaster and Salkauskas, Mathematics of
/// Computation 37 (1981)). It goes through the readings to within their accuracy, follows a true plane exactly, and turns with the plan.
/// </summary>
internal sealed class LevelField
{
    // A twentieth of a spacing, squared: keeps the weight of a reading finite at the reading itself.
    private const double Softening = 0.0025;

    // Beyond five spacings a reading weighs less than 1/625 of a near one; leaving it out makes 500 readings as quick as 60.
    private const double FarSquared = 25;
    private const int FewPoints = 60;

    private readonly IReadOnlyList<FloorPoint> points;
    private readonly LevelPlane plane;
    private readonly double[] left;
    private readonly double spacingFeet;

    public LevelField(IReadOnlyList<FloorPoint> points, LevelPlane plane, double areaSquareFeet)
    {
        this.points = points;
        this.plane = plane;
        left = [.. points.Select(plane.Residual)];
        spacingFeet = Math.Sqrt(areaSquareFeet / points.Count);
        var widest = points.Max(point => points.Select(other => Far(point, other)).Where(far => far > 1e-4).Min());
        ReachFeet = Math.Max(Math.Sqrt(widest), 1.5 * spacingFeet);
    }

    /// <summary>
    /// Further than this from every reading nothing is known: the widest gap between neighbours, or one and a half spacings.
    /// </summary>
    public double ReachFeet { get; }

    /// <summary>The level in inches; not a number where no reading is near.</summary>
    public double At(double x, double y)
    {
        const int Terms = 6;
        var rows = new double[Terms][];
        for (var row = 0; row < Terms; row++) rows[row] = new double[Terms + 1];
        var nearest = double.PositiveInfinity;
        Span<double> terms = stackalloc double[Terms];
        for (var index = 0; index < points.Count; index++)
        {
            var (dx, dy) = ((points[index].XFeet - x) / spacingFeet, (points[index].YFeet - y) / spacingFeet);
            var squared = dx * dx + dy * dy;
            nearest = Math.Min(nearest, squared);
            if (squared > FarSquared && points.Count > FewPoints) continue;
            var weight = 1 / ((squared + Softening) * (squared + Softening));
            (terms[0], terms[1], terms[2], terms[3], terms[4], terms[5]) = (1, dx, dy, dx * dx, dx * dy, dy * dy);
            for (var i = 0; i < Terms; i++)
            {
                for (var j = 0; j <= i; j++) rows[i][j] += weight * terms[i] * terms[j];
                rows[i][Terms] += weight * terms[i] * left[index];
            }
        }
        if (nearest * spacingFeet * spacingFeet > ReachFeet * ReachFeet * 1.0001) return double.NaN;
        for (var i = 0; i < Terms; i++)
        {
            for (var j = i + 1; j < Terms; j++) rows[i][j] = rows[j][i];
            // Where the near readings do not show a slope or a bow, there is none: the ridge holds it at the plane.
            if (i > 0) rows[i][i] += 1e-6 * rows[0][0];
        }
        Elimination.Solve(rows, 0);
        return plane.At(x, y) + rows[0][Terms];
    }

    private static double Far(FloorPoint a, FloorPoint b) => Math.Pow(a.XFeet - b.XFeet, 2) + Math.Pow(a.YFeet - b.YFeet, 2);
}
