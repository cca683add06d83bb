using Purlin.Hearing.Listening;
using Purlin.Hearing.Places;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>Takes a narration apart before it is understood.</summary>
internal sealed class Surveying(Mending mending, Turns turns, Meanings meanings, Things things, Whereabouts whereabouts)
{
    // What was named longer ago than this many words is no more what "it" means.
    private const int Memory = 45;

    public Surveyed Of(Transcript transcript, string? place)
    {
        var pieces = mending.Mend(transcript);
        var texts = pieces.ConvertAll(piece => piece.Text);
        var named = things.In(texts);
        var (at, beside) = whereabouts.Of(pieces, texts, named, place);
        var starts = named.Where(thing => !thing.IsSpot).Select(thing => thing.Start).ToHashSet();
        var marks = meanings.Of(texts, index => pieces[index].Pause, starts.Contains);
        var before = Before(texts.Count, named, at);
        foreach (var none in turns.All("none", texts)) Deny(marks, none, before[none.Start], named);
        return new Surveyed
        {
            Pieces = pieces,
            Texts = texts,
            Marks = marks,
            Things = named,
            Place = at,
            Named = beside,
            Unseen = turns.All("unseen", texts),
            Exists = turns.All("exists", texts),
            Lessons = turns.All("teach", texts),
            Openings = Openings(pieces, texts, named),
            Before = before,
            MarkAt = First(texts.Count, marks.ConvertAll(mark => mark.Start)),
            ThingAt = First(texts.Count, named.ConvertAll(thing => thing.Start)),
        };
    }

    /// <summary>"None in the bedrooms": what is not there is what was named last.</summary>
    private static void Deny(List<Sense> marks, PieceRange none, int before, List<Thing> named)
    {
        if (before < 0 || marks.Exists(mark => mark.Sign < 0 && mark.Start < none.Start && mark.End >= none.Start - 1)) return;
        var at = marks.FindIndex(mark => mark.Start >= none.Start);
        var of = marks.Where(mark => mark.Start >= named[before].Start && mark.End <= named[before].End)
            .Select(mark => mark with { Start = none.Start, End = none.End, Sign = -1 }).ToList();
        marks.InsertRange(at < 0 ? marks.Count : at, of);
    }

    private int[] Openings(List<MendedWord> pieces, List<string> texts, List<Thing> named)
    {
        SortedSet<int> openings = [0, texts.Count];
        for (var at = 0; at < texts.Count; at++)
            if (pieces[at].Pause || turns.At("boundary", texts, at) > 0 || turns.At("opener", texts, at) > 0
                || turns.At("not", texts, at) > 0) openings.Add(at);
        foreach (var end in meanings.Praises(texts)) openings.Add(end);
        foreach (var thing in named)
        {
            if (thing.IsSpot) continue;
            openings.Add(thing.Start);
            // "rusty flue", "big oak": the word before a name often belongs to it.
            if (thing.Start > 0) openings.Add(thing.Start - 1);
        }
        return [.. openings];
    }

    private static int[] Before(int count, List<Thing> named, string?[] place)
    {
        var before = new int[count + 1];
        var (last, next) = (-1, 0);
        for (var at = 0; at <= count; at++)
        {
            while (next < named.Count && named[next].End <= at)
            {
                if (!named[next].IsSpot) last = next;
                next++;
            }
            if (last >= 0 && (at - named[last].End > Memory || (at < count && place[at] != place[named[last].Start]))) last = -1;
            before[at] = last;
        }
        return before;
    }

    private static int[] First(int count, List<int> starts)
    {
        var first = new int[count + 1];
        var next = 0;
        for (var at = 0; at <= count; at++)
        {
            while (next < starts.Count && starts[next] < at) next++;
            first[at] = next;
        }
        return first;
    }
}
