namespace Purlin.Tests.Reckoning.Air;

public sealed class EquipmentMatchTests
{
    private static Purlin.Reckoning.Working Of(string json) => Worked.Of("equipment-match", json);

    private static string Pair(double outdoor, double coil, string outdoorRefrigerant = "R-410A", string coilRefrigerant = "R-410A") =>
        $$"""{"outdoor": {"tons": {{outdoor}}, "refrigerant": "{{outdoorRefrigerant}}"}, "indoor_coil": {"tons": {{coil}}, "refrigerant": "{{coilRefrigerant}}"} }""";

    // Common practice: 3 with 3 tons and one refrigerant match, a coil up to half a ton larger often does, a smaller coil or two
    // refrigerants do not; 2.5-ton coils on 3-ton units were seen in the field and are a flag (a trade thread on pairs).
    [Theory]
    [InlineData(3, 3, "R-410A", "within")]
    [InlineData(3, 3.5, "R-410A", "within")]
    [InlineData(3, 4, "R-410A", "outside")]
    [InlineData(3, 2.5, "R-410A", "outside")]
    [InlineData(3, 3, "R-22", "outside")]
    public void Pairs(double outdoor, double coil, string coilRefrigerant, string verdict) => Assert.Equal(verdict, Of(Pair(outdoor, coil, "R410A", coilRefrigerant)).Verdict.Word);

    // EPA: no new R-22 equipment from 2010; none made or imported since 2020.
    [Fact]
    public void R22_is_lawful_to_keep_and_younger_than_2010_is_odd()
    {
        var working = Of("""{"outdoor": {"tons": 3, "refrigerant": "HCFC-22", "year": 2013}, "indoor_coil": {"tons": 3, "refrigerant": "R-22", "year": 2012}, "year_now": 2026}""");
        Assert.Contains("2020", (string)working.InWords(InWords.Tongue)["refrigerant"]!["standing"]!, StringComparison.Ordinal);
        Assert.Contains("R-22 in a unit made after 2010", working.InWords(InWords.Tongue)["mismatches"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Equal(13, (int)working.Result["ages"]!["outdoor"]!);
        Assert.Equal(14, (int)working.Result["ages"]!["indoor_coil"]!);
        Assert.Null(working.Result["ages"]!["air_mover"]);
    }

    // 10 CFR 430.32(c): SEER 13 from 23 January 2006.
    [Theory]
    [InlineData(2005, 10, 0)]
    [InlineData(2006, 10, 0)]
    [InlineData(2007, 10, 1)]
    [InlineData(2007, 13, 0)]
    public void Efficiency_and_year_must_agree(int year, double seer, int mismatches) =>
        Assert.Equal(mismatches, Of($$"""{"outdoor": {"year": {{year}}, "efficiency": {{seer}} } }""").Result["mismatches"]!.AsArray().Count);

    [Fact]
    public void Metering_years_and_air_mover_are_compared()
    {
        var working = Of("""{"outdoor": {"tons": 4, "year": 2018, "metering": "thermostatic valve"}, "indoor_coil": {"tons": 4, "year": 2005, "metering": "piston"}, "air_mover": {"tons": 3}, "floor_area": 2000}""");
        Assert.Equal(3, working.Result["mismatches"]!.AsArray().Count);
        Worked.Near(500, working.Value("area_per_ton", "ft²"), 1e-9);
    }

    [Fact]
    public void Half_the_plates_cannot_say_that_they_match() => Assert.Equal("cannot say", Of("""{"outdoor": {"tons": 3, "refrigerant": "R-410A"}}""").Verdict.Word);

    [Theory]
    [InlineData("{}", "outdoor")]
    [InlineData("""{"outdoor": {"refrigerant": "R-999"}}""", "outdoor.refrigerant")]
    [InlineData("""{"outdoor": {"year": 1066}}""", "outdoor.year")]
    [InlineData("""{"outdoor": {"year": 2027}, "year_now": 2026}""", "outdoor.year")]
    [InlineData("""{"outdoor": {"tons": "3 psi"}}""", "outdoor.tons")]
    [InlineData("""{"outdoor": {"colour": "grey"}}""", "outdoor.colour")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("equipment-match", json, input);

    [Fact]
    public void Metric_capacity_is_the_same() => Assert.Equal("within", Of("""{"outdoor": {"tons": "10.5506 kW", "refrigerant": "R-32"}, "indoor_coil": {"tons": "36000 Btu/h", "refrigerant": "R-32"}}""").Verdict.Word);
}
