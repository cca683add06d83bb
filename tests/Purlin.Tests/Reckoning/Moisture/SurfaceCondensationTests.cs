using CsCheck;

namespace Purlin.Tests.Reckoning.Moisture;

public sealed class SurfaceCondensationTests
{
    private static Purlin.Reckoning.Working Of(string json) => Worked.Of("surface-condensation", json);

    // Published dew points: a coating chart (handypdf.com, coarse, 0.5 to 1.6 °F low, so held to 2 °F) and two glossaries (codingace.net,
    // doerken.de, whole °C, held to 0.6 °C).
    [Theory]
    [InlineData("70 °F", 65, "57 °F", 2)]
    [InlineData("70 °F", 50, "50 °F", 2)]
    [InlineData("70 °F", 40, "43 °F", 2)]
    [InlineData("80 °F", 50, "59 °F", 2)]
    [InlineData("90 °F", 60, "73 °F", 2)]
    [InlineData("50 °F", 70, "40 °F", 2)]
    [InlineData("30 °C", 55, "20 °C", 1.08)]
    [InlineData("22 °C", 65, "15 °C", 1.08)]
    [InlineData("24 °C", 80, "20 °C", 1.08)]
    [InlineData("21 °C", 40, "7 °C", 1.08)]
    [InlineData("22 °C", 55, "13 °C", 1.08)]
    public void Published_dew_point(string air, double humidity, string published, double toleranceFahrenheit)
    {
        Assert.True(Purlin.Reckoning.Quantities.Units.TryRead(published, "°F", out var expected));
        Worked.Near(expected, Of($$"""{"dry_bulb": "{{air}}", "relative_humidity": {{humidity}}, "surface": 60}""").Value("dew_point", "°F"), toleranceFahrenheit);
    }

    // The Magnus form of the dew point (AZMET, cales.arizona.edu), a second equation: within 0.1 °F over room air.
    [Fact]
    public void Second_equation_agrees() =>
        Gen.Select(Gen.Double[50, 100], Gen.Double[20, 99]).Sample((fahrenheit, humidity) =>
        {
            var t = (fahrenheit - 32) / 1.8;
            var b = (Math.Log(humidity / 100) + 17.27 * t / (237.3 + t)) / 17.27;
            var magnus = 237.3 * b / (1 - b) * 1.8 + 32;
            // Below freezing the handbook's equation is over ice and the Magnus form over water.
            return magnus < 33 || Math.Abs(magnus - Of($$"""{"dry_bulb": {{fahrenheit:R}}, "relative_humidity": {{humidity:R}}, "surface": 60}""").Value("dew_point", "°F")) < 0.15;
        }, iter: 300);

    // A wall of R 2 with 70 °F inside and 10 °F outside has its inner face at 49.6 °F (film of R 0.68, from memory): at 40 % no dew and
    // 5.0 °F to spare, at 50 % dew.
    [Theory]
    [InlineData(40, 5.0, "cannot say")]
    [InlineData(50, -0.9, "outside")]
    public void Cold_wall(double humidity, double margin, string verdict)
    {
        var working = Of($$"""{"dry_bulb": 70, "relative_humidity": {{humidity}}, "surface": 49.6}""");
        Worked.Near(margin, working.Value("margin", "°F"), 0.06);
        Assert.Equal(verdict, working.Verdict.Word);
    }

    // The trade's rule (common practice): a cold patch in an infrared picture is a question until a meter answers it.
    [Theory]
    [InlineData(60, "wet", "wetting", "outside")]
    [InlineData(60, "dry", "missing insulation or air leakage", "within")]
    [InlineData(60, "not taken", "wetting or missing insulation", "cannot say")]
    [InlineData(45, "dry", "condensation", "outside")]
    [InlineData(45, "wet", "condensation or wetting", "outside")]
    [InlineData(45, "not taken", "condensation, wetting or missing insulation", "outside")]
    public void Meter_answers_the_question(double surface, string meter, string could, string verdict)
    {
        var working = Of($$"""{"dry_bulb": 70, "relative_humidity": 50, "surface": {{surface}}, "meter": "{{meter}}"}""");
        Assert.Equal(could, (string?)working.InWords(InWords.Tongue)["could_be"]);
        Assert.Equal(verdict, working.Verdict.Word);
        Assert.InRange(((string)working.InWords(InWords.Tongue)["next"]!).Length, 30, 300);
    }

    [Theory]
    [InlineData("""{"dry_bulb": 70, "wet_bulb": 75, "surface": 60}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 50}""", "surface")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 50, "surface": 60, "meter": "damp"}""", "meter")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("surface-condensation", json, input);

    [Fact]
    public void Colder_surface_has_less_to_spare() =>
        Gen.Select(Gen.Double[50, 90], Gen.Double[20, 95], Gen.Double[20, 80]).Sample((air, humidity, surface) =>
        {
            double Margin(double at) => Of($$"""{"dry_bulb": {{air:R}}, "relative_humidity": {{humidity:R}}, "surface": {{at:R}}}""").Value("margin", "°F");
            return Margin(surface - 1) < Margin(surface);
        }, iter: 200);
}
