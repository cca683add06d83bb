using CsCheck;

namespace Purlin.Tests.Reckoning.Air;

public sealed class TemperatureRiseTests
{
    // A supplier's published example: 80,000 Btu/h, 80 %, a rise of 40 °F: 1,481 cfm (famous-supply.com, measuring cfm).
    [Fact]
    public void Airflow_from_rise() =>
        Worked.Near(1481, Worked.Of("temperature-rise", """{"input": 80000, "efficiency": 80, "supply": 110, "return": 70}""").Value("airflow", "cfm"), 0.6);

    [Theory]
    [InlineData(100_000, 80, 1235, 60)]
    [InlineData(80_000, 80, 1481.48, 40)]
    public void Rise_from_airflow(double input, double efficiency, double airflow, double rise) =>
        Worked.Near(rise, Worked.Of("temperature-rise", $$"""{"input": {{input}}, "efficiency": {{efficiency}}, "airflow": {{airflow}}}""").Value("rise", "°F"), 0.03);

    // 10 kW of strips in 1,200 cfm: 26.3 °F (3,412 Btu/h for a kilowatt).
    [Fact]
    public void Electric_strips() =>
        Worked.Near(26.3, Worked.Of("temperature-rise", """{"input": "10 kW", "efficiency": 100, "airflow": 1200}""").Value("rise", "°F"), 0.05);

    // A maker's table for one nominal 2.5-ton heat pump, 70 °F indoors at nominal airflow: thousand Btu/h and rise at 18 outdoor
    // temperatures; every column means 1,046 to 1,054 cfm by Q = 1.08 × cfm × °F.
    [Theory]
    [InlineData(36.53, 32.1)]
    [InlineData(34.53, 30.4)]
    [InlineData(32.53, 28.6)]
    [InlineData(30.4, 26.8)]
    [InlineData(29.0, 25.6)]
    [InlineData(28.1, 24.8)]
    [InlineData(26.1, 23.0)]
    [InlineData(24.1, 21.2)]
    [InlineData(22.6, 19.9)]
    [InlineData(20.9, 18.4)]
    [InlineData(19.2, 17.0)]
    [InlineData(18.2, 16.0)]
    [InlineData(17.5, 15.4)]
    [InlineData(15.7, 13.8)]
    [InlineData(13.9, 12.3)]
    [InlineData(12.1, 10.7)]
    [InlineData(10.3, 9.1)]
    [InlineData(8.5, 7.5)]
    public void Heat_pump_table(double thousands, double rise) =>
        Assert.InRange(Worked.Of("temperature-rise", $$"""{"input": {{1000 * thousands}}, "efficiency": 100, "supply": {{70 + rise}}, "return": 70}""").Value("airflow", "cfm"), 1045.5, 1054.5);

    // A trade magazine's healthy heat pump: 5,700 Btu/h a ton with 13 °F is 406 cfm, 13,400 with 31 °F is 400 cfm (contractingbusiness.com).
    [Theory]
    [InlineData(5_700, 13, 406)]
    [InlineData(13_400, 31, 400)]
    public void Heat_pump_of_two_hours(double heat, double rise, double airflow) =>
        Worked.Near(airflow, Worked.Of("temperature-rise", $$"""{"input": {{heat}}, "efficiency": 100, "supply": {{70 + rise}}, "return": 70}""").Value("airflow", "cfm"), 0.5);

    // A newspaper's case: plate 45 to 75 °F, measured 35.9 °F, outside (inman.com, 21 August 2012).
    [Theory]
    [InlineData(35.9, "outside", "below")]
    [InlineData(44.9, "outside", "below")]
    [InlineData(45, "within", "within")]
    [InlineData(75, "within", "within")]
    [InlineData(75.1, "outside", "above")]
    public void Held_against_the_plate(double rise, string verdict, string word)
    {
        var working = Worked.Of("temperature-rise", $$"""{"supply": {{70 + rise}}, "return": 70, "nameplate_min": 45, "nameplate_max": 75}""");
        Assert.Equal(verdict, working.Verdict.Word);
        Assert.Contains(word, InWords.Of(working.Verdict.Because), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}", "airflow")]
    [InlineData("""{"supply": 110}""", "return")]
    [InlineData("""{"airflow": 1200}""", "input")]
    [InlineData("""{"input": 80000, "airflow": 1200}""", "efficiency")]
    [InlineData("""{"input": 80000, "efficiency": 0.8, "airflow": 1200}""", "efficiency")]
    [InlineData("""{"input": 80000, "efficiency": 80, "airflow": 1200, "supply": 110, "return": 70}""", "airflow")]
    [InlineData("""{"supply": 110, "return": 70, "nameplate_min": 75, "nameplate_max": 45}""", "nameplate_min")]
    [InlineData("""{"supply": 110, "return": 70, "nameplate_min": 45}""", "nameplate_max")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("temperature-rise", json, input);

    [Fact]
    public void Metric_temperatures_give_the_same_rise() =>
        Worked.Near(40, Worked.Of("temperature-rise", """{"supply": "43.333333333333336 °C", "return": "21.11111111111111 °C", "nameplate_min": "19.4444 °C", "nameplate_max": 55}""").Value("rise", "°F"), 1e-9);

    [Fact]
    public void Input_without_efficiency_gives_no_airflow_and_says_so()
    {
        var working = Worked.Of("temperature-rise", """{"input": 80000, "supply": 120, "return": 70, "nameplate_min": 45, "nameplate_max": 75}""");
        Assert.Equal("within", working.Verdict.Word);
        Assert.Null(working.Result["airflow"]);
        Assert.Contains(working.Steps, step => InWords.Of(step.Text).Contains("not both given", StringComparison.Ordinal));
    }

    [Fact]
    public void More_air_is_warmed_less() =>
        Gen.Select(Gen.Double[20_000, 200_000], Gen.Double[300, 3000]).Sample((input, airflow) =>
        {
            double Rise(double flow) => Worked.Of("temperature-rise", $$"""{"input": {{input:R}}, "efficiency": 80, "airflow": {{flow:R}}}""").Value("rise", "°F");
            return Rise(airflow + 50) < Rise(airflow);
        }, iter: 200);
}
