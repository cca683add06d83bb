using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Hearing.Matters;
using Purlin.Hearing.Talk;
using Purlin.Journal;

namespace Purlin.Hearing.Places;

/// <summary>
/// Follows the speaker through the house: a place carries on until another is gone to; one that is only spoken of moves nobody.
/// </summary>
internal sealed class Whereabouts(HearingWords words, Turns turns)
{
    private const int Memory = 60;

    private static readonly HashSet<string> Outdoors = new(StringComparer.Ordinal) { PlaceKind.Site, PlaceKind.Side, PlaceKind.Roof,
        PlaceKind.Deck };
    private static readonly HashSet<string> Inside = new(StringComparer.Ordinal) { "inside", "interior", "indoors" };

    private readonly Phrases names = new(words.Places
        .SelectMany(line => line.Value.Select(name => (Stems.Split(name), new[] { line.Key }))));

    /// <summary>By piece: the kind of place one stands in, and the kind that is only named there.</summary>
    public (string?[] Place, string?[] Named) Of(List<MendedWord> pieces, List<string> texts, List<Thing> things, string? begin)
    {
        var place = new string?[texts.Count];
        var named = new string?[texts.Count];
        var here = begin;
        var (attics, crawls) = (begin == PlaceKind.Attic ? 0 : -Memory, begin is PlaceKind.CrawlSpace or PlaceKind.Basement ? 0 : -Memory);
        var thing = 0;
        for (var at = 0; at < texts.Count; at++)
        {
            while (thing < things.Count && things[thing].End <= at) thing++;
            var taken = 1;
            if (names.At(texts, at) is var (length, means))
            {
                taken = length;
                if (means[0] == PlaceKind.Attic) attics = at;
                else if (means[0] == PlaceKind.CrawlSpace) crawls = at;
                var isPart = thing < things.Count && things[thing].Start <= at && things[thing].End > at + length;
                if (!isPart && names.At(texts, at + length) is null && Goes(pieces, texts, at, means[0], here)) here = means[0];
                else for (var index = at; index < at + length; index++) named[index] = means[0];
            }
            else if (Deep(texts, at, attics, crawls) is { } deep) here = deep;
            else if (Inside.Contains(texts[at]) && (here is null || Outdoors.Contains(here)) && IsHeading(pieces, texts, at)) here = null;
            for (var index = at; index < at + taken; index++) place[index] = here;
            at += taken - 1;
        }
        return (place, named);
    }

    private bool Goes(List<MendedWord> pieces, List<string> texts, int at, string kind, string? here)
    {
        var before = at - 1;
        while (before >= 0 && !pieces[before + 1].Pause && turns.At("determiner", texts, before) > 0) before--;
        if (before < 0 || pieces[before + 1].Pause) return true;
        var isOutside = kind is PlaceKind.Side or PlaceKind.Site or PlaceKind.Roof;
        var comes = turns.At("going", texts, before) > 0 || (before > 0 && turns.At("going", texts, before - 1) > 1);
        if (isOutside && here is not null && !Outdoors.Contains(here)) return comes && texts[before] != "to";
        if (here is PlaceKind.Attic or PlaceKind.CrawlSpace) return comes && texts[before] is not ("to" or "up" or "down" or "over");
        if (texts[before] is "in" or "inside") return true;
        if (texts[before] is "to" or "into" or "at" or "on") return before > 0 && turns.At("going", texts, before - 1) > 0;
        return turns.At("spot", texts, before) == 0;
    }

    /// <summary>"Going up", "down here": the attic or crawl space that was spoken of a while ago.</summary>
    private string? Deep(List<string> texts, int at, int attics, int crawls)
    {
        if (at - attics < Memory && turns.At("climb", texts, at) > 0) return PlaceKind.Attic;
        return at - crawls < Memory && turns.At("stoop", texts, at) > 0 ? PlaceKind.CrawlSpace : null;
    }

    private bool IsHeading(List<MendedWord> pieces, List<string> texts, int at) => at == 0 || pieces[at].Pause
        || turns.At("going", texts, at - 1) > 0 || turns.At("boundary", texts, at - 1) > 0;
}
