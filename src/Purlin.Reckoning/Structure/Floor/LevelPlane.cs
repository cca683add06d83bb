namespace Purlin.Reckoning.Structure.Floor;

/// <summary>The plane z = ax + by + c, z in inches over x and y in feet, that lies closest to the readings by least squares.</summary>
/// <param name="A">Rise along x, inches a foot.</param>
/// <param name="B">Rise along y, inches a foot.</param>
/// <param name="C">Height at the origin, inches.</param>
internal readonly record struct LevelPlane(double A, double B, double C)
{
    // Readings whose spread across their main direction is less than this lie on a line as far as a tape can tell.
    private const double NarrowestFeet = 0.25;

    public double TiltPercent => 100 * Math.Sqrt(A * A + B * B) / 12;

    public double TiltXPercent => 100 * A / 12;

    public double TiltYPercent => 100 * B / 12;

    /// <summary>Direction in which the floor falls, degrees anticlockwise from the x axis, 0 to 360.</summary>
    public double FallDegrees
    {
        get
        {
            var degrees = Math.Atan2(-B, -A) * 180 / Math.PI;
            return degrees < 0 ? degrees + 360 : degrees;
        }
    }

    public double At(double x, double y) => A * x + B * y + C;

    public double Residual(FloorPoint point) => point.LevelInches - At(point.XFeet, point.YFeet);

    /// <summary>The plane, or none where the points lie on one line: a line does not say how the floor leans across it.</summary>
    public static LevelPlane? Fit(IReadOnlyList<FloorPoint> points)
    {
        var (mx, my, mz) = (points.Average(point => point.XFeet), points.Average(point => point.YFeet),
            points.Average(point => point.LevelInches));
        double xx = 0, yy = 0, xy = 0, xz = 0, yz = 0;
        foreach (var point in points)
        {
            var (x, y, z) = (point.XFeet - mx, point.YFeet - my, point.LevelInches - mz);
            xx += x * x;
            yy += y * y;
            xy += x * y;
            xz += x * z;
            yz += y * z;
        }
        var narrow = (xx + yy - Math.Sqrt((xx - yy) * (xx - yy) + 4 * xy * xy)) / 2;
        if (Math.Sqrt(Math.Max(narrow, 0) / points.Count) < NarrowestFeet) return null;
        var spread = xx * yy - xy * xy;
        var (a, b) = ((xz * yy - yz * xy) / spread, (yz * xx - xz * xy) / spread);
        return new LevelPlane(a, b, mz - a * mx - b * my);
    }
}
