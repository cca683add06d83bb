using CsCheck;
using Purlin.Reckoning.Years;

namespace Purlin.Tests.Reckoning.Years;

/// <summary>Survival against the published lives it is derived from, and what must hold at any age.</summary>
public sealed class ServiceLifeTests
{
    private static Reckoned Life(string component, int age, string more = "") =>
        Reckoned.Of("service-life", $$"""{"component":"{{component}}","year_installed":{{2026 - age}},"year_now":2026{{more}}}""");

    // Gas furnace, published low/average/high 11/17/23 years (Appliance Magazine, first-owner life). Derived with low as the 10th and high
    // as the 90th percentile: shape 4.182, scale 18.84. The survival values are worked from those two by hand.
    [Theory]
    [InlineData(10, 0.932)]
    [InlineData(15, 0.680)]
    [InlineData(20, 0.277)]
    public void A_gas_furnace_survives_as_its_published_lives_say(int age, double survival) => Life("furnace-gas", age).Near("survival", survival, 5e-4);

    // Same furnace: of those 18 years old and running, 0.772 fail within 5 years; of those 12 years old 0.393.
    [Theory]
    [InlineData(18, 0.772)]
    [InlineData(12, 0.393)]
    public void Chances_are_those_of_the_ones_alive_today(int age, double within5)
    {
        var furnace = Life("furnace-gas", age);
        furnace.Near("fails_within_5", within5, 5e-4);
        furnace.Near("fails_within_5", 1 - Life("furnace-gas", age + 5).Number("survival") / furnace.Number("survival"), 1e-12);
    }

    // Published low and high (Appliance Magazine): a tenth gone at the low, nine tenths at the high; the mean within 0.6 year of the
    // published average, which the derivation did not use.
    [Theory]
    [InlineData("furnace-gas", 11, 17, 23)]
    [InlineData("furnace-electric", 9, 14, 20)]
    [InlineData("furnace-oil", 13, 18, 23)]
    [InlineData("air-conditioner-central", 8, 13, 19)]
    [InlineData("air-conditioner-room", 7, 12, 16)]
    [InlineData("humidifier", 6, 10, 13)]
    [InlineData("ceiling-fan", 7, 13, 18)]
    public void The_derived_distribution_gives_back_what_is_published(string component, int low, double average, int high)
    {
        var lives = PublishedLife.Find(component)!.Lives!.Value;
        Assert.Equal(0.9, lives.Survival(low), 3);
        Assert.Equal(0.1, lives.Survival(high), 3);
        // Mean of a Weibull: scale·Γ(1 + 1/shape).
        Assert.Equal(average, lives.ScaleYears * MathNet.Numerics.SpecialFunctions.Gamma(1 + 1 / lives.Shape), 0.6);
        var own = Weibull.FromTenthAndNinetieth(low, high);
        Assert.Equal(own.Shape, lives.Shape, 3);
        Assert.Equal(own.ScaleYears, lives.ScaleYears, 2);
    }

    // MathNet.Numerics 5.0 has its own Weibull distribution; its exp(x) - 1 is good to about 1e-8, so the two agree to six places.
    [Fact]
    public void Survival_agrees_with_an_independent_weibull() => Assert.All(PublishedLife.All.Where(life => life.Lives is not null), life =>
    {
        var (lives, peer) = (life.Lives!.Value, new MathNet.Numerics.Distributions.Weibull(life.Lives!.Value.Shape, life.Lives.Value.ScaleYears));
        foreach (var age in new[] { 0.0, 1, 5, 12, 20, 30 })
        {
            Assert.Equal(1 - peer.CumulativeDistribution(age), lives.Survival(age), 6);
            var half = lives.YearsLeft(age, 0.5);
            Assert.Equal(0.5, lives.FailsWithin(age, half), 9);
        }
    });

    [Fact]
    public void Every_life_names_its_source_and_how_its_distribution_was_come_by() => Assert.All(PublishedLife.All, life =>
    {
        Assert.NotEmpty(life.Source);
        Assert.NotEmpty(life.Derivation);
        Assert.Equal(life.Lives is null, life.Derivation == "no distribution published");
        Assert.True(life.Lives is null || life.Derivation.Contains("derived here", StringComparison.Ordinal), life.Id);
    });

