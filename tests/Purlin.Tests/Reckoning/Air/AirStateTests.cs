using CsCheck;
using Purlin.Reckoning.Air;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning.Air;

public sealed class AirStateTests
{
    // ASHRAE Handbook - Fundamentals 2017, chapter 1, example 1: 100 °F dry, 65 °F wet bulb at 14.696 psi; the text prints 0.00523,
    // 40 °F, 13 %, 29.80 and 14.22, its equations give the tighter figures.
    [Fact]
    public void Handbook_example_1_comes_out()
    {
        var working = Worked.Of("air-state", """{"dry_bulb": 100, "wet_bulb": 65, "pressure": 14.696}""");
        Worked.Near(0.005190, working.Value("humidity_ratio", "lb/lb"), 1e-6);
        Worked.Near(39.976, working.Value("dew_point", "°F"), 0.005);
        Worked.Near(12.797, working.Value("relative_humidity", "%"), 0.002);
        Worked.Near(29.737, working.Value("enthalpy", "Btu/lb"), 0.001);
        Worked.Near(14.227, working.Value("specific_volume", "ft³/lb"), 0.001);
    }

    // PsychroLib 2.5.0 at commit 3066345, run apart: dew point from dry bulb and relative humidity, sea level.
    [Theory]
    [InlineData(70, 50, 50.528)]
    [InlineData(75, 50, 55.120)]
    [InlineData(68, 35, 39.360)]
    [InlineData(72, 60, 57.370)]
    [InlineData(80, 60, 64.876)]
    [InlineData(32, 80, 27.171)]
    public void Dew_point_from_humidity(double dryBulb, double humidity, double dewPoint) =>
        Worked.Near(dewPoint, Worked.Of("air-state", $$"""{"dry_bulb": {{dryBulb}}, "relative_humidity": {{humidity}}, "pressure": 14.696}""").Value("dew_point", "°F"), 0.002);

    // PsychroLib 2.5.0 at commit 3066345, run apart: wet bulb from dry bulb and relative humidity at 14.696 psi.
    [Theory]
    [InlineData(70, 50, 58.448)]
    [InlineData(75, 50, 62.552)]
    [InlineData(80, 50, 66.662)]
    [InlineData(76, 45, 61.910)]
    public void Wet_bulb_from_humidity(double dryBulb, double humidity, double wetBulb) =>
        Worked.Near(wetBulb, Worked.Of("air-state", $$"""{"dry_bulb": {{dryBulb}}, "relative_humidity": {{humidity}}, "pressure": 14.696}""").Value("wet_bulb", "°F"), 0.002);

    [Fact]
    public void Metric_input_gives_the_same_air()
    {
        var metric = Worked.Of("air-state", """{"dry_bulb": "25 °C", "wet_bulb": "18 °C", "altitude": "500 m"}""");
        var inch = Worked.Of("air-state", """{"dry_bulb": 77, "wet_bulb": 64.4, "altitude": 1640.41994750656}""");
        foreach (var (member, unit) in new[] { ("humidity_ratio", "lb/lb"), ("dew_point", "°F"), ("enthalpy", "Btu/lb"), ("density", "lb/ft³") })
            Worked.Near(inch.Value(member, unit), metric.Value(member, unit), 1e-6);
    }

    [Fact]
    public void Sea_level_that_was_only_presumed_is_a_step() =>
        Assert.Contains(Worked.Of("air-state", """{"dry_bulb": 70, "dew_point": 50}""").Steps, step => InWords.Of(step.Text).Contains("Altitude not given", StringComparison.Ordinal));

