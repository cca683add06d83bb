namespace Purlin.Book.Search;

/// <summary>
/// Finds conditions by what an inspector would say of them: "double tapped breaker", "popcorn ceiling". Made once for a book; a question
/// costs well under a millisecond, so that it can be asked with each letter typed. What is too unlike everything finds nothing.
/// </summary>
public sealed class Spoken
{
    private const double Name = 3, Words = 3, Component = 2, Signs = 1.4, Means = 0.5, Id = 1.5;
    private const double WholePhrase = 4, WholeSign = 1.5;

    // What share of what was said a condition must speak of, by the weight of its words, to be offered at all.
    private const double Floor = 0.45;

    // Where one of the words is unknown, the others must speak the more clearly.
    private const double UnknownFloor = 0.6;

    // How like the whole of what was said a condition must be.
    private const double LeastLikeness = 3.3;

    // A word that no condition knows counts like one that some of them speak of: it may be chatter, or the one thing that matters.
    private const int UnknownSpokenOf = 4;

    // Only so many of the best are compared phrase by phrase.
    private const int MostCompared = 80;

    private readonly SaidWords words;
    private readonly Condition[] conditions;
    private readonly Nearness nearness;
    private readonly Vocabulary vocabulary = new();
    private readonly List<List<(int Condition, double Weight)>> found = [];
    private readonly double[] rarity;
    private readonly List<Phrase>[] phrases;

    /// <summary>Reads names, words, signs and meanings of all conditions.</summary>
    public Spoken(RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        conditions = [.. book.Conditions.Values.OrderBy(condition => condition.Id, StringComparer.Ordinal)];
        words = new SaidWords(book,
            conditions.SelectMany(condition => condition.Words.Concat(condition.Signs).Append(condition.Name).Append(condition.Component)));
        nearness = new Nearness(book);
        phrases = new List<Phrase>[conditions.Length];
        for (var index = 0; index < conditions.Length; index++) phrases[index] = Take(index);
        rarity = [.. found.Select(list => Rareness(list.Count))];
    }

    /// <summary>The conditions that fit best, best first; none when nothing was said that any of them knows well enough.</summary>
    /// <param name="said">What was said or typed, the last word perhaps only begun.</param>
    /// <param name="from">Where one stands, in what house.</param>
    /// <param name="most">How many at most.</param>
    public IReadOnlyList<Condition> Find(string said, Standpoint from, int most = 5)
    {
        ArgumentNullException.ThrowIfNull(said);
        ArgumentNullException.ThrowIfNull(from);
        var asked = Asked(words.Heard(said));
        var all = asked.Sum(one => one.Weight);
        if (all == 0) return [];
        var floor = asked.Exists(one => one.Words.Length == 0) ? UnknownFloor : Floor;
        var (score, covered) = (new double[conditions.Length], new double[conditions.Length]);
        foreach (var one in asked) Count(one, score, covered);
        return
        [
            .. Enumerable.Range(0, conditions.Length).Where(index => covered[index] / all >= floor)
                .OrderByDescending(index => score[index]).Take(MostCompared)
                .Select(index => (Likeness: (score[index] / all) + Fit(phrases[index], asked, all), Index: index))
                    .Where(line => line.Likeness >= LeastLikeness)
                .Select(line => (Score: line.Likeness * nearness.Of(conditions[line.Index], from), line.Index))
                .OrderByDescending(line => line.Score).ThenBy(line => line.Index).Take(most).Select(line => conditions[line.Index]),
        ];
    }

    /// <summary>The conditions that fit best to what was said in a kind of place.</summary>
    public IReadOnlyList<Condition> Find(string said, string? placeKind = null, int most = 5) =>
        Find(said, new Standpoint { Place = placeKind }, most);

