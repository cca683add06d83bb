using System.Text.Json.Nodes;
using static Purlin.Tests.Reckoning.Structure.FloorCases;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>The lines of equal level lie where the floor has that level, and are fit to be drawn.</summary>
public sealed class FloorContourTests
{
    private static IEnumerable<(double Level, (double X, double Y)[] Line)> Lines(Reckoned floor) =>
        floor.At("contours")!.AsArray().SelectMany(contour => contour!["lines"]!.AsArray().Select(line =>
            (contour["level"]!["value"]!.GetValue<double>(), line!.AsArray().Select(at => (at![0]!.GetValue<double>(), at[1]!.GetValue<double>())).ToArray())));

    // Exact: on z = 0.06x - 0.03y every contour is the straight line with that equation, from edge to edge of the readings.
    [Fact]
    public void On_a_tilted_plane_they_are_straight_lines_from_edge_to_edge()
    {
        var floor = Survey(Grid(Steps(10, 5), Steps(10, 4), (x, y) => 0.06 * x - 0.03 * y));
        Assert.Equal(0.5, floor.Number("contour_interval"));
        var lines = Lines(floor).ToArray();
        Assert.Equal([-0.5, 0, 0.5, 1, 1.5, 2], lines.Select(line => line.Level));
        Assert.All(lines, contour =>
        {
            Assert.Equal(2, contour.Line.Length);
            Assert.All(contour.Line, at => Assert.Equal(contour.Level, 0.06 * at.X - 0.03 * at.Y, 6));
            Assert.All(contour.Line, at => Assert.True(Math.Min(Math.Min(at.X, 40 - at.X), Math.Min(at.Y, 30 - at.Y)) < 1e-9, "ends on the edge"));
        });
    }

    // Exact: the contours of z = 1.2·(1 - r²/648) are circles; the level 0.6 has r = 18 ft, touching the edge in its middle.
    [Fact]
    public void On_a_dome_they_are_rings_round_its_top()
    {
        var floor = Survey(Grid(Steps(4.5, 9), Steps(4.5, 9), (x, y) => 1.2 * (1 - ((x - 18) * (x - 18) + (y - 18) * (y - 18)) / 648)), """{"contour_interval":0.25}""");
        var ring = Assert.Single(Lines(floor), contour => contour.Level == 1);
        Assert.Equal(ring.Line[0], ring.Line[^1]);
        var radius = Math.Sqrt(648 * (1 - 1 / 1.2));
        Assert.All(ring.Line, at => Assert.InRange(Math.Sqrt(Math.Pow(at.X - 18, 2) + Math.Pow(at.Y - 18, 2)), radius - 0.2, radius + 0.2));
    }

    [Fact]
    public void They_stay_inside_the_outline_that_was_given()
    {
        var outline = """{"contour_interval":0.1,"outline":[{"x":0,"y":0},{"x":48,"y":0},{"x":48,"y":14},{"x":24,"y":14},{"x":24,"y":42},{"x":0,"y":42}]}""";
        var floor = Survey(Grid(Steps(12, 5), Steps(14, 4), (x, y) => 0.02 * x + 0.01 * y).Where(point => point.X <= 24 || point.Y <= 14), outline);
        Assert.NotEmpty(Lines(floor));
        Assert.All(Lines(floor).SelectMany(contour => contour.Line), at => Assert.True(at.X <= 24 + 1e-6 || at.Y <= 14 + 1e-6, $"{at} lies in the missing corner"));
    }

    [Fact]
    public void Their_number_is_bounded()
    {
        Assert.Contains("contour_interval", Reckoned.Refused("floor-survey", Input(Grid([0, 10, 20], [0, 10, 20], (x, y) => x), """{"contour_interval":0.1}""").ToJsonString()), StringComparison.Ordinal);
        Assert.True(Lines(Survey(Grid([0, 10, 20], [0, 10, 20], (x, y) => x))).Select(contour => contour.Level).Distinct().Count() <= 12);
    }

    [Fact]
    public void A_level_floor_has_none() => Assert.Empty(Survey(Grid([0, 10, 20], [0, 10, 20], (x, y) => 0)).At("contours")!.AsArray());
}
