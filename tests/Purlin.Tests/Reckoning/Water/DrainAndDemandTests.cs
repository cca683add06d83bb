using CsCheck;

namespace Purlin.Tests.Reckoning.Water;

/// <summary>Slope of drains and demand of fixtures against the code's tables.</summary>
public sealed class DrainAndDemandTests
{
    private static Reckoned Drain(double run, double fall, double diameter, bool trapArm = false, string? code = null) =>
        Reckoned.Of("drain-slope", FormattableString.Invariant($$"""{"run":{{run:R}},"fall":{{fall:R}},"diameter":{{diameter:R}},"kind":"{{(trapArm ? "trap arm" : "drain")}}"{{(code is null ? "" : $",\"code\":\"{code}\"")}}}"""));

    // IRC P3005.3: 1/4 in a foot to 2-1/2 in, 1/8 from 3 to 6 in; IPC 704.1: 1/16 from 8 in. 10 ft of 2 in pipe must fall 2.5 in,
    // 24 ft of 4 in pipe 3.0 in.
    [Theory]
    [InlineData(10, 2.5, 2, 2.5, "within")]
    [InlineData(10, 2.49, 2, 2.5, "outside")]
    [InlineData(10, 1.5, 2, 2.5, "outside")]
    [InlineData(24, 3.0, 4, 3.0, "within")]
    [InlineData(24, 2.9, 4, 3.0, "outside")]
    [InlineData(10, 2.5, 2.5, 2.5, "within")]
    [InlineData(10, 1.25, 3, 1.25, "within")]
    [InlineData(16, 1.0, 8, 1.0, "within")]
    [InlineData(10, -0.5, 4, 1.25, "outside")]
    [InlineData(10, 0, 4, 1.25, "outside")]
    public void A_drain_falls_as_its_size_asks(double run, double fall, double diameter, double least, string verdict)
    {
        var drain = Drain(run, fall, diameter);
        drain.Near("least_fall", least, 1e-12);
        drain.Near("slope", fall / run, 1e-12);
        Assert.Equal(verdict, drain.Verdict);
    }

    // IPC 909.2: a trap arm falls no more than its diameter; with 1/4 in a foot a 2 in arm is 8 ft at most.
    [Theory]
    [InlineData(8, 2, 2, "within")]
    [InlineData(8, 2.1, 2, "outside")]
    [InlineData(9, 2.25, 2, "outside")]
    [InlineData(4, 1, 2, "within")]
    [InlineData(4, 0.9, 2, "outside")]
    public void A_trap_arm_falls_no_more_than_its_diameter(double run, double fall, double diameter, string verdict) => Assert.Equal(verdict, Drain(run, fall, diameter, trapArm: true, "IRC").Verdict);

    // UPC Table 1002.2 (2024, as a plumbing firm in Phoenix prints it): 2 in 5 ft, 1-1/2 in 3 ft 6 in, about half of the other code's 8 ft and 6 ft; unknown, the place decides between them.
    [Theory]
    [InlineData(6, 1.5, 2, "UPC", "outside")]
    [InlineData(5, 1.25, 2, "UPC", "within")]
    [InlineData(4, 1, 1.5, "UPC", "outside")]
    [InlineData(6, 1.5, 2, null, "cannot say")]
    [InlineData(9, 1.9, 2, null, "outside")]
    [InlineData(5, 1.25, 2, null, "within")]
    public void The_longest_trap_arm_is_that_of_the_code_of_the_place(double run, double fall, double diameter, string? code, string verdict) =>
        Assert.Equal(verdict, Drain(run, fall, diameter, trapArm: true, code).Verdict);

    [Fact]
    public void More_slope_never_worsens_a_drain() => Gen.Select(Gen.Double[1, 60], Gen.Double[-5, 20], Gen.Double[1, 12], Gen.Double[0, 10]).Sample((run, fall, diameter, more) =>
        Drain(run, fall, diameter).Verdict == "outside" || Drain(run, fall + more, diameter).Verdict == "within", iter: 300);

    [Fact]
    public void A_drain_in_millimetres_is_the_same_drain() => Gen.Select(Gen.Double[1, 60], Gen.Double[-5, 20], Gen.Double[1, 12]).Sample((run, fall, diameter) =>
    {
        var metric = Reckoned.Of("drain-slope", FormattableString.Invariant($$"""{"run":"{{run * 0.3048:R}} m","fall":"{{fall * 25.4:R}} mm","diameter":"{{diameter * 2.54:R}} cm"}"""));
        metric.Near("slope", fall / run, 1e-9);
        Assert.Equal(Drain(run, fall, diameter).Verdict, metric.Verdict);
    }, iter: 100);

