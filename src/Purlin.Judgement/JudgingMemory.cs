using Purlin.Journal;
using Purlin.Judgement.Book;
using Purlin.Reckoning;

namespace Purlin.Judgement;

/// <summary>
/// Remembers reckonings between two judgements of the same inspection, so that one new entry costs no old reckoning. It only spares work:
/// the judgement is the same with and without it. For one inspection and one thread.
/// </summary>
public sealed class JudgingMemory
{
    // A whole inspection needs a few hundred at most; beyond that a stale one is cheaper to reckon again than to keep.
    private const int Most = 2_000;

    private readonly Dictionary<string, Checked<Working>> workings = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Rule, int Year), ThenAndNowSentence?> years = [];

    /// <summary>The book with the inspection's own wording laid over it, kept while that wording stands.</summary>
    public LaidBook Laid { get; } = new();

    internal Checked<Working> Working(string key, Func<Checked<Working>> reckon)
    {
        if (workings.TryGetValue(key, out var known)) return known;
        if (workings.Count >= Most) workings.Clear();
        return workings[key] = reckon();
    }

    internal ThenAndNowSentence? Year(string rule, int year, Func<string, int, ThenAndNowSentence?> reckon)
    {
        if (years.TryGetValue((rule, year), out var known)) return known;
        if (years.Count >= Most) years.Clear();
        return years[(rule, year)] = reckon(rule, year);
    }
}
