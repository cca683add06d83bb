using CsCheck;

namespace Purlin.Tests.Reckoning.Air;

public sealed class CombustionAirTests
{
    private static double Each(string json) => (double)Worked.Of("combustion-air", json).Result["required_openings"]!["each"]!["value"]!;

    // IFGC 304 (figures on up.codes): a fan-assisted furnace of 100,000 and a heater of 40,000 Btu/h in 20 × 15 × 8 ft: 7,000 ft³ needed;
    // openings 140, 35, 70 and 46.7 in²; with 0.40 air changes 5,850 ft³.
    private const string Two = """{"appliances": [40000], "fan_assisted": [100000], "volume": 2400""";

    [Fact]
    public void Room_is_too_small()
    {
        var working = Worked.Of("combustion-air", Two + "}");
        Worked.Near(7_000, working.Value("required_volume", "ft³"), 1e-9);
        Assert.Equal("outside", working.Verdict.Word);
    }

    [Fact]
    public void Known_infiltration_needs_less() =>
        Worked.Near(5_850, Worked.Of("combustion-air", Two + """, "method": "known infiltration", "air_changes": 0.4}""").Value("required_volume", "ft³"), 1e-9);

    // NFPA 54 9.3.2.2: no more than 0.60 air changes may be counted.
    [Fact]
    public void Infiltration_is_capped()
    {
        double At(double changes) => Worked.Of("combustion-air", Two + $$""", "method": "known infiltration", "air_changes": {{changes}}}""").Value("required_volume", "ft³");
        Worked.Near(At(0.6), At(2), 1e-9);
    }

    [Theory]
    [InlineData("indoor openings", 140)]
    [InlineData("outdoor vertical", 35)]
    [InlineData("outdoor horizontal", 70)]
    [InlineData("outdoor single", 46.67)]
    [InlineData("other storey", 280)]
    public void Openings_by_way(string method, double each) => Worked.Near(each, Each(Two + $$""", "method": "{{method}}"}"""), 0.01);

    // A maker's table (manualsonline.com, on NFPA 54): 100,000 Btu/h: 50, 33.3 and 25 in²; 75,000: 37.5, 25, 18.75; 150,000: 75, 50, 37.5.
    [Theory]
    [InlineData(100_000, 50, 33.3, 25)]
    [InlineData(75_000, 37.5, 25, 18.75)]
    [InlineData(150_000, 75, 50, 37.5)]
    public void Makers_table(double input, double horizontal, double single, double vertical)
    {
        Worked.Near(horizontal, Each($$"""{"appliances": [{{input}}], "method": "outdoor horizontal"}"""), 0.05);
        Worked.Near(single, Each($$"""{"appliances": [{{input}}], "method": "outdoor single"}"""), 0.05);
        Worked.Near(vertical, Each($$"""{"appliances": [{{input}}], "method": "outdoor vertical"}"""), 0.05);
    }

    // IFGC 304.5.3.1: not less than 100 in² each indoors.
    [Fact]
    public void Small_appliances_still_need_a_hundred() => Worked.Near(100, Each("""{"appliances": [40000], "method": "indoor openings"}"""), 1e-9);

    // IFGC 304.10: metal louvers of unknown free area count 75 %, wood 25 %.
    [Theory]
    [InlineData("""[40, 40]""", "", "within")]
    [InlineData("""[40, 30]""", "", "outside")]
    [InlineData("""[80]""", "", "outside")]
    [InlineData("""[40, 40]""", ", \"louver\": \"metal\"", "outside")]
    [InlineData("""[50, 50]""", ", \"louver\": \"metal\"", "within")]
    [InlineData("""[100, 100]""", ", \"louver\": \"wood\"", "outside")]
    public void Openings_that_are_there(string openings, string louver, string verdict) =>
        Assert.Equal(verdict, Worked.Of("combustion-air", Two + $$""", "method": "outdoor vertical", "openings": {{openings}}{{louver}}}""").Verdict.Word);

    [Theory]
    [InlineData("{}", "appliances")]
    [InlineData("""{"appliances": []}""", "appliances")]
    [InlineData("""{"appliances": [-4]}""", "appliances[0]")]
    [InlineData("""{"appliances": [40000], "method": "known infiltration"}""", "air_changes")]
    [InlineData("""{"appliances": [40000], "volume": -1}""", "volume")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("combustion-air", json, input);

    [Fact]
    public void More_fuel_never_needs_less_air() =>
        Gen.Double[1_000, 400_000].Sample(input =>
        {
            double Need(double burned) => Worked.Of("combustion-air", $$"""{"appliances": [{{burned:R}}]}""").Value("required_volume", "ft³");
            return Need(input * 1.1) > Need(input) && Math.Abs(Need(input) - Worked.Of("combustion-air", $$"""{"appliances": ["{{input * 1055.05585262 / 3600:R}} W"]}""").Value("required_volume", "ft³")) < 1e-6 * input;
        }, iter: 100);
}
