namespace Purlin.Book;

/// <summary>
/// Finds conditions by what an inspector would say of them: "double tapped breaker", "popcorn ceiling". Made once for a book; a question costs
/// well under a millisecond, so that it can be asked with each letter typed.
/// </summary>
public sealed class Spoken
{
    private const double Name = 3, Words = 3, Component = 2, Signs = 1.4, Means = 0.5, Id = 1.5;
    private const double WholePhrase = 4, Here = 1.3, Mine = 1.3, Guessed = 0.7;

    private readonly SpokenWords words;
    private readonly Condition[] conditions;
    private readonly List<(string[] Words, double Weight)>[] phrases;
    private readonly Dictionary<string, double> rarity = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(int Condition, double Weight)>> found = new(StringComparer.Ordinal);
    private readonly string[] vocabulary;

    /// <summary>Reads names, words, signs and meanings of all conditions.</summary>
    public Spoken(RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        words = new SpokenWords(book.SameWords);
        conditions = [.. book.Conditions.Values.OrderBy(condition => condition.Id, StringComparer.Ordinal)];
        for (var index = 0; index < conditions.Length; index++) Take(index);
        vocabulary = [.. found.Keys.Order(StringComparer.Ordinal)];
        foreach (var (word, list) in found) rarity[word] = Rareness(list.Count);
        phrases = [.. conditions.Select(condition => condition.Words.Append(condition.Name).Select(phrase => Weighed(words.Of(phrase))).ToList())];
    }

    /// <summary>The conditions that fit best, best first; none when nothing was said that any of them knows.</summary>
    /// <param name="said">What was said or typed, the last word perhaps only begun.</param>
    /// <param name="placeKind">Kind of place one stands in: what is looked for there comes before its like, as do conditions of one's own.</param>
    /// <param name="most">How many at most.</param>
    public IReadOnlyList<Condition> Find(string said, string? placeKind = null, int most = 5)
    {
        ArgumentNullException.ThrowIfNull(said);
        var asked = words.Of(said).Distinct(StringComparer.Ordinal).ToArray();
        if (asked.Length == 0) return [];
        Dictionary<int, double> scores = [];
        var rare = new double[asked.Length];
        for (var at = 0; at < asked.Length; at++)
        {
            var postings = Known(ref asked[at], isLast: at == asked.Length - 1);
            rare[at] = Rarity(asked[at]);
            foreach (var (condition, weight) in postings) scores[condition] = scores.GetValueOrDefault(condition) + (rare[at] * weight);
        }
        var all = rare.Sum();
        return
        [
            .. scores.Select(score => (Score: ((score.Value / all) + (WholePhrase * Fit(phrases[score.Key], asked, rare, all))) * (placeKind is not null && conditions[score.Key].Places.Contains(placeKind) ? Here : 1) * (conditions[score.Key].Own ? Mine : 1), score.Key))
                .OrderByDescending(score => score.Score).ThenBy(score => score.Key).Take(most).Select(score => conditions[score.Key]),
        ];
    }

    private void Take(int index)
    {
        var condition = conditions[index];
        Dictionary<string, double> weights = new(StringComparer.Ordinal);
        Weigh(condition.Name, Name);
        foreach (var phrase in condition.Words) Weigh(phrase, Words);
        Weigh(condition.Component, Component);
        Weigh(condition.Id, Id);
        foreach (var sign in condition.Signs) Weigh(sign, Signs);
        Weigh(condition.Means, Means);
        foreach (var (word, weight) in weights)
        {
            if (!found.TryGetValue(word, out var list)) found[word] = list = [];
            list.Add((index, weight));
        }

        void Weigh(string text, double weight)
        {
            foreach (var word in words.Of(text)) weights[word] = Math.Max(weight, weights.GetValueOrDefault(word));
        }
    }

    /// <summary>A word nobody knows may be the beginning of one, or one with a slip of the finger.</summary>
    private List<(int Condition, double Weight)> Known(ref string word, bool isLast)
    {
        if (found.TryGetValue(word, out var known)) return known;
        var asked = word;
        var like = isLast && asked.Length > 2 ? vocabulary.Where(other => other.StartsWith(asked, StringComparison.Ordinal)).ToList() : [];
        if (like.Count == 0 && asked.Length > 4) like = [.. vocabulary.Where(other => OneSlip(asked, other))];
        if (like.Count == 0) return [];
        word = like[0];
        return [.. like.SelectMany(other => found[other]).GroupBy(posting => posting.Condition).Select(group => (group.Key, group.Max(posting => posting.Weight) * Guessed))];
    }

    private (string[], double) Weighed(List<string> phrase)
    {
        string[] distinct = [.. phrase.Distinct(StringComparer.Ordinal)];
        return (distinct, distinct.Sum(Rarity));
    }

    /// <summary>What few conditions speak of tells more.</summary>
    private double Rarity(string word) => rarity.TryGetValue(word, out var known) ? known : Rareness(0);

    private double Rareness(int spokenOf) => Math.Log(1 + ((double)conditions.Length / (1 + spokenOf)));

    /// <summary>How well the best phrase of a condition and the question cover each other, 0 to 1.</summary>
    private static double Fit(List<(string[] Words, double Weight)> known, string[] asked, double[] rare, double whole)
    {
        var best = 0.0;
        foreach (var (phrase, weight) in known)
        {
            var shared = 0.0;
            for (var at = 0; at < asked.Length; at++)
                if (Array.IndexOf(phrase, asked[at]) >= 0) shared += rare[at];
            if (shared > 0) best = Math.Max(best, 2 * shared / (whole + weight));
        }
        return best;
    }

    private static bool OneSlip(string some, string other)
    {
        if (Math.Abs(some.Length - other.Length) > 1 || some[0] != other[0]) return false;
        var (shorter, longer) = some.Length <= other.Length ? (some, other) : (other, some);
        var at = 0;
        while (at < shorter.Length && shorter[at] == longer[at]) at++;
        var same = shorter.Length == longer.Length;
        if (same && at + 1 < shorter.Length && shorter[at] == longer[at + 1] && shorter[at + 1] == longer[at] && shorter.AsSpan(at + 2).SequenceEqual(longer.AsSpan(at + 2))) return true;
        return shorter.AsSpan(Math.Min(shorter.Length, same ? at + 1 : at)).SequenceEqual(longer.AsSpan(Math.Min(longer.Length, at + 1)));
    }
}
