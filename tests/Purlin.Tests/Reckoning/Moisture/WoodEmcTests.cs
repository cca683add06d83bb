using System.Globalization;
using CsCheck;
using Purlin.Reckoning.Moisture;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning.Moisture;

public sealed class WoodEmcTests
{
    // Wood Handbook (FPL-GTR-282, 2021), chapter 4, table 4-2: °F, % relative humidity, % moisture, tolerance; the last column is the
    // handbook's own equation 4-5 worked apart from this project. The handbook says that a tenth of a percent is not meaningful, and its
    // table agrees with its equation to 0.06 (0.07 at 70 °F and 85 %). The last seven rows are the equation's metric form, worked by another
    // author; it lies within 0.013 of the °F form that this program uses. The cell 110 °F and 20 % is 4.0, from memory;
    // one web copy prints 3.0.
    private const string Published =
        """
        30 | 5 | 1.4 | 0.06 | 1.400
        30 | 25 | 5.5 | 0.06 | 5.487
        30 | 50 | 9.5 | 0.06 | 9.519
        30 | 75 | 14.9 | 0.06 | 14.922
        30 | 90 | 21.0 | 0.06 | 21.034
        30 | 95 | 24.3 | 0.06 | 24.345
        40 | 35 | 7.1 | 0.06 | 7.124
        40 | 65 | 12.3 | 0.06 | 12.355
        40 | 80 | 16.5 | 0.06 | 16.502
        50 | 20 | 4.6 | 0.06 | 4.602
        50 | 60 | 11.2 | 0.06 | 11.249
        50 | 85 | 18.4 | 0.06 | 18.373
        60 | 30 | 6.2 | 0.06 | 6.254
        60 | 55 | 10.2 | 0.06 | 10.219
        60 | 70 | 13.3 | 0.06 | 13.285
        70 | 5 | 1.3 | 0.06 | 1.299
        70 | 10 | 2.5 | 0.06 | 2.482
        70 | 20 | 4.5 | 0.06 | 4.493
        70 | 30 | 6.2 | 0.06 | 6.172
        70 | 40 | 7.7 | 0.06 | 7.702
        70 | 45 | 8.5 | 0.06 | 8.463
        70 | 50 | 9.2 | 0.06 | 9.246
        70 | 60 | 11.0 | 0.06 | 10.970
        70 | 70 | 13.1 | 0.06 | 13.094
        70 | 75 | 14.4 | 0.06 | 14.413
        70 | 80 | 16.0 | 0.06 | 15.997
        70 | 85 | 17.9 | 0.07 | 17.961
        70 | 90 | 20.5 | 0.06 | 20.489
        70 | 95 | 23.9 | 0.06 | 23.902
        80 | 25 | 5.3 | 0.06 | 5.265
        80 | 50 | 9.1 | 0.06 | 9.084
        80 | 75 | 14.2 | 0.06 | 14.166
        90 | 15 | 3.4 | 0.06 | 3.378
        90 | 40 | 7.4 | 0.06 | 7.409
        90 | 85 | 17.3 | 0.06 | 17.360
        100 | 30 | 5.8 | 0.06 | 5.782
        100 | 50 | 8.7 | 0.06 | 8.682
        100 | 65 | 11.2 | 0.06 | 11.245
        100 | 80 | 15.1 | 0.06 | 15.100
        100 | 90 | 19.5 | 0.06 | 19.488
        110 | 35 | 6.3 | 0.06 | 6.331
        110 | 60 | 10.0 | 0.06 | 10.038
        110 | 85 | 16.6 | 0.06 | 16.624
        120 | 50 | 8.2 | 0.06 | 8.203
        120 | 75 | 12.9 | 0.06 | 12.896
        130 | 20 | 3.7 | 0.06 | 3.743
        130 | 55 | 8.7 | 0.06 | 8.668
        130 | 85 | 15.8 | 0.06 | 15.795
        110 | 20 | 4.0 | 0.06 | 4.050
        68.0 | 50 | 9.27 | 0.015 | 9.275
        68.0 | 65 | 12.0 | 0.015 | 12.002
        68.0 | 75 | 14.45 | 0.015 | 14.458
        68.0 | 85 | 18.0 | 0.015 | 18.011
        68.0 | 95 | 23.94 | 0.015 | 23.953
        41.0 | 85 | 18.47 | 0.015 | 18.479
        35.6 | 83 | 17.66 | 0.015 | 17.668
        """;

    public static TheoryData<string> Rows() => [.. Published.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    [Fact]
    public void All_56_published_points_are_here() => Assert.Equal(56, Rows().Count);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Published_point_is_met(string row)
    {
        var cells = row.Split('|').Select(cell => double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture)).ToArray();
        var got = Worked.Of("wood-emc", $$"""{"temperature": {{cells[0]}}, "relative_humidity": {{cells[1]}}}""").Value("equilibrium_moisture_content", "%");
        Worked.Near(cells[2], got, cells[3]);
        Worked.Near(cells[4], got, 0.006);
    }

    // Three slips seen in public code, each giving another figure at 20 °C and 65 % (12.0 in the table): °C put into the °F form gives 12.33.
    [Fact]
    public void Known_slip_is_not_made()
    {
        var got = Worked.Of("wood-emc", """{"temperature": "20 °C", "relative_humidity": 65}""").Value("equilibrium_moisture_content", "%");
        Worked.Near(12.0, got, 0.06);
        Assert.True(Math.Abs(got - 12.33) > 0.2);
    }

    [Theory]
    [InlineData(25, 50)]
    [InlineData(70, 4)]
    [InlineData(70, 98)]
    public void Outside_the_table_cannot_be_said(double temperature, double humidity) =>
        Assert.Equal("cannot say", Worked.Of("wood-emc", $$"""{"temperature": {{temperature}}, "relative_humidity": {{humidity}}}""").Verdict.Word);

    [Theory]
    [InlineData("""{"temperature": 70, "relative_humidity": 101}""", "relative_humidity")]
    [InlineData("""{"temperature": -40, "relative_humidity": 50}""", "temperature")]
    [InlineData("""{"temperature": 70}""", "relative_humidity")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("wood-emc", json, input);

    [Fact]
    public void Damper_air_makes_damper_wood_and_warmer_air_drier() =>
        Gen.Select(Gen.Double[30, 130], Gen.Double[5, 94]).Sample((temperature, humidity) =>
        {
            double At(double t, double h) => Equilibrium.Of(Temperature.FromFahrenheit(t), RelativeHumidity.FromPercent(h)).Percent;
            // Below about 20 % humidity and 40 °F the published equation is flat in temperature, so warmth is held to "not damper by 0.02".
            return At(temperature, humidity + 1) > At(temperature, humidity) && At(temperature + 5, humidity) <= At(temperature, humidity) + 0.02;
        });
}
