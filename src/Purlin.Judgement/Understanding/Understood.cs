namespace Purlin.Judgement.Understanding;

/// <summary>Remembers what became of each thing of one kind, and of the last list of them (memoized by the objects themselves).</summary>
internal sealed class Understood<T>
    where T : class
{
    private readonly Dictionary<T, (T Made, IReadOnlyList<LookAgain> Again)> known = new(ReferenceEqualityComparer.Instance);
    private IReadOnlyList<T>? before;
    private IReadOnlyList<T> after = [];
    private List<LookAgain> told = [];

    /// <summary>Every thing of a list as the book names it; the very list where nothing is named otherwise.</summary>
    public IReadOnlyList<T> Each(IReadOnlyList<T> things, Func<T, List<LookAgain>, T> understand, List<LookAgain> again)
    {
        if (!ReferenceEquals(before, things)) Make(things, understand);
        again.AddRange(told);
        return after;
    }

    public void Forget()
    {
        known.Clear();
        before = null;
    }

    private void Make(IReadOnlyList<T> things, Func<T, List<LookAgain>, T> understand)
    {
        if (known.Count > (2 * things.Count) + 100) known.Clear();
        told = [];
        List<T> made = new(things.Count);
        var same = true;
        foreach (var thing in things)
        {
            if (!known.TryGetValue(thing, out var one))
            {
                List<LookAgain> about = [];
                known[thing] = one = (understand(thing, about), about);
            }
            made.Add(one.Made);
            told.AddRange(one.Again);
            same &= ReferenceEquals(one.Made, thing);
        }
        (before, after) = (things, same ? things : made);
    }
}
