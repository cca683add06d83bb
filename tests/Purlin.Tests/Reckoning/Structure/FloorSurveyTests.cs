using static Purlin.Tests.Reckoning.Structure.FloorCases;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Tilt and bend against floors whose answer is exact, and against the two numbers that are published.</summary>
public sealed class FloorSurveyTests
{
    // Published: a rigid slab of 40 by 60 ft with 1 % tilt both ways differs by 12 in at most (foundation engineers' page on stiffer
    // foundations and elevation differences). The plane leans √2 % and bends nowhere.
    [Fact]
    public void A_rigid_slab_at_one_percent_both_ways_differs_by_twelve_inches()
    {
        var floor = Survey(Grid([0, 20, 40], [0, 20, 40, 60], (x, y) => 0.12 * x + 0.12 * y));
        floor.Near("range", 12.0, 1e-9);
        floor.Near("tilt_x", 1.0, 1e-9);
        floor.Near("tilt_y", 1.0, 1e-9);
        floor.Near("tilt", Math.Sqrt(2), 1e-9);
        floor.Near("deflection.deflection", 0, 1e-9);
        Assert.Equal("outside", floor.Verdict);
        Assert.Equal(["outside", "within"], [floor.Text("criteria[0].verdict"), floor.Text("criteria[1].verdict")]);
    }

    // Published: one inch in thirty feet is 1/360 (page on industry-standard practices for slab foundations). The limit itself is within.
    [Theory]
    [InlineData(-1.0, 360, "within", "dish")]
    [InlineData(1.0, 360, "within", "crown")]
    [InlineData(-1.01, 356.4356435643564, "outside", "dish")]
    public void One_inch_in_thirty_feet_is_the_limit(double middle, double oneIn, string verdict, string shape)
    {
        var floor = Survey(Strip((0, 0), (15, middle), (30, 0)));
        floor.Near("deflection.deflection", middle, 1e-9);
        floor.Near("deflection.effective_length", 360, 1e-9);
        floor.Near("deflection.one_in", oneIn, 1e-6);
        Assert.Equal(shape, floor.Text("deflection.shape"));
        Assert.Equal(verdict, floor.Verdict);
    }

    // Exact: the plane z = 0.06x - 0.03y in over feet; tilt = 100·√(0.06² + 0.03²)/12 = 0.559017 %.
    [Fact]
    public void A_tilted_plane_leans_and_bends_nowhere()
    {
        var floor = Survey(Grid(Steps(10, 5), Steps(10, 4), (x, y) => 0.06 * x - 0.03 * y));
        floor.Near("plane.a", 0.06, 1e-12);
        floor.Near("plane.b", -0.03, 1e-12);
        floor.Near("plane.c", 0, 1e-12);
        floor.Near("tilt", 0.559017, 5e-7);
        floor.Near("range", 3.30, 1e-9);
        floor.Near("high.level", 2.40, 1e-9);
        floor.Near("low.level", -0.90, 1e-9);
        Assert.Equal(40, floor.Number("high.x"));
        Assert.Equal(30, floor.Number("low.y"));
        Assert.True(floor.IsNull("deflection.one_in"));
        floor.Near("falls_toward", Math.Atan2(0.03, -0.06) * 180 / Math.PI, 1e-9);
        Assert.Equal("within", floor.Verdict);
    }

