namespace Purlin.Reckoning.Years;

/// <summary>
/// The same renewal processes played out house by house, as a check on the convolution. The same seed gives the same houses.
/// </summary>
internal static class CostSimulation
{
    private const int Houses = 4000;

    /// <summary>Sums of the houses, in order.</summary>
    public static double[] Run(Renewal[] renewals, int years, int seed)
    {
        var state = (ulong)seed;
        var sums = new double[Houses];
        var lives = renewals.Select(renewal => (First: Table(renewal.FirstFails, years), New: Table(renewal.NewFails, years))).ToArray();
        for (var house = 0; house < Houses; house++)
        {
            for (var component = 0; component < renewals.Length; component++)
            {
                var year = Draw(lives[component].First, Next(ref state));
                while (year <= years)
                {
                    sums[house] += renewals[component].Price;
                    year += Draw(lives[component].New, Next(ref state));
                }
            }
        }
        Array.Sort(sums);
        return sums;
    }

    private static double[] Table(Func<int, double> fails, int years) => [.. Enumerable.Range(1, years).Select(fails)];

    private static int Draw(double[] chances, double at)
    {
        for (var year = 0; year < chances.Length; year++)
        {
            at -= chances[year];
            if (at < 0) return year + 1;
        }
        return chances.Length + 1;
    }

    // SplitMix64: Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators (2014).
    private static double Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
