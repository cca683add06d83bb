using System.Globalization;
using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>Finds the things that are named in what was said.</summary>
internal sealed class Things
{
    private readonly Phrases names;
    private readonly Turns turns;

    public Things(HearingWords words, Turns turns, IReadOnlyDictionary<string, int> numbers)
    {
        this.turns = turns;
        names = new Phrases(words.Things
            .SelectMany(line => line.Value.Select(name => (Name: name, Component: numbers[line.Key]))).GroupBy(line => line.Name,
            StringComparer.Ordinal)
            .Select(group => (Stems.Split(group.Key),
                group.Select(line => line.Component.ToString(CultureInfo.InvariantCulture)).ToArray())));
    }

    /// <summary>All things named, the longest name winning.</summary>
    public List<Thing> In(List<string> texts)
    {
        List<Thing> found = [];
        for (var at = 0; at < texts.Count; at++)
        {
            if (names.At(texts, at) is not var (taken, kinds)) continue;
            found.Add(new Thing(at, at + taken, [.. kinds.Select(kind => int.Parse(kind, CultureInfo.InvariantCulture))],
                IsSpot(texts, at)));
            at += taken - 1;
        }
        return found;
    }

    /// <summary>Where a name begins with the words that go before it: "under the", "at that".</summary>
    private bool IsSpot(List<string> texts, int at)
    {
        var before = at - 1;
        for (var back = 0; back < 3 && before >= 0 && turns.At("determiner", texts, before) > 0; back++) before--;
        return before >= 0 && turns.At("spot", texts, before) > 0;
    }
}
