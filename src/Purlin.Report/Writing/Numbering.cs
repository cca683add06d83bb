namespace Purlin.Report.Writing;

/// <summary>Gives each text a number when it is first met, and the same one after.</summary>
internal sealed class Numbering
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly List<string> listed = [];

    /// <summary>All of them, in the order of their numbers.</summary>
    public IReadOnlyList<string> Listed => listed;

    /// <summary>Its number, from 1.</summary>
    public int Of(string text)
    {
        if (numbers.TryGetValue(text, out var known)) return known;
        listed.Add(text);
        return numbers[text] = listed.Count;
    }
}
