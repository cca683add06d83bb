using System.Collections.Immutable;

namespace Purlin.Reckoning.Years;

/// <summary>
/// The distribution of the sum of all replacements by the end of each year, by convolving the components one after another.
/// </summary>
internal sealed class CostSums
{
    private const int MostSteps = 1 << 15;

    // A count of replacements less likely than this adds nothing that could be printed.
    private const double Negligible = 1e-12;

    private readonly double[][] byYear;

    private CostSums(double step, bool exact, double[][] byYear) => (Step, IsExact, this.byYear) = (step, exact, byYear);

    /// <summary>The shares that are reported, with their names.</summary>
    public static ImmutableArray<(string Name, double Share)> Shares { get; } = [("cumulative_10", 0.1), ("cumulative_50", 0.5),
        ("cumulative_90", 0.9)];

    /// <summary>The step of money in which sums are counted.</summary>
    public double Step { get; }

    /// <summary>Whether every price is a whole number of steps.</summary>
    public bool IsExact { get; }

    public static CostSums Over(Renewal[] renewals, int years)
    {
        var counts = renewals.Select(renewal => renewal.Counts(years)).ToArray();
        var most = renewals.Select((renewal, at) => renewal.Price * (counts[at][years].Length - 1 - counts[at][years].Reverse()
            .TakeWhile(chance => chance < Negligible).Count())).Sum();
        var measure = Measure(renewals.Select(renewal => renewal.Price));
        var exact = measure > 0 && most / measure <= MostSteps;
        var step = exact ? measure : Math.Max(most / MostSteps, 0.01);
        return new CostSums(step, exact
            || most == 0, [.. Enumerable.Range(1, years).Select(year => Convolve(renewals, counts, year, step))]);
    }

    /// <summary>The least sum that at least this share of houses stays within, by the end of a year.</summary>
    public double Quantile(int year, double share)
    {
        var sum = 0.0;
        var chances = byYear[year - 1];
        for (var at = 0; at < chances.Length; at++)
        {
            sum += chances[at];
            // So that a share reached exactly is not missed by rounding.
            if (sum >= share - 1e-12) return at * Step;
        }
        return (chances.Length - 1) * Step;
    }

    private static double[] Convolve(Renewal[] renewals, double[][][] counts, int year, double step)
    {
        double[] sum = [1];
        for (var component = 0; component < renewals.Length; component++)
        {
            var atoms = Atoms(counts[component][year], renewals[component].Price / step);
            var next = new double[sum.Length + atoms.Max(atom => atom.At)];
            foreach (var (at, chance) in atoms)
            {
                for (var before = 0; before < sum.Length; before++) next[before + at] += sum[before] * chance;
            }
            sum = next;
        }
        return sum;
    }

    // A cost between two steps is shared between them so that its mean stays.
    private static List<(int At, double Chance)> Atoms(double[] counts, double stepsEach)
    {
        List<(int, double)> atoms = [];
        for (var n = 0; n < counts.Length; n++)
        {
            if (n > 0 && counts[n] < Negligible) continue;
            var low = (int)Math.Floor(n * stepsEach + 1e-9);
            var over = Math.Max(0, n * stepsEach - low);
            atoms.Add((low, counts[n] * (1 - over)));
            if (over > 1e-9) atoms.Add((low + 1, counts[n] * over));
        }
        return atoms;
    }

    // Greatest common measure of the prices in cents; 0 when all are free.
    private static double Measure(IEnumerable<double> prices)
    {
        var cents = 0L;
        foreach (var price in prices)
        {
            var (a, b) = (cents, (long)Math.Round(price * 100));
            if (Math.Abs(price * 100 - b) > 1e-6) return 0;
            while (b != 0) (a, b) = (b, a % b);
            cents = a;
        }
        return cents / 100.0;
    }
}
