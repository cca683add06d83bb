using CsCheck;

namespace Purlin.Tests.Reckoning.Air;

public sealed class DeliveredCapacityTests
{
    private static string Json(double dry, double wet, double supplyDry, double supplyWet, double airflow, string more = "") =>
        $$"""{"airflow": {{airflow:R}}, "return": {"dry_bulb": {{dry:R}}, "wet_bulb": {{wet:R}}}, "supply": {"dry_bulb": {{supplyDry:R}}, "wet_bulb": {{supplyWet:R}}}{{more}}}""";

    // Standard air, Qt = 4.5 × cfm × Δh (captiveaire.com, coil formulas) on enthalpies of PsychroLib 2.5.0 at 14.696 psi.
    [Theory]
    [InlineData(75, 63, 56, 55, 1200, 28_384, 24_624, 2.365)]
    [InlineData(80, 67, 60, 58, 1200, 34_465, 25_920, 2.872)]
    [InlineData(78, 65, 58, 57, 1400, 34_501, 30_240, 2.875)]
    public void Standard_air(double dry, double wet, double supplyDry, double supplyWet, double airflow, double total, double sensible, double tons)
    {
        var working = Worked.Of("delivered-capacity", Json(dry, wet, supplyDry, supplyWet, airflow));
        Worked.Near(total, working.Value("total", "Btu/h"), 8);
        Worked.Near(sensible, working.Value("sensible", "Btu/h"), 0.01);
        Worked.Near(tons, working.Value("tons", "tons"), 0.001);
    }

    // The first case at 5,000 ft (12.2278 psi), with the air's own volume: 26,048 Btu/h, where 4.5 taken blindly would say 32,265.
    [Fact]
    public void Thin_air_carries_less()
    {
        var working = Worked.Of("delivered-capacity", Json(75, 63, 56, 55, 1200, ", \"altitude\": 5000"));
        Worked.Near(26_048, working.Value("total", "Btu/h"), 15);
    }

    // 400 cfm × 20 °F × 1.08 = 8,640 Btu/h (eng-tips.com, thread 132220).
    [Fact]
    public void Sensible_heat_by_the_trade_formula() =>
        Worked.Near(8_640, Worked.Of("delivered-capacity", Json(78, 65, 58, 57, 400)).Value("sensible", "Btu/h"), 1e-6);

    // Sensible and latent close with the total to 5 %, as far as their rounded factors do.
    [Fact]
    public void Parts_close_with_the_whole()
    {
        var working = Worked.Of("delivered-capacity", Json(80, 67, 60, 58, 1200));
        Worked.Near(1, (working.Value("sensible", "Btu/h") + working.Value("latent", "Btu/h")) / working.Value("total", "Btu/h"), 0.05);
    }

    // The known wrong case: 75/62 to 57/56 gives a sensible share of 1.103, for the supply would hold 65.2 gr/lb and the return 62.1.
    [Fact]
    public void Supply_moister_than_return_is_refused()
    {
        var refusal = Worked.Refused("delivered-capacity", Json(75, 62, 57, 56, 800), "supply.wet_bulb");
        Assert.Contains("65.2", InWords.Of(refusal.Given), StringComparison.Ordinal);
        Assert.Contains("62.1", InWords.Of(refusal.Allowed), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, 1200, "within")]
    [InlineData(5, 1600, "within")]
    [InlineData(5, 1400, "outside")]
    [InlineData(4, 1200, "outside")]
    public void Held_against_nominal(double nominal, double airflow, string verdict) =>
        Assert.Equal(verdict, Worked.Of("delivered-capacity", Json(80, 67, 60, 58, airflow, $", \"nominal\": {nominal}")).Verdict.Word);

    [Fact]
    public void Metric_input_gives_the_same_capacity()
    {
        var metric = Worked.Of("delivered-capacity", """{"airflow": "566.3369 L/s", "return": {"dry_bulb": "25 °C", "wet_bulb": "17 °C"}, "supply": {"dry_bulb": "13 °C", "wet_bulb": "12 °C"}}""");
        var inch = Worked.Of("delivered-capacity", Json(77, 62.6, 55.4, 53.6, 1200));
        Worked.Near(inch.Value("total", "Btu/h"), metric.Value("total", "Btu/h"), 0.05);
    }

    [Theory]
    [InlineData("""{"airflow": 1200, "return": {"dry_bulb": 75, "wet_bulb": 76}, "supply": {"dry_bulb": 56, "wet_bulb": 55}}""", "return.wet_bulb")]
    [InlineData("""{"airflow": 1200, "return": {"dry_bulb": 75, "wet_bulb": 63}, "supply": {"dry_bulb": 56}}""", "supply")]
    [InlineData("""{"airflow": 0, "return": {"dry_bulb": 75, "wet_bulb": 63}, "supply": {"dry_bulb": 56, "wet_bulb": 55}}""", "airflow")]
    [InlineData("""{"airflow": 1200, "supply": {"dry_bulb": 56, "wet_bulb": 55}}""", "return")]
    [InlineData("""{"airflow": 1200, "return": 75, "supply": {"dry_bulb": 56, "wet_bulb": 55}}""", "return")]
    [InlineData("""{"airflow": 1200, "return": {"wet_bulb": 63}, "supply": {"dry_bulb": 56, "wet_bulb": 55}}""", "return.dry_bulb")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("delivered-capacity", json, input);

    [Fact]
    public void More_air_or_colder_supply_delivers_more() =>
        Gen.Select(Gen.Double[76, 84], Gen.Double[400, 3000]).Sample((dry, airflow) =>
        {
            double Total(double supply, double flow) => Worked.Of("delivered-capacity", Json(dry, dry - 10, supply, supply - 1, flow)).Value("total", "Btu/h");
            return Total(56, airflow * 1.05) > Total(56, airflow) && Total(55, airflow) > Total(56, airflow);
        }, iter: 100);
}
