using CsCheck;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Stairs and guards against the code of their day and of today.</summary>
public sealed class StairsAndGuardTests
{
    private static Reckoned Flight(string more) => Reckoned.Of("stairs", "{" + more + "}");

    private static Reckoned Rail(string more) => Reckoned.Of("guard", "{" + more + "}");

    // IRC R311.7.5.1: 7-3/4 in; the older national code and CABO: 8-1/4 in.
    [Theory]
    [InlineData(7.75, "IRC 2018", "within")]
    [InlineData(7.76, "IRC 2018", "outside")]
    [InlineData(8.25, "older", "within")]
    [InlineData(8.26, "older", "outside")]
    [InlineData(8.25, "IRC 2000-2015", "outside")]
    public void The_highest_riser_is_the_editions(double riser, string edition, string verdict) =>
        Assert.Equal(verdict, Flight(FormattableString.Invariant($"\"risers\":[{riser}],\"edition\":\"{edition}\"")).Verdict);

    // IRC R311.7.5.1: 3/8 in between the largest and smallest riser of a flight.
    [Theory]
    [InlineData("[7.5,7.5,7.875]", "older", "within", 0.375)]
    [InlineData("[7.25,7.25,7.625]", "IRC 2021", "within", 0.375)]
    [InlineData("[7.25,7.6875]", "IRC 2021", "outside", 0.4375)]
    public void Steps_must_be_alike(string risers, string edition, string verdict, double variation)
    {
        var flight = Flight($"\"risers\":{risers},\"edition\":\"{edition}\"");
        Assert.Equal(verdict, flight.Verdict);
        flight.Near("riser_variation", variation, 1e-12);
    }

    // IRC R311.7.5.2 10 in treads; R311.7.1 36 in width; R311.7.2 80 in headroom; R311.7.8.1 handrail 34 to 38 in; R311.7.8 from four risers.
    [Theory]
    [InlineData("\"treads\":[10,10]", "within")]
    [InlineData("\"treads\":[9.9,10]", "outside")]
    [InlineData("\"treads\":[10,10.5]", "outside")]
    [InlineData("\"width\":36", "within")]
    [InlineData("\"width\":35.9", "outside")]
    [InlineData("\"headroom\":80", "within")]
    [InlineData("\"headroom\":79", "outside")]
    [InlineData("\"handrail_height\":34", "within")]
    [InlineData("\"handrail_height\":38.1", "outside")]
    [InlineData("\"handrail_height\":33", "outside")]
    public void Each_limit_is_held(string more, string verdict) => Assert.Equal(verdict, Flight("\"risers\":[7,7,7]," + more).Verdict);

    // IRC R311.7.8: four risers or more; CABO 1995 315.1: two or more.
    [Theory]
    [InlineData("[7,7,7]", "IRC 2021", false, "within")]
    [InlineData("[7,7,7,7]", "IRC 2021", true, "outside")]
    [InlineData("[7,7]", "older", true, "outside")]
    public void A_handrail_is_needed_from_the_editions_number_of_risers(string risers, string edition, bool needed, string verdict)
    {
        var flight = Flight($"\"risers\":{risers},\"edition\":\"{edition}\",\"handrail\":false");
        Assert.Equal(needed, flight.Flag("handrail_needed"));
        Assert.Equal(verdict, flight.Verdict);
    }

    // IRC R311.7.3: 151 in between landings from 2018, 147 in before (from memory).
    [Theory]
    [InlineData("IRC 2021", "within")]
    [InlineData("IRC 2000-2015", "outside")]
    public void A_flight_may_rise_higher_since_2018(string edition, string verdict) =>
        Assert.Equal(verdict, Flight($"\"risers\":[{string.Join(',', Enumerable.Repeat("7.5", 20))}],\"handrail\":true,\"edition\":\"{edition}\"").Verdict);

