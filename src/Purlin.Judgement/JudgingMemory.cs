using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Findings;
using Purlin.Judgement.Memory;
using Purlin.Judgement.Readings;
using Purlin.Reckoning;

namespace Purlin.Judgement;

/// <summary>
/// Remembers what was worked out from one judgement of an inspection to the next, so that one new entry costs only what rests on it. It only
/// spares work: the judgement is the same with and without it. For one inspection and one thread.
/// </summary>
public sealed class JudgingMemory
{
    // A whole inspection needs a few hundred at most; beyond that a stale one is cheaper to reckon again than to keep.
    private const int Most = 2_000;

    private readonly Dictionary<string, Checked<Working>> workings = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Rule, int Year, string? Built), ThenAndNowSentence?> years = [];
    private readonly Dictionary<string, FeedResult> fed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> answering = new(StringComparer.Ordinal);
    private (Inspection Inspection, EvidenceIndex Evidence)? before;

    internal Recall Recall { get; } = new();

    /// <summary>The book that is judged by, laid out.</summary>
    internal BookIndex Book { get; private set; } = null!;

    internal Looks Looks { get; private set; }

    internal Observing Observing { get; private set; } = new();

    internal Understanding.Renaming Renaming { get; } = new();

    /// <summary>Nothing remembered yet.</summary>
    public JudgingMemory() => Looks = new Looks(Recall);

    /// <summary>Lays out the evidence, and forgets of what is remembered all that no longer holds for it.</summary>
    internal EvidenceIndex LayOut(Inspection inspection, RuleBook book, int yearNow)
    {
        if (before is { } last && ReferenceEquals(last.Evidence.Book, book) && last.Evidence.YearNow == yearNow && Difference.CanBeTold(last.Inspection, inspection)) Difference.Tell(last.Inspection, inspection, Recall);
        else Forget();
        if (!ReferenceEquals(Book?.Book, book))
        {
            Book = new BookIndex(book);
            // Their sentences are in the words of the book before.
            years.Clear();
        }
        EvidenceIndex evidence = new(inspection, book, yearNow, Recall, before?.Evidence);
        // A judgement that breaks off halfway must not be built upon.
        before = null;
        return evidence;
    }

    /// <summary>The judgement is done: what was worked out for it may be used for the next.</summary>
    internal void Keep(Inspection inspection, EvidenceIndex evidence) => before = (inspection, evidence);

    /// <summary>The book with the inspection's own wording laid over it, kept while that wording stands.</summary>
    public LaidBook Laid { get; } = new();

    /// <summary>What a feed's reckoning makes of these inputs (memoized by the inputs themselves).</summary>
    internal Checked<Working> Reckon(Feed feed, System.Text.Json.Nodes.JsonObject inputs)
    {
        var key = feed.Reckoning + inputs.ToJsonString();
        if (workings.TryGetValue(key, out var known)) return known;
        if (workings.Count >= Most) workings.Clear();
        return workings[key] = Reckonings.Reckon(feed.Reckoning, inputs);
    }

    internal ThenAndNowSentence? Year(string rule, int year, string? built, Func<string, int, string?, ThenAndNowSentence?> reckon)
    {
        if (years.TryGetValue((rule, year, built), out var known)) return known;
        if (years.Count >= Most) years.Clear();
        return years[(rule, year, built)] = reckon(rule, year, built);
    }

    /// <summary>What a feed comes to; questions that its workings answer are told when it comes to something else.</summary>
    internal FeedResult Feed(Feed feed, Func<FeedResult> work)
    {
        var result = Recall.Once("feed", feed.Id, null, work);
        if (fed.TryGetValue(feed.Id, out var known) && ReferenceEquals(known, result)) return result;
        fed[feed.Id] = result;
        foreach (var name in feed.Answers)
        {
            Recall.Changed(Topic.Of(Subject.Answer, name));
            if (!answering.TryGetValue(name, out var feeds)) answering[name] = feeds = [];
            if (!feeds.Contains(feed.Id)) feeds.Add(feed.Id);
        }
        return result;
    }

    /// <summary>Workings that answer to a name by which questions ask.</summary>
    internal IEnumerable<JudgedWorking> WorkingsFor(string name)
    {
        Recall.Ask(Topic.Of(Subject.Answer, name));
        return answering.TryGetValue(name, out var feeds) ? feeds.SelectMany(feed => fed[feed].Workings) : [];
    }

    private void Forget()
    {
        Recall.Forget();
        fed.Clear();
        answering.Clear();
        (Looks, Observing, before) = (new Looks(Recall), new Observing(), null);
    }
}
