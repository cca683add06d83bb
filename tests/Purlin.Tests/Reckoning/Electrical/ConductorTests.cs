using CsCheck;

namespace Purlin.Tests.Reckoning.Electrical;

public sealed class ConductorTests
{
    private static Purlin.Reckoning.Working Of(string json) => Worked.Of("conductor", json);

    // NEC Table 310.16 (2020 on) = Table 310.15(B)(16) (2011 to 2017), rows as reprinted on two public pages.
    [Theory]
    [InlineData("14", "copper", 15, 20, 25)]
    [InlineData("12", "copper", 20, 25, 30)]
    [InlineData("10", "copper", 30, 35, 40)]
    [InlineData("8", "copper", 40, 50, 55)]
    [InlineData("6", "copper", 55, 65, 75)]
    [InlineData("3", "copper", 85, 100, 115)]
    [InlineData("1", "copper", 110, 130, 145)]
    [InlineData("2/0", "copper", 145, 175, 195)]
    [InlineData("4/0", "copper", 195, 230, 260)]
    [InlineData("500", "copper", 320, 380, 430)]
    [InlineData("12", "aluminum", 15, 20, 25)]
    [InlineData("8", "aluminum", 35, 40, 45)]
    [InlineData("2", "aluminum", 75, 90, 100)]
    [InlineData("4/0", "aluminum", 150, 180, 205)]
    [InlineData("300", "aluminum", 195, 230, 260)]
    public void Table_row(string size, string material, double at60, double at75, double at90)
    {
        foreach (var (celsius, amps) in new[] { (60, at60), (75, at75), (90, at90) })
            Worked.Near(amps, Of($$"""{"size": "{{size}}", "material": "{{material}}", "insulation": {{celsius}}}""").Value("ampacity", "A"), 0);
    }

    // The same table in editions before 2011 prints other figures for a few sizes.
    [Theory]
    [InlineData("14", 60, 2008, 20)]
    [InlineData("14", 60, 2011, 15)]
    [InlineData("3", 90, 2008, 110)]
    [InlineData("1", 90, 2005, 150)]
    public void Older_editions_have_their_own_table(string size, int insulation, int edition, double amps) =>
        Worked.Near(amps, Of($$"""{"size": "{{size}}", "material": "copper", "insulation": {{insulation}}, "edition": {{edition}}}""").Value("ampacity", "A"), 0);

    // 240.4(D): 14, 12 and 10 AWG copper are held to 15, 20 and 30 A, 12 and 10 AWG aluminum to 15 and 25 A, whatever the table says.
    [Theory]
    [InlineData("14", "copper", 15)]
    [InlineData("12", "copper", 20)]
    [InlineData("10", "copper", 30)]
    [InlineData("12", "aluminum", 15)]
    [InlineData("10", "aluminum", 25)]
    public void Small_conductors_have_a_limit_of_their_own(string size, string material, double amps) =>
        Worked.Near(amps, Of($$"""{"size": "{{size}}", "material": "{{material}}", "insulation": 90, "termination": 75}""").Value("largest_overcurrent_device", "A"), 0);

    // A published check of the 55 °C factor: 12 AWG 90 °C copper, 30 A × 0.76 = 22.8 A (engineerboards.com, thread 27269).
    [Fact]
    public void Hot_surroundings_lower_it() =>
        Worked.Near(22.8, Of("""{"size": "12", "material": "copper", "insulation": 90, "ambient": "55 °C"}""").Value("adjusted_ampacity", "A"), 1e-9);

    // A published example: nine conductors in one conduit, 12 AWG 90 °C copper, 30 A × 0.70 = 21 A (voltagelab.com, Table 310.15(B)(3)(a)).
    [Fact]
    public void Company_lowers_it() =>
        Worked.Near(21, Of("""{"size": 12, "material": "copper", "insulation": "90 °C", "current_carrying": 9}""").Value("adjusted_ampacity", "A"), 1e-9);

    // 110.14(C): 90 °C insulation at 60 °C terminals carries the 60 °C value; 240.4(B): 40 A is standard, so 8 AWG keeps 40.
    [Fact]
    public void Terminals_hold_it_down()
    {
        var working = Of("""{"size": "8", "material": "copper", "insulation": 90, "termination": 60}""");
        Worked.Near(40, working.Value("usable_ampacity", "A"), 0);
        Worked.Near(40, working.Value("largest_overcurrent_device", "A"), 0);
    }

    // 240.4(B): 6 AWG copper at 75 °C carries 65 A, no standard rating; the next, 70 A, may be used.
    [Fact]
    public void Next_standard_rating_may_be_used() =>
        Worked.Near(70, Of("""{"size": "6", "material": "copper", "insulation": 75, "termination": 75}""").Value("largest_overcurrent_device", "A"), 0);

    [Fact]
    public void Insulation_without_a_factor_may_not_be_used_there()
    {
        var working = Of("""{"size": "12", "material": "copper", "insulation": 60, "ambient": "58 °C"}""");
        Assert.Equal("outside", working.Verdict.Word);
        Assert.Null(working.Result["ampacity"]);
    }

    [Theory]
    [InlineData("""{"size": "13", "material": "copper", "insulation": 90}""", "size")]
    [InlineData("""{"size": "14", "material": "aluminum", "insulation": 90}""", "size")]
    [InlineData("""{"size": "12", "material": "silver", "insulation": 90}""", "material")]
    [InlineData("""{"size": "12", "material": "copper", "insulation": 80}""", "insulation")]
    [InlineData("""{"size": "12", "material": "copper", "insulation": 90, "termination": 70}""", "termination")]
    [InlineData("""{"size": "12", "material": "copper", "insulation": 90, "ambient": 400}""", "ambient")]
    [InlineData("""{"size": "12", "material": "copper", "insulation": 90, "edition": 1600}""", "edition")]
    [InlineData("""{"size": "12", "material": "copper", "insulation": 90, "current_carrying": 0}""", "current_carrying")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("conductor", json, input);

    // Spellings of the trade (common practice): gauge with or without its letters, noughts, the older MCM for kcmil.
    [Theory]
    [InlineData("\"12 AWG\"", "copper", 30)]
    [InlineData("\"#12\"", "Cu", 30)]
    [InlineData("12", "COPPER", 30)]
    [InlineData("\"00\"", "copper", 195)]
    [InlineData("\"0\"", "aluminium", 135)]
    [InlineData("\"250 MCM\"", "AL", 230)]
    public void Spellings_of_the_trade_are_one_size(string size, string material, double amps) =>
        Worked.Near(amps, Of($$"""{"size": {{size}}, "material": "{{material}}", "insulation": 90}""").Value("ampacity", "A"), 0);

    [Fact]
    public void Hotter_or_more_crowded_never_carries_more() =>
        Gen.Select(Gen.Double[32, 180], Gen.Int[1, 60], Gen.Int[0, 18]).Sample((ambient, count, at) =>
        {
            var size = new[] { "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500", "600" }[at];
            double Carries(double warm, int many) => Of($$"""{"size": "{{size}}", "material": "copper", "insulation": 90, "ambient": {{warm:R}}, "current_carrying": {{many}}}""").Value("usable_ampacity", "A");
            var before = Carries(ambient, count);
            return Carries(Math.Min(185, ambient + 5), count) <= before && Carries(ambient, count + 3) <= before;
        }, iter: 200);
}
