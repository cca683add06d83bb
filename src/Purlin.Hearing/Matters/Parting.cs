using Purlin.Hearing.Figures;
using Purlin.Hearing.Talk;
using Purlin.Journal;

namespace Purlin.Hearing.Matters;

/// <summary>
/// Parts a narration into statements and the talk between them: of all ways to part it the one whose statements together fit best. Talk
/// that fits
/// nothing costs nothing.
/// </summary>
internal sealed class Parting(Repertoire repertoire, HearingScale weighing, IReadOnlyDictionary<string, int> components)
{
    private const int MostPieces = 26, MostOpenings = 14;

    private static readonly Comparer<PieceRange> ByStart = Comparer<PieceRange>.Create((one, other) => one.Start.CompareTo(other.Start));

    private readonly Scoring scoring = new(repertoire, weighing);

    public List<Statement> Of(Surveyed ground)
    {
        var openings = ground.Openings;
        var best = new double[openings.Length];
        var from = new int[openings.Length];
        var told = new Statement[openings.Length];
        Array.Fill(from, -1);
        for (var start = 0; start < openings.Length - 1; start++)
        {
            if (start > 0 && best[start - 1] > best[start]) (best[start], from[start]) = (best[start - 1], -1);
            foreach (var (end, telling) in From(ground, start))
            {
                var whole = best[start] + telling.Score;
                if (whole <= best[end]) continue;
                (best[end], from[end], told[end]) = (whole, start, telling);
            }
        }
        if (best.Length > 1 && best[^2] > best[^1]) (best[^1], from[^1]) = (best[^2], -1);
        return Back(from, told).ConvertAll(telling => Trimmed(ground, telling));
    }

    private static List<Statement> Back(int[] from, Statement[] told)
    {
        List<Statement> found = [];
        for (var at = from.Length - 1; at > 0;)
        {
            if (from[at] < 0) at--;
            else
            {
                found.Add(told[at]);
                at = from[at];
            }
        }
        found.Reverse();
        return found;
    }

    /// <summary>Leaves off the words before and after that tell nothing of the matter.</summary>
    private Statement Trimmed(Surveyed ground, Statement telling)
    {
        if (telling.Condition < 0) return telling;
        var (first, last) = (int.MaxValue, -1);
        for (var at = ground.MarkAt[telling.Span.Start]; at < ground.Marks.Count && ground.Marks[at].Start < telling.Span.End; at++)
        {
            if (!repertoire.Speaks(telling.Condition, ground.Marks[at].Concept)) continue;
            first = Math.Min(first, ground.Marks[at].Start);
            last = Math.Max(last, ground.Marks[at].End);
        }
        return last < 0 ? telling : telling with
        {
            Span = new PieceRange(Math.Max(telling.Span.Start, first - 2),
            Math.Min(telling.Span.End, last))
        };
    }

    private IEnumerable<(int End, Statement Statement)> From(Surveyed ground, int start)
    {
        var first = ground.Openings[start];
        var (mark, thing) = (ground.MarkAt[first], ground.ThingAt[first]);
        var inHand = ground.Before[first] is >= 0 and var before ? ground.Things[before].Components : [];
        var there = From(ground.Exists, first);
        scoring.Begin(inHand);
        for (var end = start + 1; end < ground.Openings.Length && end - start <= MostOpenings; end++)
        {
            var last = ground.Openings[end];
            if (last - first > MostPieces) yield break;
            while (mark < ground.Marks.Count && ground.Marks[mark].Start < last) scoring.Say(ground.Marks[mark++]);
            while (thing < ground.Things.Count && ground.Things[thing].Start < last) scoring.Name(ground.Things[thing++]);
            while (there < ground.Exists.Count && ground.Exists[there].Start < last)
                if (ground.Exists[there++].Start >= first) scoring.Exists();
            var telling = Tell(ground, new PieceRange(first, last), inHand);
            if (telling.Score > 0) yield return (end, telling);
        }
    }

    private Statement Tell(Surveyed ground, PieceRange span, int[] inHand)
    {
        var place = ground.Place[span.End - 1] ?? ground.Place[span.Start];
        var (condition, outcome, score) = scoring.Best(index => place is null
            || repertoire.Conditions[index].Places.Count == 0 ? null : repertoire.Conditions[index].Places.Contains(place));
        if (Any(ground.Lessons, span)) score *= weighing.Lesson;
        score -= weighing.Cost;
        if (Any(ground.Unseen, span) && Unseen(ground, span) is var worth && worth > score)
            return new Statement(span, -1, Hidden(ground, span, inHand, place), Outcome.NotVisible,
                worth - (0.02 * (span.End - span.Start)));
        return condition < 0 ? Statement.None : new Statement(span, condition, repertoire.ComponentOf[condition], outcome, score);
    }

    private static bool Any(List<PieceRange> stretches, PieceRange span)
    {
        var at = From(stretches, span.Start);
        return at < stretches.Count && stretches[at].End <= span.End;
    }

    /// <summary>Index of the first stretch that begins at a piece or later.</summary>
    private static int From(List<PieceRange> stretches, int piece) =>
        stretches.BinarySearch(new PieceRange(piece, piece), ByStart) is >= 0 and var at ? at
        : ~stretches.BinarySearch(new PieceRange(piece, piece), ByStart);

    /// <summary>How much it says that something could not be looked at: more where it is named.</summary>
    private double Unseen(Surveyed ground, PieceRange span) =>
        ground.ThingAt[span.Start] < ground.ThingAt[span.End] ? weighing.Unseen : weighing.UnseenAlone;

    /// <summary>What could not be looked at: the thing that is named, or the place one stands in.</summary>
    private int Hidden(Surveyed ground, PieceRange span, int[] inHand, string? place)
    {
        var unseen = ground.Unseen.FindLast(unseen => span.Covers(unseen.Start) && unseen.End <= span.End);
        var next = ground.ThingAt[unseen.End - 1];
        if (next < ground.Things.Count && ground.Things[next].Start < Math.Min(span.End,
            unseen.End + 4)) return ground.Things[next].Components[0];
        if (OfPlace(place) is { } whole) return whole;
        for (var at = ground.ThingAt[span.Start]; at < ground.Things.Count && ground.Things[at].Start < span.End; at++)
            if (ground.Things[at] is { IsSpot: false } thing) return thing.Components[0];
        return inHand.Length > 0 ? inHand[0] : components["house"];
    }

    private int? OfPlace(string? place) => place switch
    {
        PlaceKind.Attic => components[PlaceKind.Attic],
        PlaceKind.CrawlSpace => components[PlaceKind.CrawlSpace],
        PlaceKind.Roof => components[Kinds.RoofCovering],
        PlaceKind.Basement => components[PlaceKind.Basement],
        _ => null,
    };
}
