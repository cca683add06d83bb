namespace Purlin.Book;

/// <summary>
/// One sentence of the book that reaches a person, with the key under which the inspector can say it otherwise. Numbers, limits, weights
/// and sources are not wording: a weight is overruled for one finding, with a reason.
/// </summary>
/// <param name="Key">Whose it is, a slash, and the part: <c>water-heater.too-hot/do</c>, <c>causes/poor-drainage/means</c>.</param>
/// <param name="Group">Building system, or what kind of sentence it is.</param>
/// <param name="About">Heading of what it belongs to.</param>
/// <param name="Part">Which part of it, in words.</param>
/// <param name="Text">What the book says.</param>
public sealed record Sentence(string Key, string Group, string About, string Part, string Text)
{
    /// <summary>What stands between the parts of a sentence that is a list: signs, reasons.</summary>
    public const string Between = "; ";

    /// <summary>What the book says under a key; none when it has no such sentence.</summary>
    public static string? In(RuleBook book, string key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        return Of(book, key)?.Text;
    }

    /// <summary>The sentence of a key; none when the book has no such sentence.</summary>
    public static Sentence? Of(RuleBook book, string key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        if (!SentenceKey.TryParse(key, out var parts)) return null;
        var (head, rest) = parts;
        if (book.Conditions.TryGetValue(head, out var condition)) return Find(Sentences.Of(condition), key);
        if (book.Limitations.TryGetValue(head, out var limitation)) return Find(Sentences.Of(limitation), key);
        var (first, last) = (parts.LongPart.Id, parts.LongId.Id);
        return head switch
        {
            Sentences.Heard => Sentences.OfHeard(book, rest),
            "words" => book.Words.Find(rest) is { } sentence ? Sentences.OfWords(rest, sentence) : null,
            "cautions" => book.Cautions.TryGetValue(rest, out var caution) ? Sentences.OfCaution(rest, caution) : null,
            "core" => book.Core.TryGetValue(last, out var core) ? Find(Sentences.Of(core), key) : null,
            "duties" => book.Standards.TryGetValue(first, out var standard) ? Find(Sentences.Of(standard), key) : null,
            "readings" => book.ReadingKinds.TryGetValue(last, out var kind) ? Find(Sentences.Of(kind), key) : null,
            "visit" => Find(book.Visit.Where(rule => rule.Id == first).SelectMany(Sentences.Of), key),
            "settings" => book.Settings.TryGetValue(last, out var setting) ? Find(Sentences.Of(setting), key) : null,
            "causes" => Find(book.Causes.Where(cause => cause.Id == last).SelectMany(Sentences.Of), key),
            "escalations" => Find(book.Escalations.Where(rule => rule.Id == last).SelectMany(rule => Sentences.Of(rule, book)), key),
            "profiles" => Find(book.Profiles.Where(profile => profile.Id == last).SelectMany(Sentences.Of), key),
            "feeds" => Find(book.Feeds.Where(feed => feed.Id == last).SelectMany(Sentences.Of), key),
            "facts" => Find(book.FactRules.SelectMany(Sentences.Of), key),
            _ => null,
        };
    }

    /// <summary>Why these words cannot stand there at all; none when they can.</summary>
    public static string? Refuses(string key, string now)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(now);
        if (now.Length > Journal.Limits.SentenceCharacters)
            return $"A sentence has at most {Journal.Limits.SentenceCharacters} characters.";
        if (Sentences.IsHeard(key)) return Sentences.RefusesHeard(key, now);
        if (!key.EndsWith("/trade", StringComparison.Ordinal) || Trades.All.Contains(now)) return null;
        return $"Who deals with it must be one of the trades: {string.Join(", ", Trades.All)}.";
    }

    private static Sentence? Find(IEnumerable<Sentence> sentences, string key) => sentences.FirstOrDefault(sentence => sentence.Key == key);
}
