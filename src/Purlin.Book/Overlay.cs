using System.Text.Json;
using System.Text.Json.Serialization;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>
/// The inspector's own wording over the rule book. Kept apart from the book, so that an update never eats it: each sentence remembers what
/// the book said when it was changed, and a book that says something new since then is shown as a conflict while the own wording stands.
/// </summary>
public sealed record Overlay
{
    /// <summary>Bytes of a file of own wording.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Own sentences in one file.</summary>
    public const int MostSentences = 2_000;

    /// <summary>Own conditions in one file.</summary>
    public const int MostConditions = 500;

    /// <summary>What the file says it is.</summary>
    public const string FileFormat = "purlin-own-wording";

    /// <summary>Nothing of one's own.</summary>
    public static Overlay Empty { get; } = new();

    /// <summary>What kind of file this is.</summary>
    public string Format { get => field ?? FileFormat; init; }

    /// <summary>Version of the file's form.</summary>
    public int Version { get => field == 0 ? 1 : field; init; }

    /// <summary>Edition of the rule book it was last looked through with.</summary>
    public string Edition { get => field ?? ""; init; }

    /// <summary>Sentences by key: <c>water-heater.too-hot/do</c>, <c>supply-piping.corroded-joint/look/pressure/refer</c>.</summary>
    public IReadOnlyDictionary<string, OwnSentence> Sentences { get => field ?? new Dictionary<string, OwnSentence>(); init; }

    /// <summary>Conditions of one's own.</summary>
    public IReadOnlyList<Condition> Conditions { get => field ?? []; init; }

    /// <summary>What a journal holds of own wording and this program cannot use.</summary>
    [JsonIgnore]
    public IReadOnlyList<OverlayConflict> Unread { get => field ?? []; init; }

    /// <summary>Whether there is nothing to lay over a book.</summary>
    [JsonIgnore]
    public bool IsEmpty => Sentences.Count == 0 && Conditions.Count == 0;

    /// <summary>Reads what <see cref="Write"/> wrote, from anywhere: hostile text is a refusal.</summary>
    public static Checked<Overlay> Read(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > MostBytes) return new Refusal("own wording", $"{bytes.Length} bytes", $"at most {MostBytes}");
        try
        {
            // A mark of byte order is what some editors put there; it is not the inspector's fault.
            var text = bytes.Span.StartsWith("\uFEFF"u8) ? bytes.Span[3..] : bytes.Span;
            var overlay = JsonSerializer.Deserialize(text, OverlayJson.Default.Overlay);
            if (overlay is null || overlay.Sentences.Values.Any(sentence => sentence is null)
                || overlay.Conditions.Any(condition => condition is null))
                return new Refusal("own wording", "null", "a file that was exported from here");
            return Check(overlay);
        }
        catch (JsonException refused)
        {
            return WrongWords(bytes) is { Count: > 0 } words ? Checked<Overlay>.Refused(words)
                : new Refusal("own wording", refused.Message.Length <= 80
                    ? refused.Message : refused.Message[..77] + "...", "a file that was exported from here");
        }
        catch (InvalidOperationException)
        {
            return new Refusal("own wording", "text with half a surrogate pair", "well-formed Unicode");
        }
    }

    /// <summary>Words that no closed list has, each told; none when the text is no JSON at all.</summary>
    private static IReadOnlyList<Refusal> WrongWords(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes);
            return [.. BookMembers.WrongWords(document.RootElement, OverlayJson.Default.Overlay)
                .Select(one => new Refusal(one.Where, Short(one.Given), one.Allowed))];
        }
        catch (JsonException)
        {
            return [];
        }
    }

    /// <summary>The overlay as UTF-8 JSON, for export: the same wording is the same bytes.</summary>
    public byte[] Write()
    {
        var ordered = this with
        {
            Sentences = new SortedDictionary<string, OwnSentence>(Sentences.ToDictionary(), StringComparer.Ordinal),
            Conditions = [.. Conditions.OrderBy(own => own.Id, StringComparer.Ordinal)]
        };
        return JsonSerializer.SerializeToUtf8Bytes(ordered, OverlayJson.Default.Overlay);
    }

    /// <summary>The overlay with one sentence changed; the text as it stands in the book gives it up again.</summary>
    public Overlay Say(RuleBook book, string key, string now)
    {
        ArgumentNullException.ThrowIfNull(book);
        var was = Sentence.In(book.Beneath ?? book, key) ?? "";
        Dictionary<string, OwnSentence> sentences = new(Sentences, StringComparer.Ordinal);
        if (now == was) sentences.Remove(key);
        else sentences[key] = new OwnSentence(was, now);
        return this with { Edition = book.Edition, Sentences = sentences };
    }

    private static Checked<Overlay> Check(Overlay overlay)
    {
        List<Refusal> refusals = [];
        if (overlay.Format != FileFormat) refusals.Add(new Refusal("format", Short(overlay.Format), FileFormat));
        if (overlay.Version > 1) refusals.Add(new Refusal("version", $"{overlay.Version}", "1; use the newer program"));
        if (overlay.Sentences.Count > MostSentences)
            refusals.Add(new Refusal("own wording", $"{overlay.Sentences.Count} sentences", $"at most {MostSentences}"));
        if (overlay.Conditions.Count > MostConditions)
            refusals.Add(new Refusal("own wording", $"{overlay.Conditions.Count} conditions", $"at most {MostConditions}"));
        if (refusals.Count > 0) return Checked<Overlay>.Refused(refusals);
        foreach (var (key, sentence) in overlay.Sentences)
        {
            if (key.Length > 200 || !SentenceKey.TryParse(key, out _))
                refusals.Add(new Refusal("key of a sentence", Short(key), "whose it is, a slash and the part, at most 200 characters"));
            if (string.IsNullOrWhiteSpace(sentence.Now)) refusals.Add(new Refusal(Short(key), "nothing", "a sentence"));
            else if (Math.Max(sentence.Was.Length, sentence.Now.Length) > Limits.SentenceCharacters)
                refusals.Add(new Refusal(Short(key), $"{Math.Max(sentence.Was.Length, sentence.Now.Length)} characters",
                    $"at most {Limits.SentenceCharacters}"));
            else if (Sentence.Refuses(key, sentence.Now) is not null)
                refusals.Add(new Refusal(Short(key), Short(sentence.Now), $"one of {string.Join(", ", Trades.All)}"));
        }
        foreach (var own in overlay.Conditions)
            foreach (var refusal in OwnConditions.Broken(own)) refusals.Add(refusal with { Input = $"{Short(own.Id)} {refusal.Input}" });
        if (overlay.Conditions.Select(own => own.Id).Distinct(StringComparer.Ordinal).Count() != overlay.Conditions.Count)
            refusals.Add(new Refusal("own conditions", "two of one id", "an id of its own for each"));
        return refusals.Count == 0 ? overlay : Checked<Overlay>.Refused(refusals);
    }

    private static string Short(string text) => text.Length <= 80 ? text : text[..77] + "...";
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
/// <param name="Words">What happened, in a sentence.</param>
public sealed record OverlayConflict(string Key, string Was, string? Book, string Own, string Words);

/// <summary>A book with an overlay laid over it.</summary>
/// <param name="Book">The book to judge with.</param>
/// <param name="Conflicts">What the inspector should look at; everything of theirs stands meanwhile.</param>
public sealed record OverlaidBook(RuleBook Book, IReadOnlyList<OverlayConflict> Conflicts);
