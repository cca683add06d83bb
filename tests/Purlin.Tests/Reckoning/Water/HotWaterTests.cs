using CsCheck;

namespace Purlin.Tests.Reckoning.Water;

/// <summary>Size of heaters and time to a burn against the published tables.</summary>
public sealed class HotWaterTests
{
    // Building America House Simulation Protocols (2014), Table 8, as coded in OpenStudio-HPXML waterheater.rb: nine rows.
    [Theory]
    [InlineData(1, 1, 30, 36_000, 30, 2.5)]
    [InlineData(2, 1.5, 30, 36_000, 30, 3.5)]
    [InlineData(2, 2, 30, 36_000, 40, 4.5)]
    [InlineData(3, 1.5, 30, 36_000, 40, 4.5)]
    [InlineData(3, 2, 40, 36_000, 50, 5.5)]
    [InlineData(4, 2.5, 40, 38_000, 50, 5.5)]
    [InlineData(4, 3, 50, 38_000, 66, 5.5)]
    [InlineData(5, 2, 50, 48_000, 66, 5.5)]
    [InlineData(7, 4, 50, 50_000, 80, 5.5)]
    public void The_usual_tank_is_the_tables(int bedrooms, double baths, double gas, double burner, double electric, double kilowatts)
    {
        string House(string fuel, double tank) => FormattableString.Invariant($$"""{"fuel":"{{fuel}}","bedrooms":{{bedrooms}},"baths":{{baths}},"tank":{{tank}}}""");
        var flame = Reckoned.Of("water-heater-size", House("gas", gas));
        Assert.Equal(gas, flame.Number("least_tank"));
        Assert.Equal(burner, flame.Number("least_input"));
        Assert.Equal("within", flame.Verdict);
        Assert.Equal("outside", Reckoned.Of("water-heater-size", House("gas", gas - 1)).Verdict);
        var coil = Reckoned.Of("water-heater-size", House("electric", electric));
        Assert.Equal(electric, coil.Number("least_tank"));
        Assert.Equal(kilowatts, coil.Number("least_input"));
    }

    // The same code: baths where none are given are half the bedrooms and a half; 4 bedrooms make 2.5.
    [Fact]
    public void Baths_that_are_not_given_are_a_step()
    {
        var heater = Reckoned.Of("water-heater-size", """{"fuel":"gas","bedrooms":4,"tank":40}""");
        Assert.Contains(heater.Working.Steps, step => InWords.Of(step.Text).StartsWith("Baths not given: 2.5", StringComparison.Ordinal));
        Assert.Equal(40, heater.Number("least_tank"));
    }

    // UPC Table 501.1 (from memory): 2 to 2.5 baths with 4 bedrooms 67 gal in editions to 2012, 62 gal from 2015.
    [Theory]
    [InlineData("to 2012", 66, "outside")]
    [InlineData("to 2012", 67, "within")]
    [InlineData("from 2015", 62, "within")]
    public void The_first_hour_rating_is_held_to_its_edition(string edition, double rating, string verdict)
    {
        var heater = Reckoned.Of("water-heater-size", FormattableString.Invariant($$"""{"fuel":"gas","bedrooms":4,"baths":2.5,"first_hour":{{rating}},"edition":"{{edition}}"}"""));
        Assert.Equal(verdict, heater.Verdict);
        Assert.Contains(heater.Working.Sources, source => source.EndsWith("(from memory)", StringComparison.Ordinal));
    }

    [Fact]
    public void Outside_the_first_hour_table_nothing_is_said() =>
        Assert.Equal("cannot say", Reckoned.Of("water-heater-size", """{"fuel":"gas","bedrooms":9,"baths":6,"first_hour":80}""").Verdict);

    [Fact]
    public void More_bedrooms_or_baths_never_need_a_smaller_tank() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[1, 10], Gen.Bool.Select(one => one ? "gas" : "electric")).Sample((bedrooms, half, fuel) =>
        {
            double Least(int rooms, double baths) => Reckoned.Of("water-heater-size", FormattableString.Invariant($$"""{"fuel":"{{fuel}}","bedrooms":{{rooms}},"baths":{{baths}},"tank":40}""")).Number("least_tank");
            Assert.True(Least(bedrooms + 1, half / 2.0) >= Least(bedrooms, half / 2.0) && Least(bedrooms, half / 2.0 + 0.5) >= Least(bedrooms, half / 2.0));
        }, iter: 100);

    // U.S. Consumer Product Safety Commission: 120 °F 5 min, 130 °F 30 s; a children's hospital: 125 °F 1.5 to 2 min, 135 °F 10 s,
    // 145 °F under 3 s, 155 °F 1 s; the Commission again 140 °F 6 s, 150 °F 2 s. Between two of them the time is read between their logarithms. Limit at tub and shower 120 °F: IRC P2708.4.
    [Theory]
    [InlineData(120, 300, "within", "usual limit")]
    [InlineData(125, 90, "outside", "hot")]
    [InlineData(130, 30, "outside", "scalding")]
    [InlineData(135, 10, "outside", "scalding")]
    [InlineData(140, 6, "outside", "scalding")]
    [InlineData(145, 3, "outside", "scalding")]
    [InlineData(150, 2, "outside", "scalding")]
    [InlineData(155, 1, "outside", "scalding")]
    [InlineData(132, 19.3, "outside", "scalding")]
    [InlineData(170, 1, "outside", "scalding")]
    public void Hot_water_burns_as_soon_as_published(double temperature, double seconds, string verdict, string meaning)
    {
        var water = Reckoned.Of("scald-time", FormattableString.Invariant($$"""{"temperature":{{temperature}}}"""));
        Assert.Equal(seconds, water.Number("time"), 0.05);
        Assert.Equal(verdict, water.Verdict);
        Assert.Equal(meaning, water.Text("meaning"));
    }

    [Theory]
    [InlineData(110, "warm")]
    [InlineData(100, "lukewarm")]
    public void Below_the_published_temperatures_no_time_is_given(double temperature, string meaning)
    {
        var water = Reckoned.Of("scald-time", FormattableString.Invariant($$"""{"temperature":{{temperature}}}"""));
        Assert.True(water.IsNull("time"));
        Assert.Equal(meaning, water.Text("meaning"));
    }

    [Fact]
    public void Hotter_never_burns_later() => Gen.Select(Gen.Double[120, 205], Gen.Double[0, 7]).Sample((temperature, more) =>
        Reckoned.Of("scald-time", FormattableString.Invariant($$"""{"temperature":{{temperature + more:R}}}""")).Number("time") <= Reckoned.Of("scald-time", FormattableString.Invariant($$"""{"temperature":{{temperature:R}}}""")).Number("time"), iter: 200);

    [Theory]
    [InlineData("scald-time", "{}", "temperature: missing")]
    [InlineData("scald-time", """{"temperature":"NaN"}""", "temperature")]
    [InlineData("scald-time", """{"temperature":"120 psi"}""", "temperature")]
    [InlineData("scald-time", """{"temperature":400}""", "temperature: 400")]
    [InlineData("water-heater-size", """{"fuel":"wood","bedrooms":3,"tank":40}""", "fuel: \"wood\"; one of gas, electric, propane, oil")]
    [InlineData("water-heater-size", """{"fuel":"gas","bedrooms":0,"tank":40}""", "bedrooms: 0")]
    [InlineData("water-heater-size", """{"fuel":"gas","bedrooms":3}""", "tank: missing")]
    public void Bad_input_names_itself(string name, string json, string expected) => Assert.Contains(expected, Reckoned.Refused(name, json), StringComparison.Ordinal);
}