    // Exact: dome z = 1.2·[1 - ((x-18)² + (y-18)²)/648] in on a 36 ft square. Centre line 0.600 in over 432 in = 1/720;
    // diagonal 1.200 in over 432·√2 in = 1/509.117. A survey that leaves out diagonals finds 1/720.
    [Theory]
    [InlineData(1, 509.1168824543142, "within")]
    [InlineData(2, 254.5584412271571, "outside")]
    public void A_dome_bends_most_along_its_diagonal(double times, double oneIn, string verdict)
    {
        var floor = Survey(Grid(Steps(9, 5), Steps(9, 5), (x, y) => times * 1.2 * (1 - ((x - 18) * (x - 18) + (y - 18) * (y - 18)) / 648)));
        floor.Near("tilt", 0, 1e-12);
        floor.Near("plane.c", 0.6 * times, 1e-12);
        floor.Near("residual_rms", Math.Sqrt(0.126) * times, 1e-12);
        floor.Near("deflection.deflection", 1.2 * times, 1e-9);
        floor.Near("deflection.one_in", oneIn, 1e-6);
        var centre = floor.At("lines")!.AsArray().Single(line => line!["from"]!["y"]!["value"]!.GetValue<double>() == 18 && line["to"]!["y"]!["value"]!.GetValue<double>() == 18)!;
        Assert.Equal(720 / times, centre["one_in"]!.GetValue<double>(), 6);
        Assert.Equal(3, centre["between"]!.GetValue<int>());
        Assert.Equal(verdict, floor.Verdict);
    }

    // Exact: level to 25 ft, then falling. Whole profile 0.9375 in over 480 in = 1/512, worst part 10 to 40 ft 0.750 in over 360 in = 1/480;
    // with 0.16 in/ft 1/320 and 1/300. Hinge rule: a change of slope θ with arms p and q bends θ·pq/(p+q)².
    [Theory]
    [InlineData(0.10, 512, 480, "within")]
    [InlineData(0.16, 320, 300, "outside")]
    public void An_edge_that_drops_is_found_in_its_worst_part(double inchesPerFoot, double whole, double worst, string verdict)
    {
        var floor = Survey(Strip([.. Steps(5, 9).Select(x => (x, x <= 25 ? 0.0 : -inchesPerFoot * (x - 25)))]));
        floor.Near("line_deflection.one_in", whole, 1e-6);
        Assert.True(floor.Flag("line_deflection.whole"));
        floor.Near("deflection.one_in", worst, 1e-6);
        floor.Near("deflection.effective_length", 360, 1e-9);
        Assert.Equal([10, 25, 40], [floor.Number("deflection.from.x"), floor.Number("deflection.at.x"), floor.Number("deflection.to.x")]);
        Assert.Equal(verdict, floor.Verdict);
    }

    // Exact: θ/4 at equal arms, so 1/360 is a change of slope of 4/360 = 1.1111 %, which is 0.13333 in a foot.
    [Theory]
    [InlineData(0.1333, "within")]
    [InlineData(0.1334, "outside")]
    public void A_hinge_of_one_and_a_ninth_percent_is_the_limit(double inchesPerFoot, string verdict) =>
        Assert.Equal(verdict, Survey(Strip([.. Steps(5, 9).Select(x => (x, x <= 20 ? 0.0 : -inchesPerFoot * (x - 20)))])).Verdict);

    // Exact, solved by hand from the normal equations with Sxy ≠ 0.
    [Fact]
    public void A_plane_through_skewed_points_is_the_least_squares_one()
    {
        var floor = Survey([(0, 0, 0), (10, 2, -0.2), (21, 1, -0.5), (30, 12, -0.4), (18, 17, 0.1), (4, 20, 0.3)]);
        floor.Near("plane.a", -0.021297338, 5e-10);
        floor.Near("plane.b", 0.024546781, 5e-10);
        floor.Near("plane.c", -0.034792258, 5e-10);
        floor.Near("tilt_x", -0.177478, 5e-7);
        floor.Near("tilt_y", 0.204557, 5e-7);
        floor.Near("tilt", 0.270817, 5e-7);
    }

