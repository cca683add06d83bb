using static Purlin.Tests.Reckoning.Structure.FloorCases;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>What is no survey is refused by name.</summary>
public sealed class FloorRefusalTests
{
    [Theory]
    [InlineData("{}", "points: missing")]
    [InlineData("""{"points":[]}""", "points: a list of 0; a list of 4 to 500")]
    [InlineData("""{"points":[{"x":0,"y":0,"reading":0}]}""", "a list of 4 to 500")]
    [InlineData("""{"points":[{"x":0,"y":0},{"x":1,"y":0,"reading":1},{"x":0,"y":1,"reading":1},{"x":1,"y":1,"reading":1}]}""", "points[0].reading: missing")]
    [InlineData("""{"points":[{"x":1e999,"y":0,"reading":0},{"x":1,"y":0,"reading":1},{"x":0,"y":1,"reading":1},{"x":1,"y":1,"reading":1}]}""", "points[0].x")]
    [InlineData("""{"points":[{"x":"NaN","y":0,"reading":0},{"x":1,"y":0,"reading":1},{"x":0,"y":1,"reading":1},{"x":1,"y":1,"reading":1}]}""", "points[0].x")]
    [InlineData("""{"points":[{"x":0,"y":0,"reading":"2 psi"},{"x":1,"y":0,"reading":1},{"x":0,"y":1,"reading":1},{"x":1,"y":1,"reading":1}]}""", "points[0].reading")]
    [InlineData("""{"points":[{"x":0,"y":0,"reading":0,"colour":1},{"x":1,"y":0,"reading":1},{"x":0,"y":1,"reading":1},{"x":1,"y":1,"reading":1}]}""", "points[0].colour: unknown input")]
    [InlineData("""{"points":[{"x":0,"y":0,"reading":0},{"x":10,"y":10,"reading":1},{"x":20,"y":20,"reading":1},{"x":30,"y":30,"reading":1}]}""", "points: readings in one line")]
    [InlineData("""{"points":[{"x":5,"y":5,"reading":0},{"x":5,"y":5,"reading":1},{"x":5,"y":5,"reading":1},{"x":5,"y":5,"reading":1}]}""", "points: readings in one line")]
    [InlineData("""{"criteria":{"tilt":-1},"points":[{"x":0,"y":0,"reading":0},{"x":10,"y":0,"reading":1},{"x":0,"y":10,"reading":1},{"x":10,"y":10,"reading":1}]}""", "criteria.tilt")]
    [InlineData("""{"outline":[{"x":0,"y":0},{"x":9,"y":9},{"x":5,"y":5}],"points":[{"x":0,"y":0,"reading":0},{"x":10,"y":0,"reading":1},{"x":0,"y":10,"reading":1},{"x":10,"y":10,"reading":1}]}""", "outline: corners that enclose no area")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("floor-survey", json), StringComparison.Ordinal);

    [Fact]
    public void A_hundred_thousand_points_are_refused_by_their_number() =>
        Assert.Contains("a list of 4 to 500", Reckoned.Refused("floor-survey", Input(Enumerable.Range(0, 100_000).Select(index => (index % 1000.0, (double)(index / 1000), 0.0))).ToJsonString()), StringComparison.Ordinal);

    [Fact]
    public void Five_hundred_points_are_read()
    {
        var floor = Survey(Grid(Steps(2.5, 25), Steps(2.5, 20), (x, y) => 0.01 * x + 0.3 * Math.Sin(x / 12) * Math.Cos(y / 15)));
        Assert.Equal(500, floor.Number("points"));
        Assert.True(floor.Number("pairs_examined") > 10_000);
        Assert.NotEmpty(floor.At("contours")!.AsArray());
    }
}
