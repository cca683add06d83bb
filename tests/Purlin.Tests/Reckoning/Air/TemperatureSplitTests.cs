using CsCheck;

namespace Purlin.Tests.Reckoning.Air;

public sealed class TemperatureSplitTests
{
    // Worked splits on the target table of the California Energy Commission's 2008 Residential Appendices, RA3.2 (table from memory,
    // bands and the 55 °F limit confirmed on pages RA3-9 to RA3-16).
    [Theory]
    [InlineData(75, 63, 56, "installer", 18.6, 0.4, "within")]
    [InlineData(80, 67, 60, "installer", 18.3, 1.7, "within")]
    [InlineData(75, 63, 51, "installer", 18.6, 5.4, "outside")]
    [InlineData(75, 63, 63, "installer", 18.6, -6.6, "outside")]
    [InlineData(78, 65, 61.2, "installer", 18.8, -2.0, "within")]
    [InlineData(76, 63, 53, "installer", 19.2, 3.8, "outside")]
    [InlineData(76, 63, 53, "rater", 19.2, 3.8, "within")]
    [InlineData(70, 50, 49.1, "installer", 20.9, 0, "within")]
    [InlineData(75, 63, 53.4, "installer", 18.6, 3, "within")]
    [InlineData(75, 63, 59.4, "installer", 18.6, -3, "within")]
    [InlineData(75, 63, 53.3, "installer", 18.6, 3.1, "outside")]
    public void Worked_split(double dry, double wet, double supply, string band, double target, double difference, string verdict)
    {
        var working = Worked.Of("temperature-split", $$"""{"return_dry_bulb": {{dry}}, "return_wet_bulb": {{wet}}, "supply_dry_bulb": {{supply}}, "outdoor": 80, "band": "{{band}}"}""");
        Worked.Near(target, working.Value("target_split", "°F"), 1e-9);
        Worked.Near(difference, working.Value("difference", "°F"), 1e-9);
        Assert.Equal(verdict, working.Verdict.Word);
    }

    // The corners of the same table.
    [Theory]
    [InlineData(70, 50, 20.9)]
    [InlineData(76, 76, 6.5)]
    [InlineData(76, 63, 19.2)]
    [InlineData(80, 67, 18.3)]
    [InlineData(84, 59, 25.9)]
    [InlineData(84, 76, 10.8)]
    public void Table_cell(double dry, double wet, double target) =>
        Worked.Near(target, Worked.Of("temperature-split", $$"""{"return_dry_bulb": {{dry}}, "return_wet_bulb": {{wet}}, "supply_dry_bulb": 58}""").Value("target_split", "°F"), 1e-9);

    // One surface fits all 357 cells to rounding; a slip in copying a cell would stand out by more than 0.06 °F.
    [Fact]
    public void Every_cell_lies_on_one_surface()
    {
        var cells = 0;
        for (var dry = 70; dry <= 84; dry++)
            for (var wet = 50; wet <= 76 && wet <= dry; wet++)
            {
                var working = Worked.Of("temperature-split", $$"""{"return_dry_bulb": {{dry}}, "return_wet_bulb": {{wet}}, "supply_dry_bulb": 58}""");
                if (working.Verdict.Word == "cannot say") continue;
                cells++;
                var surface = 19.1553 + 0.54423 * (dry - 76) - 0.678411 * (wet - 63) - 0.02282 * (wet - 63) * (wet - 63);
                Worked.Near(surface, working.Value("target_split", "°F"), 0.06);
            }
        Assert.InRange(cells, 300, 357);
    }

    [Fact]
    public void Table_from_memory_says_so_in_its_sources() =>
        Assert.Contains(Worked.Of("temperature-split", """{"return_dry_bulb": 75, "return_wet_bulb": 63, "supply_dry_bulb": 56}""").Sources, source => source.Contains("from memory", StringComparison.Ordinal));

