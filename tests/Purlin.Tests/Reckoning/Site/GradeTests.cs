using CsCheck;

namespace Purlin.Tests.Reckoning.Site;

/// <summary>Ground beside a house against IRC R401.3: 6 in in 10 ft of soil, 2 % of paving, 5 % to a barrier in the 2006 text.</summary>
public sealed class GradeTests
{
    private static Reckoned Rod(string surface, double[] feet, double[] readings, string more = "") => Reckoned.Of("grade", FormattableString.Invariant($$"""
        {"surface":"{{surface}}","reads":"rod","points":[{{string.Join(',', feet.Zip(readings, (x, z) => FormattableString.Invariant($$"""{"distance":{{x}},"level":"{{z}} ft"}""")))}}]{{more}}}
        """));

    private static readonly double[] Two = [0, 2, 4, 6, 8, 10];

    // Worked from rod readings, where a larger reading is lower ground: 0.50 ft in 10 ft is 6.00 in and 5.00 %.
    [Fact]
    public void Half_a_foot_in_ten_meets_the_rule_exactly()
    {
        var grade = Rod("soil", Two, [4.20, 4.30, 4.40, 4.50, 4.60, 4.70]);
        grade.Near("fall", 6.0, 1e-9);
        grade.Near("slope", 5.0, 1e-9);
        Assert.Equal("within", grade.Verdict);
        Assert.Equal("meets", grade.Text("class"));
    }

    [Fact]
    public void A_gentle_fall_is_positive_but_too_little()
    {
        var grade = Rod("soil", Two, [4.20, 4.22, 4.25, 4.27, 4.29, 4.31]);
        grade.Near("fall", 1.32, 1e-9);
        grade.Near("slope", 1.10, 1e-9);
        Assert.Equal("outside", grade.Verdict);
        Assert.Contains("4.7 in more", grade.Because, StringComparison.Ordinal);
        Assert.Equal("positive but too little", grade.Text("class"));
    }

    [Fact]
    public void Ground_that_falls_toward_the_wall_is_negative()
    {
        var grade = Rod("soil", [0, 10], [4.60, 4.45]);
        grade.Near("fall", -1.80, 1e-9);
        grade.Near("slope", -1.50, 1e-9);
        Assert.Equal(["negative", "outside"], [grade.Text("class"), grade.Verdict]);
    }

    // The ends fall 6.24 in, but the ground at 6 ft stands 1.92 in above that at 4 ft: water is trapped.
    [Fact]
    public void Water_trapped_inside_the_strip_is_found_though_its_ends_pass()
    {
        var grade = Rod("soil", Two, [4.20, 4.30, 4.34, 4.18, 4.45, 4.72]);
        grade.Near("fall", 6.24, 1e-9);
        grade.Near("reverse", 1.92, 1e-9);
        Assert.Equal(["reversed inside the strip", "outside"], [grade.Text("class"), grade.Verdict]);
    }

    [Theory]
    [InlineData(4.28, "within", 2.0)]
    [InlineData(4.27, "outside", 1.75)]
    public void Paving_falls_two_percent(double end, string verdict, double slope)
    {
        var walk = Rod("hard", [0, 4], [4.20, end]);
        walk.Near("slope", slope, 1e-9);
        Assert.Equal(verdict, walk.Verdict);
    }

    [Fact]
    public void Elevations_read_the_other_way_round()
    {
        var grade = Reckoned.Of("grade", """{"surface":"soil","points":[{"distance":0,"level":0},{"distance":10,"level":-6.5}]}""");
        grade.Near("fall", 6.5, 1e-12);
        Assert.Equal("within", grade.Verdict);
        Assert.Contains(Reckoned.Of("grade", """{"points":[{"distance":0,"level":0},{"distance":10,"level":-6.5}]}""").Working.Steps, step => InWords.Of(step.Text).StartsWith("Surface not given: soil", StringComparison.Ordinal));
        Assert.Contains(grade.Working.Steps, step => InWords.Of(step.Text).StartsWith("Reads not given: elevation", StringComparison.Ordinal));
    }

    // IRC 2006 R401.3: 5 % up to a barrier, with drains or swales; later texts ask for drains or swales only.
    [Theory]
    [InlineData(4.50, ",\"edition\":\"2006\",\"drained\":true", "within")]
    [InlineData(4.45, ",\"edition\":\"2006\",\"drained\":true", "outside")]
    [InlineData(4.45, ",\"edition\":\"later\",\"drained\":true", "within")]
    [InlineData(4.45, ",\"edition\":\"later\",\"drained\":false", "outside")]
    [InlineData(4.50, "", "cannot say")]
    public void A_barrier_ends_the_strip(double end, string more, string verdict) => Assert.Equal(verdict, Rod("soil", [0, 6], [4.20, end], ",\"barrier\":6" + more).Verdict);

    [Fact]
    public void Half_a_strip_is_no_strip() => Assert.Equal("cannot say", Rod("soil", [0, 5], [4.20, 4.60]).Verdict);

    [Fact]
    public void Between_readings_the_ground_is_straight() =>
        Reckoned.Of("grade", """{"surface":"soil","points":[{"distance":0,"level":0},{"distance":20,"level":-14}]}""").Near("fall", 7, 1e-12);

    [Fact]
    public void More_fall_never_worsens_drainage() => Gen.Select(Gen.Double[-4, 8].Array[5], Gen.Double[0, 2], Gen.Bool).Sample((falls, steeper, hard) =>
    {
        string At(double extra)
        {
            var level = 0.0;
            var points = string.Join(',', Enumerable.Range(0, 6).Select(index => FormattableString.Invariant($$"""{"distance":{{2 * index}},"level":{{(index == 0 ? 0 : level -= falls[index - 1] + extra):R}}}""")));
            return Reckoned.Of("grade", $$"""{"surface":"{{(hard ? "hard" : "soil")}}","points":[{{points}}]}""").Verdict;
        }
        Assert.True(At(0) == "outside" || At(steeper) == "within");
    }, iter: 200);

    [Theory]
    [InlineData("""{"surface":"soil","points":[]}""", "points: a list of 0")]
    [InlineData("""{"surface":"soil","points":[{"distance":0,"level":0},{"distance":0,"level":1}]}""", "points: two readings at one distance")]
    [InlineData("""{"surface":"soil","points":[{"distance":3,"level":0},{"distance":10,"level":1}]}""", "points: first reading at 3 ft")]
    [InlineData("""{"surface":"mud","points":[{"distance":0,"level":0},{"distance":10,"level":1}]}""", "surface")]
    [InlineData("""{"surface":"soil","points":[{"distance":-1,"level":0},{"distance":10,"level":1}]}""", "points[0].distance: -1")]
    [InlineData("""{"surface":"soil","points":[{"distance":0,"level":"NaN"},{"distance":10,"level":1}]}""", "points[0].level")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("grade", json), StringComparison.Ordinal);
}
