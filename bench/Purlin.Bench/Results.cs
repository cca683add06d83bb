using System.Globalization;
using System.Text;

namespace Purlin.Bench;

/// <summary>
/// Rows of a results page: ours, the peer, the ratio. Written to <c>bench/results/</c> and committed; a ratio travels, a time does not.
/// </summary>
internal sealed class Results
{
    private readonly StringBuilder rows = new();

    public void Pair(string ours, Action work, string peer, Action other, int runs = 9)
    {
        var (mine, theirs, ratio) = Measured.Pair(ours, work, peer, other, runs);
        Add(mine, theirs, ratio);
    }

    public void Add(Measured mine, Measured theirs, double ratio) =>
        Row(string.Create(CultureInfo.InvariantCulture,
            $"| {mine.Name} | {mine.Milliseconds:0.###} ({mine.Least:0.###} to {mine.Most:0.###}) | {theirs.Name} | {theirs.Milliseconds:0.###} | {ratio:0.##} |"));

    public void Alone(string name, Action work, int runs = 9)
    {
        var measured = Measured.Time(name, work, runs);
        Row(string.Create(CultureInfo.InvariantCulture,
            $"| {name} | {measured.Milliseconds:0.####} ({measured.Least:0.####} to {measured.Most:0.####}) | none | | |"));
    }

    public string Page(string title) => $"""
        # {title}

        Medians in milliseconds, least and most in brackets; ours and the peer measured in one run. {System.Runtime.InteropServices.RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores. Ratios travel between machines, times do not.

        | ours | ms | peer | ms | ratio |
        | --- | --- | --- | --- | --- |
        {rows}
        """;

    private void Row(string row)
    {
        Console.WriteLine(row);
        rows.AppendLine(row);
    }
}
