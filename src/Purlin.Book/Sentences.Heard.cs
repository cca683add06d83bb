using Purlin.Book.Search;

namespace Purlin.Book;

public static partial class Sentences
{
    /// <summary>
    /// What the key of a word begins with that the inspector says and the book does not know: trade names, local words. Heard, never
    /// printed.
    /// </summary>
    public const string Heard = "heard";

    private const int LongestHeard = 80;

    /// <summary>The key under which a word of one's own is kept; none for words without a letter or figure.</summary>
    public static string? HeardKey(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var words = string.Join(' ', Stems.Split(said));
        return words.Length is 0 or > LongestHeard ? null : $"{Heard}/{words}";
    }

    internal static bool IsHeard(string key) => SentenceKey.TryParse(key, out var parts) && parts.Owner == Heard;

    /// <summary>The book itself hears no names of makers: under any of them it says nothing.</summary>
    internal static Sentence OfHeard(RuleBook book, string words) =>
        new($"{Heard}/{words}", "words that I say", words, "is understood as", book.SameWords.GetValueOrDefault(words) ?? "");

    internal static string? RefusesHeard(string key, string now)
    {
        _ = SentenceKey.TryParse(key, out var parts);
        if (HeardKey(parts.Rest) is var right && right != key)
            return $"A word that you say is written in small letters, {LongestHeard} at most: {right ?? Heard + "/some words"}.";
        return Stems.Split(now).Count == 0 ? "Say what it means in plain words, as the book would." : null;
    }
}