    private const string House = """{"kind":"bathroom group","count":2},{"kind":"kitchen sink","count":1},{"kind":"dishwasher","count":1},{"kind":"laundry tray","count":1}""";

    private static Reckoned Demand(string fixtures, string more = "") => Reckoned.Of("fixture-demand", $$"""{"fixtures":[{{fixtures}}]{{more}}}""");

    // 2018 IPC Table E103.3(2): bathroom group 3.6, kitchen sink, dishwasher and laundry tray 1.4 each: 11.4 units in all.
    // National Standard Plumbing Code Table B.5.4: 11 units 8.5, 12 units 9 gpm: 8.7 on a straight line.
    // IPC Table E103.3(3) (from memory): 11 units 15.4, 12 units 16.0 gpm: 15.64.
    [Theory]
    [InlineData("NSPC", 8.7)]
    [InlineData("IPC", 15.64)]
    public void Two_baths_and_a_kitchen_ask_for_what_the_curve_says(string curve, double gpm)
    {
        var house = Demand(House, $$""","supply":"tank","curve":"{{curve}}" """);
        house.Near("fixture_units", 11.4, 1e-12);
        house.Near("demand", gpm, 1e-9);
    }

    // IRC Table AP103.3(3), an exam question on the 2018 edition: 12 units with flush tanks 16.0 gpm.
    [Fact]
    public void Twelve_units_ask_for_sixteen_gallons_a_minute()
    {
        Assert.Equal(12.0, Demand("""{"kind":"bidet","count":6}""").Number("fixture_units"));
        Assert.Equal(16.0, Demand("""{"kind":"bidet","count":6}""").Number("demand"));
    }

    // Copper Tube Handbook: 8 ft/s. 3/4 in type L (0.785 in inside): 8·π/4·0.785²·12·60/231 = 12.07 gpm.
    [Theory]
    [InlineData("""{"kind":"bathroom group","count":1},{"kind":"kitchen sink","count":1},{"kind":"shower","count":1}""", "3/4 in")]
    [InlineData(House, "1 in")]
    public void The_smallest_tube_is_by_speed(string fixtures, string size)
    {
        var house = Demand(fixtures);
        Assert.Equal(size, house.Text("smallest_service"));
        Assert.InRange(house.Number("speed"), 1, 8);
        Assert.Equal("cannot say", house.Verdict);
        Assert.Equal("within", Demand(fixtures, $$""","service":"{{size}}" """).Verdict);
    }

    [Fact]
    public void A_service_that_is_too_small_is_said() => Assert.Equal("outside", Demand(House, ""","service":"3/4 in" """).Verdict);

    [Theory]
    [InlineData("""{"kind":"toilet","count":1}""", ""","supply":"flush valve","curve":"IPC" """)]
    [InlineData("""{"kind":"bathroom group","count":90}""", "")]
    public void Off_the_curve_nothing_is_said(string fixtures, string more)
    {
        var house = Demand(fixtures, more);
        Assert.True(house.IsNull("demand"));
        Assert.Equal("cannot say", house.Verdict);
    }

    [Fact]
    public void More_fixtures_never_ask_for_less() => Gen.Select(Gen.Int[1, 10], Gen.Bool.Select(one => one ? "NSPC" : "IPC")).Sample((count, curve) =>
        Demand($$"""{"kind":"bathroom group","count":{{count + 1}}}""", $$""","curve":"{{curve}}" """).Number("demand") >= Demand($$"""{"kind":"bathroom group","count":{{count}}}""", $$""","curve":"{{curve}}" """).Number("demand"), iter: 40);

    [Theory]
    [InlineData("drain-slope", """{"run":0,"fall":1,"diameter":2}""", "run: 0")]
    [InlineData("drain-slope", """{"run":10,"fall":1}""", "diameter: missing")]
    [InlineData("drain-slope", """{"run":10,"fall":1,"diameter":24}""", "diameter: 24")]
    [InlineData("drain-slope", """{"run":1e999,"fall":1,"diameter":2}""", "run")]
    [InlineData("fixture-demand", """{"fixtures":[]}""", "fixtures: a list of 0")]
    [InlineData("fixture-demand", """{"fixtures":[{"kind":"fountain","count":1}]}""", "fixtures[0].kind: \"fountain\"")]
    [InlineData("fixture-demand", """{"fixtures":[{"kind":"toilet","count":-1}]}""", "fixtures[0].count: -1")]
    [InlineData("fixture-demand", """{"fixtures":[{"kind":"toilet","count":1.5}]}""", "fixtures[0].count: 1.5")]
    public void Bad_input_names_itself(string name, string json, string expected) => Assert.Contains(expected, Reckoned.Refused(name, json), StringComparison.Ordinal);
}
