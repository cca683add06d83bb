using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Hearing.Listening;

namespace Purlin.Hearing.Talk;

/// <summary>
/// Brings spoken words to the form in which they are compared: small letters, "the toilet's" as "toilet is", and what was misheard put
/// right.
/// </summary>
internal sealed class Mending(RuleBook book, Turns turns)
{
    private static readonly HashSet<string> Keep = new(StringComparer.Ordinal) { "its", "thats", "theres", "whats", "heres", "lets",
        "hes", "shes", "whos", "hers", "ours", "yours", "wheres", "hows", "todays" };

    private readonly Phrases misheard = new(book.Misheard.Select(line => (Stems.Split(line.Key), Stems.Split(line.Value).ToArray())));

    /// <summary>The words of a transcript, mended; each knows which spoken words it stands for.</summary>
    public List<MendedWord> Mend(Transcript transcript)
    {
        List<MendedWord> raw = new(transcript.Words.Length);
        for (var at = 0; at < transcript.Words.Length; at++)
        {
            var word = transcript.Words[at];
            var pause = word.Pause;
            foreach (var part in Parts(word.Text))
            {
                raw.Add(new MendedWord(part, at, at + 1, pause));
                pause = false;
            }
        }
        return Corrected(Dictated(raw));
    }

    /// <summary>"Period", "new line": what is said to the machine ends what was said before.</summary>
    private List<MendedWord> Dictated(List<MendedWord> raw)
    {
        var commands = turns.All("stop", raw.ConvertAll(piece => piece.Text));
        for (var index = commands.Count - 1; index >= 0; index--)
        {
            var (start, end) = (commands[index].Start, commands[index].End);
            if (end < raw.Count) raw[end] = raw[end] with { Pause = true };
            raw.RemoveRange(start, end - start);
        }
        return raw;
    }

    private List<MendedWord> Corrected(List<MendedWord> raw)
    {
        var texts = raw.ConvertAll(piece => piece.Text);
        List<MendedWord> mended = new(raw.Count);
        for (var at = 0; at < raw.Count; at++)
        {
            if (misheard.At(texts, at) is not var (taken, instead) || IsMeant(texts, at, taken))
            {
                mended.Add(raw[at]);
                continue;
            }
            for (var word = 0; word < instead.Length; word++) mended.Add(new MendedWord(instead[word], raw[at].First,
                raw[at + taken - 1].End, word == 0 && raw[at].Pause));
            at += taken - 1;
        }
        return mended;
    }

    /// <summary>"It's soft it moves" is no soffit: what follows "is" is a quality and the sentence goes on.</summary>
    private static bool IsMeant(List<string> texts, int at, int taken) => taken > 1 && at > 0 && texts[at + taken - 1] == "it"
        && texts[at - 1] is "is" or "its" or "so" or "real" or "very" or "too" or "feels" or "are" or "was";

    /// <summary>The parts of one written word: figures keep their points and strokes.</summary>
    private static IEnumerable<string> Parts(string word)
    {
        var text = word.ToLowerInvariant().Replace('’', '\'').Trim('.', ',', ';', ':', '?', '!', '"', '(', ')', '[', ']', '…', '-', '\'');
        if (text.Length == 0) return [];
        if (char.IsAsciiDigit(text[0])) return [text];
        if (text.EndsWith("'s", StringComparison.Ordinal)
            && !Keep.Contains(text.Replace("'", "", StringComparison.Ordinal))) text = text[..^2];
        return Stems.Split(text);
    }
}
