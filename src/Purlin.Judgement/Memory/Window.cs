namespace Purlin.Judgement.Memory;

/// <summary>Finds the stretch in which two lists differ (a diff by common prefix and suffix).</summary>
internal static class Window
{
    /// <summary>How many are alike at the beginning, and how many of the rest at the end.</summary>
    /// <param name="before">Length of the one.</param>
    /// <param name="after">Length of the other.</param>
    /// <param name="same">Whether the one's thing at the first place is the other's at the second.</param>
    public static (int First, int Ends) Of(int before, int after, Func<int, int, bool> same)
    {
        var least = Math.Min(before, after);
        var first = 0;
        while (first < least && same(first, first)) first++;
        var ends = 0;
        while (ends < least - first && same(before - 1 - ends, after - 1 - ends)) ends++;
        return (first, ends);
    }
}