    // RA3.2.1: the procedure stands at 55 °F outdoors or warmer.
    [Theory]
    [InlineData(54.9, "cannot say")]
    [InlineData(55, "within")]
    public void Split_below_outdoor_limit_cannot_be_said(double outdoor, string verdict) =>
        Assert.Equal(verdict, Worked.Of("temperature-split", $$"""{"return_dry_bulb": 75, "return_wet_bulb": 63, "supply_dry_bulb": 56, "outdoor": {{outdoor}}}""").Verdict.Word);

    [Fact]
    public void A_stricter_limit_of_ones_own_is_kept() =>
        Assert.Equal("cannot say", Worked.Of("temperature-split", """{"return_dry_bulb": 75, "return_wet_bulb": 63, "supply_dry_bulb": 56, "outdoor": 60, "least_outdoor": 65}""").Verdict.Word);

    // Blank cells and beyond the edge: no target, never an extrapolated one.
    [Theory]
    [InlineData(78, 51)]
    [InlineData(69.9, 60)]
    [InlineData(84.1, 65)]
    [InlineData(80, 76.5)]
    [InlineData(77.5, 50.5)]
    public void Outside_the_table_cannot_be_said(double dry, double wet)
    {
        var working = Worked.Of("temperature-split", $$"""{"return_dry_bulb": {{dry}}, "return_wet_bulb": {{wet}}, "supply_dry_bulb": 58}""");
        Assert.Equal("cannot say", working.Verdict.Word);
        Assert.Null(working.Result["target_split"]);
    }

    [Fact]
    public void Between_whole_degrees_a_step_says_the_table_is_read_linearly()
    {
        var working = Worked.Of("temperature-split", """{"return_dry_bulb": 75.5, "return_wet_bulb": 63, "supply_dry_bulb": 56}""");
        Worked.Near((18.6 + 19.2) / 2, working.Value("target_split", "°F"), 1e-9);
        Assert.Contains(working.Steps, step => InWords.Of(step.Text).Contains("linearly", StringComparison.Ordinal));
    }

    [Fact]
    public void Metric_input_gives_the_same_split()
    {
        var working = Worked.Of("temperature-split", """{"return_dry_bulb": "25 °C", "return_wet_bulb": "17.5 °C", "supply_dry_bulb": "14 °C", "outdoor": "27 °C"}""");
        var same = Worked.Of("temperature-split", """{"return_dry_bulb": 77, "return_wet_bulb": 63.5, "supply_dry_bulb": 57.2, "outdoor": 80.6}""");
        Worked.Near(same.Value("difference", "°F"), working.Value("difference", "°F"), 1e-9);
    }

    [Theory]
    [InlineData("""{"return_dry_bulb": 75, "return_wet_bulb": 76, "supply_dry_bulb": 56}""", "return_wet_bulb")]
    [InlineData("""{"return_dry_bulb": 75, "supply_dry_bulb": 56}""", "return_wet_bulb")]
    [InlineData("""{"return_dry_bulb": 75, "return_wet_bulb": 63, "supply_dry_bulb": -40}""", "supply_dry_bulb")]
    [InlineData("""{"return_dry_bulb": 75, "return_wet_bulb": 63, "supply_dry_bulb": 56, "band": "mine"}""", "band")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("temperature-split", json, input);

    // Moister return air leaves less of the work for the thermometer: the target falls as the wet bulb rises.
    [Fact]
    public void Target_falls_with_wet_bulb_and_rises_with_dry_bulb() =>
        Gen.Select(Gen.Double[70, 75], Gen.Double[50, 74]).Sample((dry, wet) =>
        {
            if (wet > dry - 1) return true;
            double Target(double d, double w) => Worked.Of("temperature-split", $$"""{"return_dry_bulb": {{d:R}}, "return_wet_bulb": {{w:R}}, "supply_dry_bulb": 58}""").Value("target_split", "°F");
            return Target(dry, wet + 1) < Target(dry, wet) && Target(dry + 1, wet) > Target(dry, wet);
        }, iter: 200);
}
