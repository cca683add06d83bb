using CsCheck;
using Purlin.Reckoning.Years;

namespace Purlin.Tests.Reckoning.Years;

/// <summary>Sums of replacements: exact small cases, a simulation written apart from ours, and what must hold for any prices.</summary>
public sealed class CostHorizonTests
{
    private static Reckoned Horizon(string components, int years, string more = "") =>
        Reckoned.Of("cost-horizon", $$"""{"components":[{{components}}],"year_now":2026,"years":{{years}}{{more}}}""");

    private static string Component(string kind, int age, double price) => FormattableString.Invariant($$"""{"component":"{{kind}}","year_installed":{{2026 - age}},"price":{{price}}}""");

    // Exact: with one year ahead the only question is whether each fails this year: expected = Σ price·P(fails within 1 | alive now).
    [Fact]
    public void One_year_ahead_is_price_times_chance()
    {
        var chance = PublishedLife.Find("furnace-gas")!.Lives!.Value.FailsWithin(18, 1);
        var horizon = Horizon(Component("furnace-gas", 18, 6000), 1);
        horizon.Near("expected_total", 6000 * chance, 1e-9);
        Assert.Equal(0, horizon.Number("cumulative_50"));
        Assert.True(horizon.Flag("exact"));
    }

    // Exact: two components, one year: sums 0, 1000, 5000, 6000 with the products of the chances.
    [Fact]
    public void Two_components_give_the_four_sums_of_their_products()
    {
        var (a, b) = (PublishedLife.Find("furnace-gas")!.Lives!.Value.FailsWithin(25, 1), PublishedLife.Find("water-heater-gas")!.Lives!.Value.FailsWithin(15, 1));
        var horizon = Horizon(Component("furnace-gas", 25, 5000) + "," + Component("water-heater-gas", 15, 1000), 1);
        horizon.Near("expected_total", 5000 * a + 1000 * b, 1e-9);
        var order = new[] { (0.0, (1 - a) * (1 - b)), (1000, (1 - a) * b), (5000, a * (1 - b)), (6000, a * b) };
        foreach (var (name, share) in new[] { ("cumulative_10", 0.1), ("cumulative_50", 0.5), ("cumulative_90", 0.9) })
        {
            var sum = 0.0;
            Assert.Equal(order.First(one => (sum += one.Item2) >= share).Item1, horizon.Number(name));
        }
    }

    // Renewal theory (Cox, Renewal Theory, 1962, section 4.2): over a long time the replacements a year tend to 1/mean life. In whole years
    // the mean life is Σ S(k), k from 0.
    [Fact]
    public void In_the_long_run_there_is_one_replacement_a_mean_life()
    {
        var lives = PublishedLife.Find("washer")!.Lives!.Value;
        var mean = Enumerable.Range(0, 200).Sum(age => lives.Survival(age));
        var horizon = Horizon(Component("washer", 0, 900), 50);
        horizon.Near("by_year[49].expected", 900 / mean, 900 / mean * 0.001);
    }

    // A simulation that shares nothing with the program but the survival function: 20,000 houses, year by year, from .NET's own generator.
    [Fact]
    public void The_convolution_agrees_with_a_simulation_written_apart()
    {
        (string Kind, int Age, double Price)[] house = [("furnace-gas", 16, 6500), ("air-conditioner-central", 12, 7200), ("water-heater-gas", 9, 1800), ("roof-asphalt", 14, 14_300), ("dishwasher", 6, 900), ("range-gas", 9, 1250)];
        var horizon = Horizon(string.Join(',', house.Select(one => Component(one.Kind, one.Age, one.Price))), 15, ""","seed":7""");
        var chance = new Random(20261125);
        var sums = new double[20_000];
        for (var run = 0; run < sums.Length; run++)
        {
            foreach (var (kind, age, price) in house)
            {
                var (lives, old) = (PublishedLife.Find(kind)!.Lives!.Value, age);
                for (var year = 0; year < 15; year++)
                {
                    var fails = chance.NextDouble() < 1 - lives.Survival(old + 1) / lives.Survival(old);
                    if (fails) sums[run] += price;
                    old = fails ? 0 : old + 1;
                }
            }
        }
        Array.Sort(sums);
        // Five standard errors of a mean of 20,000 houses.
        var error = 5 * Math.Sqrt(sums.Sum(sum => Math.Pow(sum - sums.Average(), 2)) / sums.Length / sums.Length);
        horizon.Near("expected_total", sums.Average(), error);
        foreach (var (name, share) in new[] { ("cumulative_10", 0.1), ("cumulative_50", 0.5), ("cumulative_90", 0.9) })
            Assert.InRange(horizon.Number(name), sums[(int)(sums.Length * (share - 0.02))], sums[(int)(sums.Length * (share + 0.02))]);
        horizon.Near("simulated.expected_total", horizon.Number("expected_total"), 3 * error);
    }

