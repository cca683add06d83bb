using System.Collections.Frozen;

namespace Purlin.Judgement.Book;

/// <summary>Lays the inspector's own wording over a book.</summary>
public static class Overlaying
{
    /// <summary>The book with everything of the inspector's own in it, and what has moved on under it.</summary>
    public static OverlaidBook Lay(this RuleBook book, Overlay overlay)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(overlay);
        List<OverlayConflict> conflicts = [];
        Dictionary<string, Condition> conditions = new(book.Conditions, StringComparer.Ordinal);
        Dictionary<string, LimitationRule> limitations = new(book.Limitations, StringComparer.Ordinal);
        Dictionary<string, string> words = new(book.Words.Sentences, StringComparer.Ordinal);
        Dictionary<string, string> cautions = new(book.Cautions, StringComparer.Ordinal);
        foreach (var own in overlay.Conditions)
        {
            if (book.Conditions.TryGetValue(own.Id, out var taken)) conflicts.Add(new OverlayConflict(own.Id, "", taken.Name, own.Name));
            conditions[own.Id] = own with { Own = true, Sources = own.Sources.Count == 0 ? [RuleBook.CommonPractice] : own.Sources };
        }
        foreach (var (key, sentence) in overlay.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal))
        {
            var says = Sentence.In(book, key);
            if (says != sentence.Was) conflicts.Add(new OverlayConflict(key, sentence.Was, says, sentence.Now));
            var (id, part) = (key[..Math.Max(0, key.IndexOf('/', StringComparison.Ordinal))], key[(key.IndexOf('/', StringComparison.Ordinal) + 1)..]);
            if (conditions.TryGetValue(id, out var condition)) conditions[id] = Sentence.Put(condition, part, sentence.Now);
            else if (limitations.TryGetValue(id, out var limitation)) limitations[id] = part == "next" ? limitation with { Next = sentence.Now } : limitation with { What = sentence.Now };
            else if (id == "words") words[part] = sentence.Now;
            else if (id == "cautions") cautions[part] = sentence.Now;
        }
        var laid = book with
        {
            Conditions = conditions.ToFrozenDictionary(StringComparer.Ordinal),
            Limitations = limitations.ToFrozenDictionary(StringComparer.Ordinal),
            Words = new Wording(words.ToFrozenDictionary(StringComparer.Ordinal)),
            Cautions = cautions.ToFrozenDictionary(StringComparer.Ordinal),
        };
        return new OverlaidBook(laid, conflicts);
    }
}
