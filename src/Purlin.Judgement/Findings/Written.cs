namespace Purlin.Judgement.Findings;

/// <summary>A finding with the workings it rests on, before those have their numbers.</summary>
internal sealed class Written(Finding finding, IReadOnlyList<JudgedWorking> workings)
{
    private Finding numbered = finding;

    /// <summary>The finding with its workings by their place in the list; the same object while those stay where they are.</summary>
    public Finding Numbered(IReadOnlyDictionary<JudgedWorking, int> numbers)
    {
        if (workings.Count == 0) return numbered;
        List<int> places = [.. workings.Select(working => numbers[working])];
        return numbered.Workings.SequenceEqual(places) ? numbered : numbered = numbered with { Workings = places };
    }
}
