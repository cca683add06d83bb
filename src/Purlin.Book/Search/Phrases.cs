namespace Purlin.Book.Search;

/// <summary>Phrases of one or several words and what stands for each; of those that begin at a word the longest wins.</summary>
internal sealed class Phrases
{
    private readonly Dictionary<string, Step> beginnings = new(StringComparer.Ordinal);

    public Phrases(IEnumerable<(List<string> Key, string[] Means)> lines)
    {
        foreach (var (key, words) in lines)
        {
            Step? step = null;
            foreach (var word in key)
            {
                var from = step is null ? beginnings : step.Further ??= new Dictionary<string, Step>(StringComparer.Ordinal);
                if (!from.TryGetValue(word, out var next)) from[word] = next = new Step();
                step = next;
            }
            if (step is not null) step.Means ??= words;
        }
    }

    /// <summary>The longest phrase that begins here: how many words it takes and what stands for it.</summary>
    public (int Taken, string[] Means)? At(List<string> raw, int at)
    {
        (int, string[])? longest = null;
        var from = beginnings;
        for (var end = at; end < raw.Count && from is not null && from.TryGetValue(raw[end], out var step); end++)
        {
            if (step.Means is { } means) longest = (end - at + 1, means);
            from = step.Further;
        }
        return longest;
    }

    /// <summary>What stands for a single word; none for one that is no phrase of its own.</summary>
    public string[]? Of(string word) => beginnings.TryGetValue(word, out var step) ? step.Means : null;

    /// <summary>The words with every phrase replaced.</summary>
    public List<string> Replaced(List<string> raw)
    {
        List<string> words = [];
        for (var at = 0; at < raw.Count; at++)
        {
            if (At(raw, at) is var (taken, instead))
            {
                words.AddRange(instead);
                at += taken - 1;
            }
            else words.Add(raw[at]);
        }
        return words;
    }

    private sealed class Step
    {
        public string[]? Means { get; set; }

        public Dictionary<string, Step>? Further { get; set; }
    }
}
