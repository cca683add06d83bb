namespace Purlin.Book.Naming;

/// <summary>
/// Takes the words of a value down to those that tell something: "gray polybutylene pipe" is polybutylene, whatever its color.
/// </summary>
internal sealed class ValueWords(ILookup<Named, Synonym> synonyms)
{
    private readonly HashSet<string> fillers = [.. synonyms[Named.Filler].SelectMany(line => line.Said).Select(NameList.Fold)];
    private readonly Dictionary<string, string> same = synonyms[Named.Word].SelectMany(line => line.Said.Select(said => (said, line.Means)))
        .DistinctBy(pair => NameList.Fold(pair.said)).ToDictionary(pair => NameList.Fold(pair.said), pair => NameList.Fold(pair.Means),
            StringComparer.Ordinal);

    /// <summary>The words that tell something, in alphabetical order; all of them where none would be left.</summary>
    public string Reduce(string folded)
    {
        var words = folded.Split(' ').Select(word => same.GetValueOrDefault(word, word)).ToList();
        var telling = words.Where(word => !fillers.Contains(word)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        return string.Join(' ', telling.Count > 0 ? telling : words);
    }
}
