using CsCheck;
using Purlin.Reckoning.Moisture;

namespace Purlin.Tests.Reckoning.Moisture;

public sealed class WoodReadingTests
{
    private static double Corrected(string json) => Worked.Of("wood-reading", json).Value("corrected", "%");

    // The formula worked by hand for Douglas-fir (a = 1, b = 0): reading %, wood °C, corrected %.
    [Theory]
    [InlineData(15, 10, 16.44)]
    [InlineData(15, 20, 15.30)]
    [InlineData(15, 22.8, 14.99)]
    [InlineData(15, 50, 12.36)]
    [InlineData(12, 15, 12.72)]
    [InlineData(12, 30, 11.36)]
    [InlineData(20, 15, 21.07)]
    [InlineData(20, 30, 19.04)]
    public void Temperature_by_the_formula(double reading, double celsius, double corrected) =>
        Worked.Near(corrected, Corrected($$"""{"meter": {{reading}}, "temperature": "{{celsius}} °C"}"""), 0.006);

    // Meters' own published charts (a maker's manual, X5 series, page 37; moisturemeterexperts.com.au): they differ among themselves by up
    // to 2 % moisture, and so far the formula may lie from each.
    [Theory]
    [InlineData(15, 10, 17)]
    [InlineData(15, 50, 11)]
    [InlineData(12, 15, 13)]
    [InlineData(20, 15, 22)]
    [InlineData(12, 25, 11)]
    [InlineData(20, 30, 18)]
    public void Temperature_within_two_percent_of_published_charts(double reading, double celsius, double chart) =>
        Worked.Near(chart, Corrected($$"""{"meter": {{reading}}, "temperature": "{{celsius}} °C"}"""), 2);

    // A meter set for Douglas-fir reads it as it is; for other species of the trade no correction is published in the open.
    [Theory]
    [InlineData("Douglas-fir", 15, 15)]
    public void Species_by_the_published_table(string species, double reading, double corrected) =>
        Worked.Near(corrected, Corrected($$"""{"meter": {{reading}}, "species": "{{species}}"}"""), 1e-9);

    [Fact]
    public void Unknown_species_is_not_guessed()
    {
        var working = Worked.Of("wood-reading", """{"meter": 15, "species": "southern pine"}""");
        Worked.Near(15, working.Value("corrected", "%"), 0);
        Assert.Contains(working.Cautions, caution => InWords.Of(caution).Contains("southern pine", StringComparison.Ordinal));
        Worked.Near(17, Corrected("""{"meter": 15, "species": "southern pine", "species_correction": 2}"""), 0);
    }

    // US Navy MO-312: decay stops below 20 %. Wood Handbook: fibre saturation 28 to 30 %.
    [Theory]
    [InlineData(12, "dry", "within")]
    [InlineData(18, "elevated", "within")]
    [InlineData(19.9, "elevated", "within")]
    [InlineData(20, "high", "outside")]
    [InlineData(28, "wet", "outside")]
    public void Classes(double reading, string name, string verdict)
    {
        var working = Worked.Of("wood-reading", $$"""{"meter": {{reading}}}""");
        Assert.Equal(name, (string?)working.Result["class"]);
        Assert.Equal(verdict, working.Verdict.Word);
    }

    // Wood Handbook table 4-2: 70 °F and 40 % give 7.7 %.
    [Fact]
    public void Air_says_how_much_of_it_is_the_air()
    {
        var working = Worked.Of("wood-reading", """{"meter": 22, "air_temperature": 70, "relative_humidity": 40}""");
        Worked.Near(7.7, working.Value("equilibrium", "%"), 0.06);
        Worked.Near(14.3, working.Value("above_equilibrium", "%"), 0.06);
    }

    [Theory]
    [InlineData("""{"meter": 0}""", "meter")]
    [InlineData("""{"meter": "wet"}""", "meter")]
    [InlineData("""{"meter": 15, "air_temperature": 70}""", "relative_humidity")]
    [InlineData("""{"meter": 15, "temperature": 500}""", "temperature")]
    [InlineData("""{"meter": 15, "species": ""}""", "species")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("wood-reading", json, input);

    [Fact]
    public void Higher_reading_is_never_drier_and_warmer_wood_never_damper() =>
        Gen.Select(Gen.Double[7, 30], Gen.Double[-15, 60]).Sample((reading, celsius) =>
            MeterCorrection.AtTemperature(reading + 1, celsius) > MeterCorrection.AtTemperature(reading, celsius)
            && MeterCorrection.AtTemperature(reading, celsius + 1) < MeterCorrection.AtTemperature(reading, celsius));
}
