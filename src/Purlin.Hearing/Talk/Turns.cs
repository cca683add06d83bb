using Purlin.Book;
using Purlin.Book.Search;

namespace Purlin.Hearing.Talk;

/// <summary>The turns of talk, by what they do: where one begins in a text and how long it is.</summary>
internal sealed class Turns(HearingWords words)
{
    private readonly Dictionary<string, Phrases> kinds = words.Turns.ToDictionary(
        line => line.Key, line => new Phrases(line.Value.Select(phrase => (Stems.Split(phrase), Array.Empty<string>()))),
            StringComparer.Ordinal);

    /// <summary>Length of a turn that begins here; 0 for none.</summary>
    public int At(string kind, List<string> texts, int at) => kinds.TryGetValue(kind, out var phrases)
        && phrases.At(texts, at) is var (taken, _) ? taken : 0;

    /// <summary>All turns of one kind, none within another.</summary>
    public List<PieceRange> All(string kind, List<string> texts)
    {
        List<PieceRange> found = [];
        for (var at = 0; at < texts.Count; at++)
        {
            if (At(kind, texts, at) is not (> 0 and var taken)) continue;
            found.Add(new PieceRange(at, at + taken));
            at += taken - 1;
        }
        return found;
    }
}
