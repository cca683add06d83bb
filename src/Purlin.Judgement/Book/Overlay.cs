using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Judgement.Book;

/// <summary>
/// The inspector's own wording over the rule book. Kept apart from the book, so that an update never eats it: each sentence remembers what
/// the book said when it was changed, and a book that says something new since then is shown as a conflict while the own wording stands.
/// </summary>
public sealed record Overlay
{
    /// <summary>Nothing of one's own.</summary>
    public static Overlay Empty { get; } = new();

    /// <summary>Edition of the rule book it was last looked through with.</summary>
    public string Edition { get => field ?? ""; init; }

    /// <summary>Sentences by key: <c>water-heater.too-hot/do</c>, <c>supply-piping.corroded-joint/look/pressure/refer</c>.</summary>
    public IReadOnlyDictionary<string, OwnSentence> Sentences { get => field ?? new Dictionary<string, OwnSentence>(); init; }

    /// <summary>Conditions of one's own.</summary>
    public IReadOnlyList<Condition> Conditions { get => field ?? []; init; }

    /// <summary>Reads what <see cref="Write"/> wrote, from anywhere: hostile text is a refusal.</summary>
    public static Checked<Overlay> Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            var overlay = JsonSerializer.Deserialize(bytes.Span, OverlayJson.Default.Overlay);
            if (overlay is null || overlay.Sentences.Values.Any(sentence => sentence is null) || overlay.Conditions.Any(condition => condition is null))
                return new Refusal("own wording", "null", "a file that was exported from here");
            return overlay;
        }
        catch (JsonException refused)
        {
            return new Refusal("own wording", refused.Message.Length <= 80 ? refused.Message : refused.Message[..77] + "...", "a file that was exported from here");
        }
    }

    /// <summary>The overlay as UTF-8 JSON, for export.</summary>
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(this, OverlayJson.Default.Overlay);

    /// <summary>The overlay with one sentence changed; the text as it stands in the book gives it up again.</summary>
    public Overlay Say(RuleBook book, string key, string now)
    {
        ArgumentNullException.ThrowIfNull(book);
        var was = Sentence.In(book, key) ?? "";
        Dictionary<string, OwnSentence> sentences = new(Sentences, StringComparer.Ordinal);
        if (now == was) sentences.Remove(key);
        else sentences[key] = new OwnSentence(was, now);
        return this with { Edition = book.Edition, Sentences = sentences };
    }
}

/// <summary>A sentence of the inspector's own.</summary>
/// <param name="Was">What the book said when it was changed.</param>
/// <param name="Now">What is to be said instead.</param>
public sealed record OwnSentence(string Was, string Now);

/// <summary>A place where the book has moved on under an own sentence or condition.</summary>
/// <param name="Key">Which sentence or condition.</param>
/// <param name="Was">What the book said when it was changed.</param>
/// <param name="Book">What the book says now; none when it has no such line any more.</param>
/// <param name="Own">What stands, until the inspector decides.</param>
public sealed record OverlayConflict(string Key, string Was, string? Book, string Own);

/// <summary>A book with an overlay laid over it.</summary>
/// <param name="Book">The book to judge with.</param>
/// <param name="Conflicts">What the inspector should look at; everything of theirs stands meanwhile.</param>
public sealed record OverlaidBook(RuleBook Book, IReadOnlyList<OverlayConflict> Conflicts);
