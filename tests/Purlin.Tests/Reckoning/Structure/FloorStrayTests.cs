using static Purlin.Tests.Reckoning.Structure.FloorCases;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>One slip of the pen must not decide what a floor is said to be, and must not vanish either.</summary>
public sealed class FloorStrayTests
{
    private static readonly double[] Along = Steps(8, 6), Across = Steps(8, 5);

    private static (double X, double Y, double Z)[] Gentle() => [.. Grid(Along, Across, (x, y) => 0.02 * x - 0.01 * y + 0.1 * Math.Sin(x / 9) * Math.Cos(y / 7))];

    [Theory]
    [InlineData(14, 10.0)]
    [InlineData(14, -10.0)]
    [InlineData(8, 1.5)]
    [InlineData(21, -0.9)]
    public void A_slip_in_the_middle_is_set_aside_and_said(int at, double slip)
    {
        var points = Gentle();
        var without = Survey(points.Where((_, index) => index != at));
        points[at].Z += slip;
        var floor = Survey(points);
        Assert.Equal(at, floor.Number("stray.index"));
        Assert.Equal(without.Verdict, floor.Verdict);
        floor.Near("tilt", without.Number("tilt"), 1e-12);
        floor.Near("deflection.one_in", without.Number("deflection.one_in"), 1e-9);
        Assert.Contains($"Without reading {at + 1}", floor.Because, StringComparison.Ordinal);
        Assert.Contains(floor.Working.Cautions, caution => InWords.Of(caution).Contains($"Reading {at + 1} does not agree", StringComparison.Ordinal));
        Assert.Contains(floor.Working.Steps, step => step.Value is { } inches && InWords.Of(step.Text).StartsWith($"Reading {at + 1} stands", StringComparison.Ordinal) && Math.Abs(inches - slip) < 0.3);
    }

    [Fact]
    public void A_lone_drop_at_a_corner_may_be_real_so_nothing_is_said()
    {
        var points = Gentle();
        points[0].Z -= 4;
        var floor = Survey(points);
        Assert.Equal(0, floor.Number("stray.index"));
        Assert.Equal("cannot say", floor.Verdict);
        Assert.Contains("can be real", floor.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void An_honest_floor_has_no_stray_reading()
    {
        Assert.True(Survey(Gentle()).IsNull("stray"));
        Assert.True(Survey(Grid(Along, Across, (x, y) => x <= 24 ? 0 : -0.1 * (x - 24))).IsNull("stray"));
        Assert.True(Survey(Grid(Along, Across, (x, y) => 1.2 - ((x - 20) * (x - 20) + (y - 16) * (y - 16)) / 400)).IsNull("stray"));
    }

    // Student's t, two-sided 0.1 % points: 12.924 at 3, 6.869 at 5, 5.041 at 8, 3.646 at 30 degrees of freedom
    // (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper 0.0005).
    [Theory]
    [InlineData(12.924, 3)]
    [InlineData(6.869, 5)]
    [InlineData(5.041, 8)]
    [InlineData(3.646, 30)]
    public void The_chance_of_a_distance_is_students(double t, int freedom) =>
        Assert.Equal(0.001, Purlin.Reckoning.Structure.Floor.StrayReading.TwoSided(t, freedom), 6);
}
