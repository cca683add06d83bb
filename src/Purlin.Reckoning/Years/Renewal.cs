namespace Purlin.Reckoning.Years;

/// <summary>One component that fails, is replaced at a price, and fails again: a renewal process in whole years.</summary>
internal sealed class Renewal(string component, Weibull lives, int ageYears, double price, string source)
{
    /// <summary>The longest horizon.</summary>
    public const int MostYears = 50;

    private readonly double[] first = Chances(lives, ageYears), fresh = Chances(lives, 0);

    public string Component { get; } = component;

    public int AgeYears { get; } = ageYears;

    public double Price { get; } = price;

    public string Source { get; } = source;

    /// <summary>Chance that the one in place, alive now, fails in the k-th year from now (k from 1).</summary>
    public double FirstFails(int year) => first[year];

    /// <summary>Chance that a new one fails in its k-th year.</summary>
    public double NewFails(int year) => fresh[year];

    /// <summary>Replacements expected in each year: m(t) = first(t) + Σ m(s)·new(t − s).</summary>
    public double[] Expected(int years)
    {
        var expected = new double[years];
        for (var year = 1; year <= years; year++)
        {
            expected[year - 1] = FirstFails(year);
            for (var before = 1; before < year; before++) expected[year - 1] += expected[before - 1] * NewFails(year - before);
        }
        return expected;
    }

    /// <summary>Chance of n replacements by the end of each year: result[year][n], year from 0.</summary>
    public double[][] Counts(int years)
    {
        // ended[n][t]: chance that the n-th replacement happens in year t.
        var ended = new double[years + 1][];
        ended[1] = [.. Enumerable.Range(0, years + 1).Select(year => year == 0 ? 0 : FirstFails(year))];
        for (var n = 2; n <= years; n++)
        {
            ended[n] = new double[years + 1];
            for (var year = n; year <= years; year++)
            {
                for (var before = n - 1; before < year; before++) ended[n][year] += ended[n - 1][before] * NewFails(year - before);
            }
        }
        // By a year, at least n have happened: the sum of the chances up to it.
        return [.. Enumerable.Range(0, years + 1).Select(year =>
        {
            double[] atLeast = [1, .. Enumerable.Range(1, years).Select(n => ended[n].Take(year + 1).Sum()), 0];
            return Enumerable.Range(0, years + 1).Select(n => Math.Max(0, atLeast[n] - atLeast[n + 1])).ToArray();
        })];
    }

    private static double[] Chances(Weibull lives, int age) =>
        [0, .. Enumerable.Range(1, MostYears).Select(year => lives.FailsWithin(age, year) - lives.FailsWithin(age, year - 1))];
}