    // Prices to the cent without a common measure: the sums are counted in coarser steps, and still agree with the houses played out.
    [Fact]
    public void Prices_without_a_common_measure_keep_their_spread()
    {
        string[] kinds = ["furnace-gas", "air-conditioner-central", "water-heater-gas", "dishwasher", "washer", "range-gas"];
        var horizon = Horizon(string.Join(',', kinds.Select((kind, at) => Component(kind, 5 + at, 4999.99 + 0.07 * at))), 30, ",\"seed\":3");
        Assert.False(horizon.Flag("exact"));
        foreach (var share in new[] { "cumulative_10", "cumulative_50", "cumulative_90" })
            horizon.Near(share, horizon.Number("simulated." + share), 5100);
        Assert.True(horizon.Number("cumulative_10") < horizon.Number("expected_total") && horizon.Number("expected_total") < horizon.Number("cumulative_90"));
    }

    [Fact]
    public void The_same_seed_gives_the_same_houses()
    {
        var one = Horizon(Component("boiler", 20, 8000), 20, ""","seed":11""").Json.ToJsonString();
        Assert.Equal(one, Horizon(Component("boiler", 20, 8000), 20, ""","seed":11""").Json.ToJsonString());
        Assert.NotEqual(one, Horizon(Component("boiler", 20, 8000), 20, ""","seed":12""").Json.ToJsonString());
    }

    [Fact]
    public void Sums_grow_with_the_years_and_keep_their_order() =>
        Gen.Select(Gen.Int[0, 30].Array[3], Gen.Double[1, 20_000].Array[3], Gen.Int[2, 25]).Sample((ages, prices, years) =>
        {
            string[] kinds = ["furnace-oil", "roof-asphalt", "washer"];
            var horizon = Horizon(string.Join(',', kinds.Select((kind, at) => Component(kind, ages[at], Math.Round(prices[at], 2)))), years);
            var mean = 0.0;
            for (var year = 0; year < years; year++)
            {
                var (low, middle, high) = (horizon.Number($"by_year[{year}].cumulative_10"), horizon.Number($"by_year[{year}].cumulative_50"), horizon.Number($"by_year[{year}].cumulative_90"));
                Assert.True(low <= middle && middle <= high);
                if (year > 0) Assert.True(horizon.Number($"by_year[{year - 1}].cumulative_90") <= high);
                mean += horizon.Number($"by_year[{year}].expected");
            }
            horizon.Near("expected_total", mean, 1e-6);
        }, iter: 40);

    // A tenth gone at 10 and nine tenths at 20, given by the user: shape 4.45 (3.0844/ln 2).
    [Fact]
    public void The_users_own_lives_are_used_and_said()
    {
        var horizon = Horizon("""{"component":"gate motor","year_installed":2016,"price":700,"low":10,"high":20}""", 1);
        var lives = Weibull.FromTenthAndNinetieth(10, 20);
        Assert.Equal(4.45, lives.Shape, 2);
        horizon.Near("expected_total", 700 * lives.FailsWithin(10, 1), 1e-9);
        Assert.Contains("low and high life of gate motor given by the user", horizon.Working.Sources);
    }

    [Fact]
    public void A_reserve_is_held_against_nine_houses_in_ten()
    {
        var likely = Horizon(Component("furnace-gas", 18, 6000), 10).Number("cumulative_90");
        Assert.Equal("within", Horizon(Component("furnace-gas", 18, 6000), 10, FormattableString.Invariant($$""","reserve":{{likely}}""")).Verdict);
        Assert.Equal("outside", Horizon(Component("furnace-gas", 18, 6000), 10, FormattableString.Invariant($$""","reserve":{{likely - 1}}""")).Verdict);
        Assert.Equal("cannot say", Horizon(Component("furnace-gas", 18, 6000), 10).Verdict);
    }

    [Fact]
    public void Sixty_components_over_thirty_years_are_summed()
    {
        var kinds = PublishedLife.All.Where(life => life.Lives is not null).ToArray();
        var horizon = Horizon(string.Join(',', Enumerable.Range(0, 60).Select(at => Component(kinds[at % kinds.Length].Id, at % 20, 250 + 50 * at))), 30);
        Assert.True(horizon.Flag("exact"));
        Assert.InRange(horizon.Number("expected_total"), horizon.Number("cumulative_10"), horizon.Number("cumulative_90"));
    }

    [Theory]
    [InlineData("""{"components":[],"year_now":2026,"years":10}""", "components: a list of 0")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010}],"year_now":2026,"years":10}""", "components[0].price: missing")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010,"price":-5}],"year_now":2026,"years":10}""", "components[0].price")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2030,"price":5}],"year_now":2026,"years":10}""", "components[0].year_installed")]
    [InlineData("""{"components":[{"component":"roof-slate","year_installed":2000,"price":5}],"year_now":2026,"years":10}""", "your own low and high life")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010,"price":5,"low":9}],"year_now":2026,"years":10}""", "components[0].high: missing")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010,"price":5,"low":9,"high":9}],"year_now":2026,"years":10}""", "components[0].high: 9; more than low, 9")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010,"price":5}],"year_now":2026,"years":51}""", "years: 51")]
    [InlineData("""{"components":[{"component":"boiler","year_installed":2010,"price":1e400}],"year_now":2026,"years":5}""", "components[0].price")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("cost-horizon", json), StringComparison.Ordinal);

    [Fact]
    public void A_million_components_are_refused_by_their_number() =>
        Assert.Contains("a list of 1 to 200", Reckoned.Refused("cost-horizon", $$"""{"components":[{{string.Join(',', Enumerable.Repeat("1", 1_000_000))}}],"year_now":2026,"years":10}"""), StringComparison.Ordinal);
}