    // Exact: an L-shaped plan; plane and residuals by the normal equations, row and column by hand.
    [Fact]
    public void An_L_shaped_plan_is_read_along_its_own_lines()
    {
        double[] first = [0, -0.1, -0.3, -0.6, -1.1], second = [0.1, 0.1, -0.1, -0.3, -0.7], third = [0, 0.2, 0.1], fourth = [-0.2, 0, 0];
        double[][] rows = [first, second, third, fourth];
        var points = rows.SelectMany((row, y) => row.Select((z, x) => (12.0 * x, 14.0 * y, z))).ToArray();
        var floor = Survey(points);
        floor.Near("plane.a", -0.015167197, 5e-10);
        floor.Near("plane.b", 0.005112602, 5e-10);
        floor.Near("plane.c", 0.025039809, 5e-10);
        floor.Near("tilt", 0.133381, 5e-7);
        floor.Near("residual_max", 0.296, 5e-4);
        floor.Near("residual_min", -0.440, 5e-4);
        floor.Near("residual_rms", 0.198804, 5e-7);
        floor.Near("range", 1.3, 1e-9);
        var row = floor.At("lines")!.AsArray().Single(line => line!["from"]!["label"]!.GetValue<string>() == "1" && line["to"]!["label"]!.GetValue<string>() == "5")!;
        Assert.Equal(2304, 12 * 48 / row["deflection"]!["value"]!.GetValue<double>(), 6);
        Assert.True(floor.IsNull("stray"));
        Assert.Equal("within", floor.Verdict);
    }

    // Exact: reference on tile 0.375 in thick; carpet 0.35 in thicker by a threshold reads +0.05 where the slab is 0.30 in low, and a bare
    // closet 0.40 in thinner than tile reads -1.10 where the slab is 0.70 in low.
    [Fact]
    public void Coverings_are_taken_off_with_their_running_offset()
    {
        var floor = Reckoned.Of("floor-survey", """
            {"points":[{"x":0,"y":0,"reading":0},{"x":10,"y":0,"reading":0.05,"covering":0.35,"label":"carpet"},{"x":0,"y":10,"reading":-1.10,"covering":-0.40,"label":"closet"},{"x":10,"y":10,"reading":0}]}
            """);
        floor.Near("levels[1].level", -0.30, 1e-12);
        floor.Near("levels[2].level", -0.70, 1e-12);
        Assert.Contains(floor.Working.Steps, step => InWords.Of(step.Text).StartsWith("Reference covering not given", StringComparison.Ordinal));
        Assert.Equal("closet", floor.Text("low.label"));
        // Four corners have nothing between them.
        Assert.Equal("cannot say", floor.Verdict);
        Assert.Equal("cannot say", floor.Text("criteria[1].verdict"));
    }

    [Fact]
    public void The_thickness_under_the_reference_moves_all_levels_alike()
    {
        var floor = Reckoned.Of("floor-survey", """
            {"reference_covering":"9.525 mm","points":[{"x":0,"y":0,"reading":0,"covering":0.375},{"x":10,"y":0,"reading":0,"covering":0.375},{"x":0,"y":10,"reading":0.1,"covering":0.375},{"x":10,"y":10,"reading":0.1,"covering":0.375}]}
            """);
        floor.Near("levels[0].level", 0, 1e-12);
        floor.Near("tilt_y", 100 * 0.1 / 120, 1e-12);
    }

    [Fact]
    public void The_users_own_limits_are_used_and_said()
    {
        var floor = Survey(Strip((0, 0), (15, -1), (30, 0)), """{"criteria":{"deflection":480}}""");
        Assert.Equal("outside", floor.Verdict);
        Assert.Contains("limit of deflection as given", floor.Working.Sources);
        Assert.Equal(480, floor.Number("criteria[1].limit"));
    }

    [Fact]
    public void What_nobody_has_confirmed_is_marked_in_the_working()
    {
        var floor = Survey(Strip((0, 0), (15, -1), (30, 0)));
        Assert.Contains(floor.Working.Sources, source => source.Contains("effective length", StringComparison.Ordinal) && source.EndsWith("(from memory)", StringComparison.Ordinal));
        Assert.Contains(floor.Working.Steps, step => InWords.Of(step.Text).StartsWith("Limit of tilt not given", StringComparison.Ordinal));
    }
}
