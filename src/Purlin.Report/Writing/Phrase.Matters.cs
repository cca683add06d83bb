namespace Purlin.Report.Writing;

/// <summary>Matters by their numbers, drawn together where they follow one another.</summary>
internal sealed partial class Phrase
{
    /// <summary>Numbers in runs: 1 to 4, 7 and 9.</summary>
    public static IReadOnlyList<(int First, int Last)> Runs(IReadOnlyList<int> numbers)
    {
        List<(int First, int Last)> runs = [];
        foreach (var number in numbers.Order())
        {
            if (runs.Count > 0 && runs[^1].Last == number - 1) runs[^1] = (runs[^1].First, number);
            else runs.Add((number, number));
        }
        return runs;
    }

    /// <summary>Matters by their numbers, each a link.</summary>
    public Prose Matters(IReadOnlyList<int> numbers, int most = int.MaxValue)
    {
        static Run One(int number) => new($"{number}", $"matter-{number}");
        List<Run> said = [];
        var runs = Runs(numbers);
        foreach (var (first, last) in runs.Take(most))
        {
            if (said.Count > 0) said.Add(new Run(", "));
            said.AddRange(last == first ? [One(first)] : last == first + 1 ? [One(first), new Run(", "), One(last)] : [One(first),
                new Run($" {words.Say("report.to")} "), One(last)]);
        }
        if (runs.Count > most) said.Add(new Run($" {words.Say("report.and-more")}"));
        return new Prose(said);
    }
}
