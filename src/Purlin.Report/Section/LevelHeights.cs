namespace Purlin.Report.Section;

/// <summary>
/// How high every floor of the house lies: all stacks hang on one datum, the ground floor of the main part, and a split level lies half
/// way between.
/// </summary>
internal sealed class LevelHeights
{
    private const int Lowest = -2, Highest = 13;
    private readonly double[] storeys = new double[Highest - Lowest];
    private readonly double thick;

    private LevelHeights(SectionMeasures measures)
    {
        thick = measures.FloorThickness;
        Array.Fill(storeys, measures.Row + thick);
    }

    public static LevelHeights Of(IReadOnlyList<Stack> stacks, IReadOnlyList<double> widths, SectionMeasures measures)
    {
        LevelHeights heights = new(measures);
        for (var at = 0; at < stacks.Count; at++)
        {
            foreach (var level in stacks[at].Levels)
            {
                var width = level.IsUnderRoof ? widths[at] - (2 * StackWidths.Knee(widths[at])) : widths[at];
                heights.Need(level.At, Rows.Tall(Rows.Count(level.Rooms, width, measures), measures.Row, measures) + heights.thick);
            }
        }
        return heights;
    }

    /// <summary>The upper side of a floor; 0 for the datum, upward less.</summary>
    public double Floor(double at)
    {
        double y = 0;
        for (var storey = 0; storey < at; storey++) y -= Storey(storey) * Math.Min(1, at - storey);
        for (var storey = -1; storey >= Math.Floor(at) && at < 0; storey--) y += Storey(storey) * Math.Min(1, storey + 1 - at);
        return y;
    }

    /// <summary>The underside of what is over a level.</summary>
    public double Ceiling(double at) => Floor(at + 1) + thick;

    private double Storey(int number) => storeys[Math.Clamp(number - Lowest, 0, storeys.Length - 1)];

    private void Need(double at, double height)
    {
        foreach (var storey in (double[])[Math.Floor(at), Math.Ceiling(at)])
        {
            var index = Math.Clamp((int)storey - Lowest, 0, storeys.Length - 1);
            storeys[index] = Math.Max(storeys[index], height);
        }
    }
}
