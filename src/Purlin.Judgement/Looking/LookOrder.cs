using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Looking;

/// <summary>
/// What to look at first, place by place: what a loose end asks, then what is likely in this house (what stands there, material, year, what
/// was noticed) and does much harm, then what is commonly met. Works from the facts of the property alone, before the visit too.
/// </summary>
public static class LookOrder
{
    private const int MostAsked = 3;

    // As many as stand before the inspector at a time: among them harm counts for much; after them what is commonly met comes first.
    private const int Foremost = 8;
    private const double ForHarm = 3;
    private const double ForChance = 1.2;

    /// <summary>The order in every place of the inspection; the places that such a house has, while none was added.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="judged">Its judgement.</param>
    /// <param name="book">The rule book.</param>
    public static IReadOnlyList<PlaceLooks> Of(Inspection inspection, JudgedInspection judged, RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        var ground = new LookGround(inspection, judged, book);
        if (inspection.Places.Count > 0) return [.. inspection.Places.Select(place => At(ground, place.Id, place.Kind, place.Name))];
        return inspection.Opening is { } opening
            ? [.. StartingPlaces.For(opening.Body.Property).Select(place => At(ground, null, place.Kind, place.Name))]
            : [];
    }

    /// <summary>The order in one place.</summary>
    public static PlaceLooks At(Inspection inspection, JudgedInspection judged, RuleBook book, Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return At(new LookGround(inspection, judged, book), place.Id, place.Kind, place.Name);
    }

    private static PlaceLooks At(LookGround ground, EntryName? id, string kind, string name)
    {
        var place = new LookPlace(ground, id, kind);
        List<LookScore> scores = [.. place.Conditions().Select(condition => new LookScore(ground, place, condition)).Where(score => score.Chance > 0)];
        List<LookScore> asked = Asked(ground, scores);
        List<LookScore> first = [.. asked, .. By(ForHarm, scores.Except(asked)).Take(Foremost - asked.Count)];
        return new PlaceLooks(id, kind, name, [.. first.Concat(By(ForChance, scores.Except(first))).Select(
            (score, at) => new RankedLook(score.Condition.Id, score.Condition.Component, at + 1, score.Because()))]);
    }

    private static IEnumerable<LookScore> By(double harm, IEnumerable<LookScore> scores) =>
        scores.OrderByDescending(score => score.Times(harm)).ThenBy(score => score.Condition.Id, StringComparer.Ordinal);

    /// <summary>
    /// What was noticed and asks for a look here goes before all that is only likely: of each question its likeliest answer, in the places
    /// where it is best answered, and only so many that the heavy things of the place stay in sight.
    /// </summary>
    private static List<LookScore> Asked(LookGround ground, List<LookScore> scores) =>
    [
        .. By(ForHarm, scores.Where(score => score.AskedBy is { } end && ground.IsBestFor(end, score.Condition, score.Here)))
            .DistinctBy(score => score.AskedBy!.Id).Take(MostAsked),
    ];
}
