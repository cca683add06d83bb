using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>
/// Turns words into concepts with their signs. What means the same becomes one concept, the contrary of a fault becomes the fault with
/// a minus,
/// and a denial turns what it reaches: up to a preposition or the next turn of the talk.
/// </summary>
internal sealed class Meanings
{
    // A denial reaches this many concepts.
    private const int Reach = 4;

    // So many words back what is missing was named.
    private const int Back = 7;

    private static readonly HashSet<string> Denials = new(StringComparer.Ordinal) { "missing", "not" };

    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly Phrases same;
    private readonly Phrases opposite;
    private readonly Turns turns;
    private readonly HashSet<string> filler;
    private readonly HashSet<string> stops;

    public Meanings(RuleBook book, Turns turns)
    {
        this.turns = turns;
        var heard = book.Hearing;
        var own = heard.Same.SelectMany(line => line.Value.Select(means => (Key: Stems.Split(line.Key), Means: Stemmed(means)))).ToList();
        var known = own.Select(line => string.Join(' ', line.Key)).ToHashSet(StringComparer.Ordinal);
        var others = book.SameWords.Where(line => !Denials.Contains(line.Value) && !known.Contains(line.Key))
            .Select(line => (Key: Stems.Split(line.Key), Means: Stemmed(line.Value)));
        same = new Phrases(own.Concat(others));
        opposite = new Phrases(heard.Opposites
            .SelectMany(line => line.Value.Select(word => (word, line.Key))).GroupBy(line => line.word, StringComparer.Ordinal)
            .Select(group => (Stems.Split(group.Key),
                group.SelectMany(line => Stemmed(line.Key)).Distinct(StringComparer.Ordinal).ToArray())));
        filler = [.. heard.Turns.GetValueOrDefault("filler", []).SelectMany(Stems.Split)];
        stops = [.. heard.Turns.GetValueOrDefault("spot", []), .. heard.Turns.GetValueOrDefault("boundary", [])];
    }

    /// <summary>How many concepts are known.</summary>
    public int Count => numbers.Count;

    /// <summary>What the words say, in their order.</summary>
    /// <param name="texts">Words in small letters.</param>
    /// <param name="isPause">Whether something ended before the word of this index; a denial does not reach over it.</param>
    /// <param name="isName">Whether the name of a thing that is spoken of begins at this word: a denial of something else ends
    /// there.</param>
    public List<Sense> Of(List<string> texts, Func<int, bool>? isPause = null, Func<int, bool>? isName = null)
    {
        List<Sense> marks = [];
        var (sign, left) = (1, 0);
        for (var at = 0; at < texts.Count; at++)
        {
            if (isPause?.Invoke(at) == true || (left is > 0 and < Reach && isName?.Invoke(at) == true)) left = 0;
            var denied = turns.At("not", texts, at);
            if (same.At(texts, at) is var (taken, means) && taken >= denied) at += Put(marks, means, at, taken, left > 0 ? sign : 1,
                ref left);
            else if (turns.At("gone", texts, at) is > 0 and var gone && gone >= denied && Deny(marks, at, isName)) at += gone - 1;
            else if (denied > 0)
            {
                (sign, left) = (left == Reach ? -sign : -1, Reach);
                at += denied - 1;
            }
            else if (opposite.At(texts, at) is var (length, contrary)) at += Put(marks, contrary, at, length, left > 0 ? -sign : -1,
                ref left);
            else if (left > 0 && turns.At("subject", texts, at) > 0) left = 0;
            else if (stops.Contains(texts[at])) left = left == Reach ? left : 0;
            else if (!filler.Contains(texts[at]) && !IsFigure(texts[at])) Put(marks, [Stems.Of(texts[at])], at, 1, left > 0 ? sign : 1,
                ref left);
            // "no leak": what is denied was named, and what follows is something else, unless a list goes on.
            if (left is > 0 and < Reach && turns.At("fault", texts, at) > 0
                && !(at + 1 < texts.Count && texts[at + 1] is "or" or "and")) left = 0;
        }
        return marks;
    }

    /// <summary>Where a word of praise ends: "tight", "clean", "good". What follows is something new.</summary>
    public IEnumerable<int> Praises(List<string> texts)
    {
        for (var at = 0; at < texts.Count; at++)
        {
            var taken = Math.Max(turns.At("fine", texts, at), opposite.At(texts, at) is var (length, _) ? length : 0);
            if (taken > 0) yield return at + taken;
        }
    }

    /// <summary>The number of a concept; a new one when it has none.</summary>
    public int Number(string stem)
    {
        if (!numbers.TryGetValue(stem, out var number)) numbers[stem] = number = numbers.Count;
        return number;
    }

    private int Put(List<Sense> marks, string[] means, int at, int taken, int sign, ref int left)
    {
        var share = means.Length <= taken ? 1 : (means.Length + taken) / (2.0 * means.Length);
        foreach (var one in means) marks.Add(new Sense(Number(one), at, at + taken, sign, share));
        if (left > 0) left--;
        return taken - 1;
    }

    /// <summary>
    /// "The handrail is missing": what was named just before is what is gone. False where nothing was, so that it denies what follows.
    /// </summary>
    private static bool Deny(List<Sense> marks, int at, Func<int, bool>? isName)
    {
        if (marks.Count == 0 || marks[^1].End < at - 4) return false;
        var head = isName is null ? -1 : marks.FindLastIndex(mark => mark.Start >= at - Back && isName(mark.Start));
        var from = head >= 0 ? marks[head].Start : isName is null ? 0 : at - Back;
        for (var index = 0; index < marks.Count; index++)
            if (marks[index].Start >= from) marks[index] = marks[index] with { Sign = -marks[index].Sign };
        return true;
    }

    private static bool IsFigure(string text) => char.IsAsciiDigit(text[0]);

    private static string[] Stemmed(string means) => [.. Stems.Split(means).Select(Stems.Of).Distinct(StringComparer.Ordinal)];
}
