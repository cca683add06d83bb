using Purlin.Book;
using Purlin.Book.Search;

namespace Purlin.Hearing.Matters;

/// <summary>Everything that the book can be told in: the phrases of all conditions, and in which of them each concept stands.</summary>
internal sealed class Repertoire
{
    private const double Heading = 0.95, Words = 1, Heard = 1.05, Sign = 0.7, Rare = 0.85, Seldom = 0.95;

    // A word that only one condition knows may be a slip as well as a sign.
    private const double MostWeight = 4.8;

    private readonly List<Saying> phrases = [];
    private readonly Meanings meanings;
    private readonly HashSet<int>[] thingsOf;
    // Kinds of component that are themselves the trouble: "no termites" is no missing thing.
    private readonly HashSet<string> ills;
    private double[] weights = [];

    public Repertoire(RuleBook book, Meanings meanings, IReadOnlyDictionary<string, int> components)
    {
        this.meanings = meanings;
        ills = [.. book.Hearing.Turns.GetValueOrDefault("ills", [])];
        Conditions = [.. book.Conditions.Values.OrderBy(condition => condition.Id, StringComparer.Ordinal)];
        ComponentOf = [.. Conditions.Select(condition => components[condition.Component])];
        thingsOf = new HashSet<int>[components.Count];
        var places = book.Hearing.Places.Values.SelectMany(names => names).SelectMany(name => meanings.Of(Stems.Split(name)))
            .Select(mark => mark.Concept).ToHashSet();
        foreach (var (kind, number) in components)
            thingsOf[number] = [.. book.Hearing.Things.GetValueOrDefault(kind, []).Append(kind)
                .SelectMany(name => meanings.Of(Stems.Split(name))).Select(mark => mark.Concept), .. places];
        var told = Conditions.Select((condition, index) => (Index: index, Lines: Told(condition, book.Hearing).ToList())).ToList();
        Weigh(told.Select(one => one.Lines.SelectMany(line => line.Marks.Select(mark => mark.Concept)).Distinct()));
        foreach (var (index, lines) in told)
            foreach (var (marks, counts, isClear) in lines) Take(index, marks, counts, isClear);
        Prior = [.. Conditions.Select(condition =>
            book.Often.GetValueOrDefault(condition.Id)?.Step switch { 1 => Rare, 2 => Seldom, _ => 1 })];
        Standing = new (int, int)[meanings.Count][];
        var lists = Enumerable.Range(0, meanings.Count).Select(_ => new List<(int, int)>()).ToArray();
        for (var phrase = 0; phrase < phrases.Count; phrase++)
            for (var need = 0; need < phrases[phrase].Needs.Length; need++) lists[phrases[phrase].Needs[need].Concept].Add((phrase, need));
        for (var concept = 0; concept < lists.Length; concept++) Standing[concept] = [.. lists[concept]];
        Phrases = [.. phrases];
    }

    public Condition[] Conditions { get; }

    /// <summary>Number of the component of each condition.</summary>
    public int[] ComponentOf { get; }

    /// <summary>By condition: a factor for how often it is met at all.</summary>
    public double[] Prior { get; }

    public Saying[] Phrases { get; }

    /// <summary>By concept: the phrases it stands in, and at which place of each.</summary>
    public (int Saying, int PhraseWord)[][] Standing { get; }

    /// <summary>Whether a condition speaks of a concept in any of its phrases, or by the names of its thing.</summary>
    public bool Speaks(int condition, int concept) =>
        thingsOf[ComponentOf[condition]].Contains(concept)
            || (concept < Standing.Length && Standing[concept].Any(standing => Phrases[standing.Saying].Condition == condition));

    /// <summary>How much a concept tells: what few conditions speak of tells more.</summary>
    public double WeightOf(int concept) => concept < weights.Length ? weights[concept] : 0;

    private IEnumerable<(List<Sense> Marks, double Counts, bool IsClear)> Told(Condition condition, HearingWords heard)
    {
        yield return (Of(condition.Name), Heading, false);
        foreach (var words in condition.Words) yield return (Of(words), Words, false);
        foreach (var words in condition.Signs) yield return (Of(words), Sign, false);
        foreach (var words in heard.Seen.GetValueOrDefault(condition.Id, [])) yield return (Of(words), Heard, false);
        foreach (var words in heard.Clear.GetValueOrDefault(condition.Id, [])) yield return (Of(words), Heard, true);
    }

    private List<Sense> Of(string words) => meanings.Of(Stems.Split(words));

    private void Weigh(IEnumerable<IEnumerable<int>> concepts)
    {
        var counts = new int[meanings.Count];
        foreach (var one in concepts)
            foreach (var concept in one) counts[concept]++;
        weights = [.. counts.Select(count => Math.Min(MostWeight, Math.Log(1 + (Conditions.Length / (1.0 + count)))))];
    }

    private void Take(int condition, List<Sense> marks, double counts, bool isClear)
    {
        var own = ills.Contains(Conditions[condition].Component) ? [] : thingsOf[ComponentOf[condition]];
        var allThing = marks.TrueForAll(mark => own.Contains(mark.Concept));
        PhraseWord[] needs = [.. marks.GroupBy(mark => mark.Concept).Select(group => group.First())
            .Select(mark => new PhraseWord(mark.Concept, weights[mark.Concept] * mark.Share,
            own.Contains(mark.Concept) && !allThing && mark.Sign > 0 ? 0 : mark.Sign, own.Contains(mark.Concept)))];
        // The bare name of a thing tells nothing of it.
        if (needs.Length == 0 || (allThing && marks.TrueForAll(mark => mark.Sign > 0) && (isClear || needs.Length < 3))) return;
        var denied = needs.Take(64).Index().Where(need => need.Item.Sign < 0).Aggregate(0UL, (bits, need) => bits | (1UL << need.Index));
        phrases.Add(new Saying
        {
            Denied = denied,
            Condition = condition,
            Needs = needs,
            Mass = needs.Sum(need => need.Weight),
            Counts = counts,
            IsClear = isClear,
            IsAbsence = allThing && marks.Exists(mark => mark.Sign < 0)
        });
    }
}
