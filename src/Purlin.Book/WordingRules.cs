using System.Text.RegularExpressions;

namespace Purlin.Book;

/// <summary>
/// What no sentence for a buyer may do: promise, shout, accuse, or only advise to watch. The book is held to it; own wording is told, and
/// the inspector decides.
/// </summary>
public static partial class WordingRules
{
    // The patterns are plain lists of words; the limit is there for text from outside all the same.
    private const int LongestMilliseconds = 1_000;

    /// <summary>What speaks against a sentence, each in one sentence; empty when nothing does.</summary>
    public static IReadOnlyList<string> Doubts(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<string> doubts = [];
        if (Promise.Match(text) is { Success: true } promise)
            doubts.Add($"“{promise.Value}” is a promise. Say what was seen and what to do; nobody can vouch for more.");
        if (text.Contains('!', StringComparison.Ordinal)) doubts.Add("It shouts. A plain sentence is believed sooner.");
        if (Violation.Match(text) is { Success: true } violation)
            doubts.Add($"“{violation.Value}” is for the building department to say. Say what is there and what is asked for today.");
        if (IsOnlyWatching(text))
            doubts.Add("It says to watch, and not when to act. Say what to watch, how, and at what point to do something.");
        return doubts;
    }

    /// <summary>
    /// What speaks against own words in the place of one sentence: the doubts, and places in braces that were lost or are not filled in.
    /// </summary>
    public static IReadOnlyList<string> Doubts(string was, string now)
    {
        ArgumentNullException.ThrowIfNull(was);
        List<string> doubts = [.. Doubts(now)];
        var (had, has) = (Places(was), Places(now));
        foreach (var lost in had.Except(has)) doubts.Add($"{lost} is left out: what the program fills in there will not be said.");
        foreach (var unknown in has.Except(had)) doubts.Add($"{unknown} is not filled in here and would be printed as it is.");
        return doubts;
    }

    /// <summary>
    /// Every doubt about an overlay: the sentence's key or the condition's part, what it says, and what speaks against it.
    /// </summary>
    public static IEnumerable<(string Key, string Text, string Doubt)> Doubts(Overlay overlay)
    {
        ArgumentNullException.ThrowIfNull(overlay);
        return overlay.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal)
            .SelectMany(line => Doubts(line.Value.Was, line.Value.Now).Select(doubt => (line.Key, line.Value.Now, doubt)))
            .Concat(overlay.Conditions.SelectMany(Doubts));
    }

    /// <summary>Every doubt about a condition of one's own.</summary>
    public static IEnumerable<(string Key, string Text, string Doubt)> Doubts(Condition own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return Sentences.Of(own with { Own = false })
            .SelectMany(sentence => Doubts(sentence.Text).Select(doubt => (sentence.Key, sentence.Text, doubt)));
    }

    /// <summary>Whether a sentence promises.</summary>
    public static bool Promises(string text) => Promise.IsMatch(text);

    /// <summary>Whether a sentence speaks of violated codes.</summary>
    public static bool Accuses(string text) => Violation.IsMatch(text);

    /// <summary>Whether a sentence advises to watch and does not say when to act.</summary>
    public static bool IsOnlyWatching(string text) => Watching.IsMatch(text) && !When.IsMatch(text);

    private static List<string> Places(string text) =>
        [.. Place.Matches(text).Select(match => match.Value).Distinct(StringComparer.Ordinal)];

    [GeneratedRegex(@"\b(perfectly safe|is safe|are safe|be safe|safe to use|no problems?|guarantee[ds]?|is fine|are fine|will never|nothing to worry)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, LongestMilliseconds)]
    private static partial Regex Promise { get; }

    [GeneratedRegex(@"\b(monitor|watch|keep an eye)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, LongestMilliseconds)]
    private static partial Regex Watching { get; }

    [GeneratedRegex(@"\b(if|when|once|until|at|after|before|each|every)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        LongestMilliseconds)]
    private static partial Regex When { get; }

    [GeneratedRegex(@"\b(code violation|violat\w+)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, LongestMilliseconds)]
    private static partial Regex Violation { get; }

    [GeneratedRegex(@"\{[a-z]+\}", RegexOptions.ExplicitCapture, LongestMilliseconds)]
    private static partial Regex Place { get; }
}
