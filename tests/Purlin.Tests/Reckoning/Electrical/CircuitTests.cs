namespace Purlin.Tests.Reckoning.Electrical;

public sealed class CircuitTests
{
    // NEC 240.4(D) for branch circuits; 240.4(B) above 10 AWG.
    [Theory]
    [InlineData(20, "14", "copper", 90, "outside", 15)]
    [InlineData(15, "14", "copper", 90, "within", 15)]
    [InlineData(30, "12", "copper", 90, "outside", 20)]
    [InlineData(20, "12", "aluminum", 75, "outside", 15)]
    [InlineData(40, "8", "copper", 60, "within", 40)]
    [InlineData(50, "8", "copper", 60, "outside", 40)]
    public void Branch_circuit(double breaker, string size, string material, int insulation, string verdict, double largest)
    {
        var working = Worked.Of("circuit", $$"""{"breaker": {{breaker}}, "size": "{{size}}", "material": "{{material}}", "insulation": {{insulation}}, "termination": 60, "use": "branch"}""");
        Assert.Equal(verdict, working.Verdict.Word);
        Worked.Near(largest, working.Value("largest_allowed", "A"), 0);
    }

    // NEC 240.4(D)(3) (2023): copper-clad aluminum of 14 AWG 10 A, as electricians ask about it at a code teacher's forum; no ampacity is printed for it.
    [Theory]
    [InlineData(10, "within")]
    [InlineData(15, "outside")]
    public void Copper_clad_aluminum_of_14_gauge_has_ten_amperes(double breaker, string verdict)
    {
        var working = Worked.Of("circuit", $$"""{"breaker": {{breaker}}, "size": "14", "material": "copper-clad aluminum", "insulation": 60, "use": "branch"}""");
        Assert.Equal(verdict, working.Verdict.Word);
        Worked.Near(10, working.Value("largest_allowed", "A"), 0);
    }

    // Every row of NEC Table 310.12(A) (2023): the size named carries that service, one size smaller does not.
    [Theory]
    [InlineData(100, "4", "2", "6", "3")]
    [InlineData(110, "3", "1", "4", "2")]
    [InlineData(125, "2", "1/0", "3", "1")]
    [InlineData(150, "1", "2/0", "2", "1/0")]
    [InlineData(175, "1/0", "3/0", "1", "2/0")]
    [InlineData(200, "2/0", "4/0", "1/0", "3/0")]
    [InlineData(225, "3/0", "250", "2/0", "4/0")]
    [InlineData(250, "4/0", "300", "3/0", "250")]
    [InlineData(300, "250", "350", "4/0", "300")]
    [InlineData(350, "350", "500", "300", "400")]
    [InlineData(400, "400", "600", "350", "500")]
    public void Dwelling_service(double rating, string copper, string aluminum, string copperTooSmall, string aluminumTooSmall)
    {
        string Verdict(string size, string material) => Worked.Of("circuit", $$"""{"breaker": {{rating}}, "size": "{{size}}", "material": "{{material}}", "insulation": 75, "use": "dwelling service"}""").Verdict.Word;
        Assert.Equal("within", Verdict(copper, "copper"));
        Assert.Equal("within", Verdict(aluminum, "aluminum"));
        Assert.Equal("outside", Verdict(copperTooSmall, "copper"));
        Assert.Equal("outside", Verdict(aluminumTooSmall, "aluminum"));
    }

    // The same table follows from 83 % of the rating against the 75 °C column of Table 310.16 (310.12(A) says so).
    [Fact]
    public void Dwelling_table_is_83_percent_of_the_75_degree_column()
    {
        foreach (var row in Purlin.Reckoning.Tables.Read("electrical/dwelling_service.csv").Rows)
            foreach (var material in new[] { "copper", "aluminum" })
            {
                var smallest = Purlin.Reckoning.Tables.Read("electrical/ampacity.csv").Rows.First(wire => wire["material"] == material && wire.Number("amps_75") >= 0.83 * row.Number("rating"));
                Assert.Equal(smallest["size"], row[material]);
            }
    }

    // A: the trade magazine's code question on an air conditioner of 44/60 A on 8 AWG. B: a trade forum's 14.9/25 A on 14 AWG cable.
    // C to E: worked out from plates of 19.7/35, 26.4/45 and 28/50 A.
    [Theory]
    [InlineData(60, "8", 75, 75, 44, 60, "within")]
    [InlineData(25, "14", 90, 60, 14.9, 25, "within")]
    [InlineData(40, "12", 75, 75, 19.7, 35, "outside")]
    [InlineData(45, "12", 75, 75, 26.4, 45, "outside")]
    [InlineData(30, "10", 75, 75, 28, 50, "within")]
    [InlineData(25, "10", 75, 75, 28, 50, "outside")]
    public void Equipment_with_a_plate(double breaker, string size, int insulation, int termination, double mca, double mocp, string verdict)
    {
        var working = Worked.Of("circuit", $$"""{"breaker": {{breaker}}, "size": "{{size}}", "material": "copper", "insulation": {{insulation}}, "termination": {{termination}}, "use": "equipment", "mca": {{mca}}, "mocp": {{mocp}}}""");
        Assert.Equal(verdict, working.Verdict.Word);
        Worked.Near(mocp, working.Value("largest_allowed", "A"), 0);
    }

    [Theory]
    [InlineData("""{"breaker": 20, "size": "12", "material": "copper", "insulation": 90, "use": "equipment", "mocp": 30}""", "mca")]
    [InlineData("""{"breaker": 20, "size": "12", "material": "copper", "insulation": 90, "use": "equipment", "mca": 40, "mocp": 30}""", "mca")]
    [InlineData("""{"breaker": 20, "size": "12", "material": "copper", "insulation": 90, "use": "branch", "mca": 40}""", "mca")]
    [InlineData("""{"breaker": -20, "size": "12", "material": "copper", "insulation": 90, "use": "branch"}""", "breaker")]
    [InlineData("""{"breaker": 20, "size": "12", "material": "copper", "insulation": 90, "use": "garden"}""", "use")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("circuit", json, input);
}