    [Theory]
    [InlineData("""{"dry_bulb": 70, "wet_bulb": 71}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 70, "dew_point": 70.5}""", "dew_point")]
    [InlineData("""{"dry_bulb": 150, "wet_bulb": 40}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 70}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 70, "wet_bulb": 60, "relative_humidity": 50}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 101}""", "relative_humidity")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 0}""", "relative_humidity")]
    [InlineData("""{"dry_bulb": "NaN", "relative_humidity": 50}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": "Infinity", "relative_humidity": 50}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": 1e999, "relative_humidity": 50}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": "70 psi", "relative_humidity": 50}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 50, "altitude": 0, "pressure": 14.7}""", "pressure")]
    [InlineData("""{"dry_bulb": 70, "relative_humidity": 50, "colour": 1}""", "colour")]
    [InlineData("""{"relative_humidity": 50}""", "dry_bulb")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("air-state", json, input);

    // Physics: a wet wick is never warmer than the air, nor colder than its dew point; and the way back leads to the same humidity.
    [Fact]
    public void Wet_bulb_lies_between_dew_point_and_dry_bulb() =>
        Gen.Select(Gen.Double[-40, 200], Gen.Double[1, 100], Gen.Double[8.6, 16.6]).Sample((dryBulb, humidity, pressure) =>
        {
            var made = MoistAir.FromRelativeHumidity(Temperature.FromFahrenheit(dryBulb), RelativeHumidity.FromPercent(humidity), Pressure.FromPsi(pressure));
            if (!made.IsAccepted) return dryBulb > 150;
            var air = made.OrThrow();
            return air.DewPoint.Fahrenheit <= air.WetBulb.Fahrenheit + 1e-6 && air.WetBulb.Fahrenheit <= dryBulb + 1e-9;
        });

    [Fact]
    public void Dew_point_and_humidity_go_there_and_back() =>
        Gen.Select(Gen.Double[-40, 150], Gen.Double[1, 100]).Sample((dryBulb, humidity) =>
        {
            var dry = Temperature.FromFahrenheit(dryBulb);
            var air = MoistAir.FromRelativeHumidity(dry, RelativeHumidity.FromPercent(humidity), Pressure.FromPsi(14.696)).OrThrow();
            var back = MoistAir.FromDewPoint(dry, Temperature.FromFahrenheit(Math.Min(dryBulb, air.DewPoint.Fahrenheit)), Pressure.FromPsi(14.696)).OrThrow();
            return Math.Abs(back.RelativeHumidity.Percent - humidity) < 1e-6;
        });

    // Above freezing, where the wet-bulb equation has no step from ice to water (equations 33 and 35 do not meet at 32 °F).
    [Fact]
    public void Wet_bulb_goes_there_and_back() =>
        Gen.Select(Gen.Double[60, 120], Gen.Double[30, 100]).Sample((dryBulb, humidity) =>
        {
            var dry = Temperature.FromFahrenheit(dryBulb);
            var air = MoistAir.FromRelativeHumidity(dry, RelativeHumidity.FromPercent(humidity), Pressure.FromPsi(14.696)).OrThrow();
            var back = MoistAir.FromWetBulb(dry, air.WetBulb, Pressure.FromPsi(14.696)).OrThrow();
            return Math.Abs(back.RelativeHumidity.Percent - humidity) < 1e-6;
        });

    // The sweep of PsychroLib's own convergence test, over the range that this program takes.
    [Fact]
    public void Solvers_settle_over_the_whole_range()
    {
        for (var dryBulb = -40; dryBulb <= 150; dryBulb += 5)
            for (var humidity = 1; humidity <= 100; humidity += 11)
                for (var pressure = 8.6; pressure <= 16.6; pressure++)
                {
                    var air = MoistAir.FromRelativeHumidity(Temperature.FromFahrenheit(dryBulb), RelativeHumidity.FromPercent(humidity), Pressure.FromPsi(pressure)).OrThrow();
                    Worked.Near(air.VapourPressure.Psi, Psychrometrics.SaturationPressure(air.DewPoint).Psi, 1e-9 * Math.Max(1, air.VapourPressure.Psi));
                    Assert.True(double.IsFinite(air.WetBulb.Fahrenheit));
                }
    }

    [Fact]
    public void More_moisture_means_more_heat_content() =>
        Gen.Select(Gen.Double[0, 120], Gen.Double[1, 99]).Sample((dryBulb, humidity) =>
        {
            var dry = Temperature.FromFahrenheit(dryBulb);
            var drier = MoistAir.FromRelativeHumidity(dry, RelativeHumidity.FromPercent(humidity), Pressure.FromPsi(14.696)).OrThrow();
            var moister = MoistAir.FromRelativeHumidity(dry, RelativeHumidity.FromPercent(humidity + 1), Pressure.FromPsi(14.696)).OrThrow();
            return moister.Enthalpy.BtuPerPound > drier.Enthalpy.BtuPerPound && moister.DewPoint > drier.DewPoint;
        });
}
