using System.Diagnostics;

namespace Purlin.Bench;

/// <summary>The median of several timed runs of one thing, after a warm-up.</summary>
internal sealed record Measured(string Name, double Milliseconds, double Least, double Most)
{
    public static Measured Time(string name, Action work, int runs = 9)
    {
        work();
        work();
        var times = new double[runs];
        for (var run = 0; run < runs; run++)
        {
            GC.Collect();
            var clock = Stopwatch.StartNew();
            work();
            times[run] = clock.Elapsed.TotalMilliseconds;
        }
        Array.Sort(times);
        return new Measured(name, times[runs / 2], times[0], times[^1]);
    }

    /// <summary>Two things in turn, A B A B, so that a drift of the machine's speed touches both alike.</summary>
    public static (Measured Ours, Measured Peer, double Ratio) Pair(string ours, Action work, string peer, Action other, int runs = 9)
    {
        work();
        other();
        double[] mine = new double[runs], theirs = new double[runs], ratios = new double[runs];
        for (var run = 0; run < runs; run++)
        {
            mine[run] = Once(work);
            theirs[run] = Once(other);
            ratios[run] = mine[run] / theirs[run];
        }
        Array.Sort(mine);
        Array.Sort(theirs);
        Array.Sort(ratios);
        return (new Measured(ours, mine[runs / 2], mine[0], mine[^1]), new Measured(peer, theirs[runs / 2], theirs[0], theirs[^1]),
            ratios[runs / 2]);
    }

    private static double Once(Action work)
    {
        GC.Collect();
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed.TotalMilliseconds;
    }
}