    [Fact]
    public void Older_never_survives_more_and_the_band_is_in_order() =>
        Gen.Select(Gen.Int[0, PublishedLife.All.Length - 1], Gen.Int[0, 90]).Sample((row, age) =>
        {
            var life = PublishedLife.All[row];
            if (life.Lives is null) return;
            var (now, later) = (Life(life.Id, age), Life(life.Id, age + 1));
            Assert.True(later.Number("survival") <= now.Number("survival"));
            Assert.True(later.Number("fails_within_5") >= now.Number("fails_within_5") - 1e-12);
            Assert.True(now.Number("fails_within_1") <= now.Number("fails_within_5") && now.Number("fails_within_5") <= now.Number("fails_within_10"));
            Assert.True(now.Number("years_left_10") <= now.Number("years_left_median") && now.Number("years_left_median") <= now.Number("years_left_90"));
        }, iter: 300);

    [Fact]
    public void The_answer_is_a_band_and_says_what_it_rests_on()
    {
        var furnace = Life("furnace-gas", 18);
        Assert.Equal("outside", furnace.Verdict);
        Assert.Contains("about 2 in ten are replaced within a year and 8 in ten within five", furnace.Because, StringComparison.Ordinal);
        Assert.Contains("one in ten fails within", Life("furnace-gas", 8).Because, StringComparison.Ordinal);
        Assert.Contains(furnace.Working.Steps, step => InWords.Of(step.Text).StartsWith("Condition not given", StringComparison.Ordinal));
        Assert.Contains(furnace.Working.Sources, source => source.StartsWith("derived here: low taken as the 10th", StringComparison.Ordinal));
        Assert.Equal("within", Life("furnace-gas", 5).Verdict);
        Assert.Contains(Life("pressure-tank", 5).Working.Sources, source => source.EndsWith("(from memory)", StringComparison.Ordinal));
        Assert.Contains(Life("furnace-gas", 5, ""","condition":"worse" """).Working.Cautions, caution => InWords.Of(caution).Contains("worse than its age", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("roof-slate", 40, "cannot say")]
    [InlineData("water-heater-tankless", 5, "cannot say")]
    [InlineData("smoke-alarm", 9, "cannot say")]
    [InlineData("smoke-alarm", 11, "outside")]
    public void Without_a_published_distribution_no_chance_is_given(string component, int age, string verdict)
    {
        var life = Life(component, age);
        Assert.True(life.IsNull("fails_within_5"));
        Assert.Equal(verdict, life.Verdict);
    }

    [Theory]
    [InlineData("Gas furnace", "furnace-gas")]
    [InlineData("outdoor unit", "air-conditioner-central")]
    [InlineData("water heater", "water-heater")]
    public void A_kind_is_found_by_its_other_names(string name, string id) => Assert.Equal(id, Life(name, 3).Text("component"));

    [Theory]
    [InlineData("""{"component":"flux capacitor","year_installed":2010,"year_now":2026}""", "component: flux capacitor; a kind of the table of lives: furnace-gas")]
    [InlineData("""{"component":"gas boiler","year_installed":2010,"year_now":2026}""", "boiler")]
    [InlineData("""{"component":"boiler","year_installed":2030,"year_now":2026}""", "year_installed: 2030; the year reckoned from, 2026")]
    [InlineData("""{"component":"boiler","year_installed":20100,"year_now":2026}""", "year_installed: 20100")]
    [InlineData("""{"component":"boiler","year_installed":2010.5,"year_now":2026}""", "year_installed: 2010.5")]
    [InlineData("""{"component":"boiler","year_installed":2010}""", "year_now: missing")]
    [InlineData("""{"component":"","year_installed":2010,"year_now":2026}""", "component")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("service-life", json), StringComparison.Ordinal);

    // What the sentence says is what its own figures say, also of very old things: a chance of a third or more within the year is never called one in ten.
    [Fact]
    public void The_sentence_says_what_the_figures_say()
    {
        for (var installed = 1950; installed <= 2026; installed++)
        {
            var furnace = Reckoned.Of("service-life", $$"""{"component":"furnace-gas","year_installed":{{installed}},"year_now":2026}""");
            if (furnace.IsNull("fails_within_1")) continue;
            if (furnace.Number("survival") < 0.02) Assert.Contains("of 100 of its kind", furnace.Because, StringComparison.Ordinal);
            else if (furnace.Number("years_left_10") < 1) Assert.Contains($"about {Math.Round(10 * furnace.Number("fails_within_1"))} in ten are replaced within a year", furnace.Because, StringComparison.Ordinal);
            else Assert.True(furnace.Number("fails_within_1") <= 0.1 + 1e-9);
        }
    }

}