    /// <summary>Takes the words of a condition in, and gives back the phrases that it is compared with as a whole.</summary>
    private List<Phrase> Take(int index)
    {
        var condition = conditions[index];
        Dictionary<int, double> weights = [];
        List<Phrase> compared = [new(Weigh(condition.Name, Name), WholePhrase)];
        foreach (var phrase in condition.Words) compared.Add(new Phrase(Weigh(phrase, Words), WholePhrase));
        foreach (var sign in condition.Signs) compared.Add(new Phrase(Weigh(sign, Signs), WholeSign));
        Weigh(condition.Component, Component);
        Weigh(condition.Id, Id);
        Weigh(condition.Means, Means);
        foreach (var (word, weight) in weights)
        {
            while (found.Count <= word) found.Add([]);
            found[word].Add((index, weight));
        }
        return compared;

        int[] Weigh(string text, double weight)
        {
            int[] numbers = [.. words.Written(text).Select(vocabulary.Learn).Distinct()];
            foreach (var word in numbers) weights[word] = Math.Max(weight, weights.GetValueOrDefault(word));
            return numbers;
        }
    }

    /// <summary>What was said as words of the book, each thing once, with how much it tells.</summary>
    private List<Asking> Asked(List<Term> terms)
    {
        List<Asking> asked = [];
        HashSet<string> told = new(StringComparer.Ordinal);
        for (var at = 0; at < terms.Count; at++)
        {
            if (!told.Add(string.Join(' ', terms[at].Words))) continue;
            var known = terms[at].Words.Select(vocabulary.Number).OfType<int>().ToArray();
            if (known.Length > 0) asked.Add(new Asking(known, known.Average(word => rarity[word]) * terms[at].Size, 1, IsGuess: false));
            else if (Unknown(terms[at].Words[0], at == terms.Count - 1 ? terms[at].Raw : null) is { } guess) asked.Add(guess);
        }
        return asked;
    }

    private Asking? Unknown(string word, string? begun)
    {
        if (word.All(char.IsDigit)) return null;
        var (meant, trust) = vocabulary.Meant(word, begun);
        return meant.Count > 0 ? new Asking([.. meant], meant.Max(number => rarity[number]), trust, IsGuess: true)
            : new Asking([], Rareness(UnknownSpokenOf), 0, IsGuess: true);
    }

    /// <summary>Of guesses the best counts; words that stand for a thing together count together.</summary>
    private void Count(Asking asked, double[] score, double[] covered)
    {
        Dictionary<int, (double Score, double Covered)> of = [];
        var share = asked.IsGuess ? 1 : 1.0 / asked.Words.Length;
        foreach (var word in asked.Words)
        {
            foreach (var (condition, weight) in found[word])
            {
                var (had, has) = (of.GetValueOrDefault(condition),
                    (weight * share * asked.Trust, Math.Min(1, weight / Signs) * share * asked.Trust));
                of[condition] = asked.IsGuess
                    ? (Math.Max(had.Score, has.Item1), Math.Max(had.Covered, has.Item2)) : (had.Score + has.Item1, had.Covered + has.Item2);
            }
        }
        foreach (var (condition, (adds, covers)) in of)
        {
            score[condition] += asked.Weight * adds;
            covered[condition] += asked.Weight * covers;
        }
    }

    /// <summary>What few conditions speak of tells more.</summary>
    private double Rareness(int spokenOf) => Math.Log(1 + ((double)conditions.Length / (1 + spokenOf)));

    /// <summary>How well the best phrase of a condition and the question cover each other.</summary>
    private double Fit(List<Phrase> known, List<Asking> asked, double all)
    {
        var best = 0.0;
        foreach (var (phrase, counts) in known)
        {
            var (ofAsked, ofPhrase) = (0.0, 0.0);
            foreach (var one in asked)
            {
                var shared = 0;
                foreach (var word in one.Words)
                {
                    if (Array.IndexOf(phrase, word) < 0) continue;
                    if (one.IsGuess && shared > 0) continue;
                    shared++;
                    ofPhrase += rarity[word] * one.Trust;
                }
                if (shared > 0) ofAsked += one.Weight * one.Trust * (one.IsGuess ? 1 : (double)shared / one.Words.Length);
            }
            if (ofAsked > 0) best = Math.Max(best, counts * (ofAsked + ofPhrase) / (all + phrase.Sum(word => rarity[word])));
        }
        return best;
    }

    /// <summary>A phrase of a condition: the numbers of its words, and how much it counts to be met as a whole.</summary>
    private readonly record struct Phrase(int[] Words, double Counts);

    /// <summary>
    /// One thing that was asked for: the numbers of its words, how much it tells, and how far to trust that it was meant.
    /// </summary>
    private readonly record struct Asking(int[] Words, double Weight, double Trust, bool IsGuess);
}