    [Fact]
    public void A_flight_in_millimetres_is_the_same_flight() => Gen.Double[4, 10].Array[3].Sample(risers =>
    {
        var inches = Flight(FormattableString.Invariant($"\"risers\":[{string.Join(',', risers.Select(riser => FormattableString.Invariant($"{riser:R}")))}]"));
        var metric = Flight($"\"risers\":[{string.Join(',', risers.Select(riser => FormattableString.Invariant($"\"{riser * 25.4:R} mm\"")))}]");
        metric.Near("riser_most", inches.Number("riser_most"), 1e-9);
        Assert.Equal(inches.Verdict, metric.Verdict);
    }, iter: 60);

    // IRC R312.1.1: more than 30 in; R312.1.2: 36 in; R312.1.3: less than 4 in, 4-3/8 in on stairs, where 34 in high is enough.
    [Theory]
    [InlineData("\"drop\":30,\"present\":false", "within")]
    [InlineData("\"drop\":30.1,\"present\":false", "outside")]
    [InlineData("\"drop\":48,\"height\":36,\"opening\":3.9", "within")]
    [InlineData("\"drop\":48,\"height\":35.5,\"opening\":3.9", "outside")]
    [InlineData("\"drop\":48,\"height\":36,\"opening\":4", "outside")]
    [InlineData("\"drop\":48,\"height\":34,\"opening\":4.2,\"stair\":true", "within")]
    [InlineData("\"drop\":48,\"height\":34,\"opening\":4.375,\"stair\":true", "outside")]
    [InlineData("\"drop\":48,\"height\":36", "cannot say")]
    [InlineData("\"drop\":48", "cannot say")]
    [InlineData("\"height\":36,\"opening\":3.5", "within")]
    [InlineData("\"height\":30", "outside")]
    [InlineData("\"present\":false", "outside")]
    public void Todays_guard(string more, string verdict) => Assert.Equal(verdict, Rail(more).Verdict);

    // CABO 9 in until the mid-1980s, BOCA 6 in 1978 and 4 in 1990, CABO 4 in 1995 (code officials' forum; CodeCheck).
    [Theory]
    [InlineData(1970, 8, "within")]
    [InlineData(1970, 9.5, "outside")]
    [InlineData(1980, 5, "within")]
    [InlineData(1980, 8, "cannot say")]
    [InlineData(1992, 5, "cannot say")]
    [InlineData(1992, 3.9, "within")]
    [InlineData(2000, 5, "outside")]
    public void The_guard_of_its_day(int year, double opening, string then)
    {
        var guard = Rail(FormattableString.Invariant($"\"drop\":60,\"height\":36,\"opening\":{opening},\"year_built\":{year}"));
        Assert.Equal(then, guard.Text("then.verdict"));
        Assert.Equal(opening < 4 ? "within" : "outside", guard.Verdict);
        Assert.Contains($"In {year}:", guard.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_higher_and_tighter_guard_is_never_worse() => Gen.Select(Gen.Double[20, 50], Gen.Double[1, 10], Gen.Double[0, 10], Gen.Double[0, 3]).Sample((height, opening, higher, tighter) =>
    {
        string At(double tall, double wide) => Rail(FormattableString.Invariant($"\"drop\":60,\"height\":{tall:R},\"opening\":{wide:R}")).Verdict;
        Assert.True(At(height, opening) == "outside" || At(height + higher, Math.Max(0, opening - tighter)) == "within");
    }, iter: 200);

    [Theory]
    [InlineData("stairs", "{}", "risers: missing")]
    [InlineData("stairs", """{"risers":[]}""", "risers: a list of 0")]
    [InlineData("stairs", """{"risers":[7,-7]}""", "risers[1]: -7")]
    [InlineData("stairs", """{"risers":[7],"edition":"IRC 2033"}""", "edition")]
    [InlineData("stairs", """{"risers":["7 psi"]}""", "risers[0]")]
    [InlineData("guard", "{}", "drop: missing")]
    [InlineData("guard", """{"drop":40,"present":false,"height":36}""", "present: false")]
    [InlineData("guard", """{"drop":40,"year_built":99}""", "year_built: 99")]
    public void Bad_input_names_itself(string name, string json, string expected) => Assert.Contains(expected, Reckoned.Refused(name, json), StringComparison.Ordinal);
}
