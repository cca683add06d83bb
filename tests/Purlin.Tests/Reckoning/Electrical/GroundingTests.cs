using System.Text.Json.Nodes;

namespace Purlin.Tests.Reckoning.Electrical;

public sealed class GroundingTests
{
    private static JsonObject Member(string json, string member) => Worked.Of("grounding", json).Result[member]!.AsObject();

    // NEC Table 250.66, both edges of every row, as reprinted on two public pages.
    [Theory]
    [InlineData("2", "copper", "8", "6")]
    [InlineData("1", "copper", "6", "4")]
    [InlineData("1/0", "copper", "6", "4")]
    [InlineData("2/0", "copper", "4", "2")]
    [InlineData("3/0", "copper", "4", "2")]
    [InlineData("4/0", "copper", "2", "1/0")]
    [InlineData("350", "copper", "2", "1/0")]
    [InlineData("400", "copper", "1/0", "3/0")]
    [InlineData("700", "copper", "2/0", "4/0")]
    [InlineData("1250", "copper", "3/0", "250")]
    [InlineData("1/0", "aluminum", "8", "6")]
    [InlineData("2/0", "aluminum", "6", "4")]
    [InlineData("4/0", "aluminum", "4", "2")]
    [InlineData("250", "aluminum", "4", "2")]
    [InlineData("300", "aluminum", "2", "1/0")]
    [InlineData("600", "aluminum", "1/0", "3/0")]
    public void Electrode_conductor(string size, string material, string copper, string aluminum)
    {
        var sizes = Member($$"""{"size": "{{size}}", "material": "{{material}}", "service_rating": 200}""", "electrode_conductor");
        Assert.Equal(copper, (string?)sizes["copper"]);
        Assert.Equal(aluminum, (string?)sizes["aluminum"]);
    }

    // NEC Table 250.122; the older rows of 30 and 40 A give the same sizes.
    [Theory]
    [InlineData(15, "14", "12")]
    [InlineData(20, "12", "10")]
    [InlineData(30, "10", "8")]
    [InlineData(40, "10", "8")]
    [InlineData(60, "10", "8")]
    [InlineData(70, "8", "6")]
    [InlineData(100, "8", "6")]
    [InlineData(200, "6", "4")]
    [InlineData(300, "4", "2")]
    [InlineData(400, "3", "1")]
    public void Equipment_conductor(double rating, string copper, string aluminum)
    {
        var sizes = Member($$"""{"size": "2/0", "material": "copper", "service_rating": {{rating}}}""", "equipment_conductor");
        Assert.Equal(copper, (string?)sizes["copper"]);
        Assert.Equal(aluminum, (string?)sizes["aluminum"]);
    }

    // NEC 250.66(A) and (B): 6 AWG copper is the most to a rod alone, 4 AWG to a concrete-encased electrode.
    [Theory]
    [InlineData("rod, pipe or plate", "6")]
    [InlineData("concrete-encased", "4")]
    [InlineData("water pipe", "2")]
    public void Electrode_of_its_own_kind_limits_the_size(string electrode, string copper) =>
        Assert.Equal(copper, (string?)Member($$"""{"size": "4/0", "material": "copper", "service_rating": 200, "electrode": "{{electrode}}"}""", "electrode_conductor")["copper"]);

    // NEC 250.28(D): beyond the table an eighth of the area: 1,500 kcmil copper asks for 187.5 kcmil, so 4/0 (211.6 kcmil).
    [Fact]
    public void Jumper_beyond_the_table_is_an_eighth() =>
        Assert.Equal("4/0", (string?)Member("""{"size": "1500", "material": "copper", "service_rating": 800}""", "main_bonding_jumper")["copper"]);

    [Theory]
    [InlineData("4", "within")]
    [InlineData("6", "outside")]
    public void Conductor_that_is_there_is_judged(string there, string verdict) =>
        Assert.Equal(verdict, Worked.Of("grounding", $$"""{"size": "2/0", "material": "copper", "service_rating": 200, "electrode_conductor": "{{there}}"}""").Verdict.Word);

    [Theory]
    [InlineData("""{"size": "5", "material": "copper", "service_rating": 200}""", "size")]
    [InlineData("""{"size": "2/0", "material": "copper", "service_rating": 5000}""", "service_rating")]
    [InlineData("""{"size": "2/0", "service_rating": 200}""", "material")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("grounding", json, input);
}
