using Purlin.Field.Here;
using Purlin.Field.House;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;

namespace Purlin.Field.Walk;

/// <summary>A place on the way out, with what is still to be done there.</summary>
/// <param name="Place">The place.</param>
/// <param name="IsEntered">Whether anything was looked at, measured, photographed or stated there.</param>
/// <param name="Ends">Questions that can still be answered there.</param>
/// <param name="Asks">What one reading or fact there would settle.</param>
public sealed record Stop(Place Place, bool IsEntered, IReadOnlyList<LooseEnd> Ends, IReadOnlyList<AskedEvidence> Asks);

/// <summary>How many of the places of a kind were entered.</summary>
/// <param name="Words">What they are.</param>
/// <param name="Done">Those that were.</param>
/// <param name="Of">All of them.</param>
public sealed record Tally(string Words, int Done, int Of);

/// <summary>
/// What stands between the inspector and the door: places in the order of the shortest walk, and how much of the house was entered.
/// </summary>
public static class WayOut
{
    private static readonly string[] Outside = [PlaceKind.Site, PlaceKind.Side, PlaceKind.Roof, PlaceKind.Deck, PlaceKind.Outbuilding,
        PlaceKind.Garage];

    /// <summary>Places that nobody entered and of which nobody said why: those that the judgement bars issue for.</summary>
    public static IReadOnlyList<Place> NeverEntered(Inspection inspection, JudgedInspection? judged)
    {
        HashSet<EntryName?> never = [.. judged?.Obstacles.OfType<Obstacle.PlaceUnvisited>().Select(obstacle => obstacle.Place) ?? []];
        return [.. inspection.Places.Where(place => never.Contains(place.Id))];
    }

    /// <summary>
    /// The stops from where one stands: first here, then the rest of the floor, other floors by their height, and outdoors last.
    /// </summary>
    public static IReadOnlyList<Stop> Stops(Inspection inspection, JudgedInspection judged, EntryName? here)
    {
        HashSet<EntryName> never = [.. NeverEntered(inspection, judged).Select(place => place.Id)];
        var from = inspection.Places.FirstOrDefault(place => place.Id == here)?.Level ?? 0;
        HashSet<LooseEndId> told = [];
        List<Stop> stops = [];
        foreach (var place in inspection.Places.OrderBy(place => place.Id == here ? 0 : 1).ThenBy(place =>
            Array.IndexOf(Outside, place.Kind) < 0 ? 0 : 1)
            .ThenBy(place => Math.Abs((place.Level ?? 0) - from)).ThenBy(place => place.Order))
        {
            // A question that several places can answer is asked at the first of them.
            var ends = LookList.OpenHere(judged, place.Id).Where(end => told.Add(end.Id)).ToList();
            var asks = judged.Asks.Where(ask => ask.Place == place.Id).ToList();
            var isEntered = !never.Contains(place.Id);
            if (!isEntered || ends.Count + asks.Count > 0) stops.Add(new Stop(place, isEntered, ends, asks));
        }
        return stops;
    }

    /// <summary>How much of the house was entered, by what the places are.</summary>
    public static IReadOnlyList<Tally> Tallies(Inspection inspection)
    {
        var looked = Progress.LookedAt(inspection);
        Tally Of(string words, Func<Place, bool> which) => new(words,
            inspection.Places.Count(place => which(place) && looked.Contains(place.Id)), inspection.Places.Count(which));
        return
        [
            .. new[]
            {
                Of("Sides walked", place => place.Kind == PlaceKind.Side),
                Of("Roof, attic, below", place =>
                    place.Kind is PlaceKind.Roof or PlaceKind.Attic or PlaceKind.CrawlSpace or PlaceKind.Basement),
                Of("Rooms entered", place => !Outside.Contains(place.Kind)
                    && place.Kind is not (PlaceKind.Attic or PlaceKind.CrawlSpace or PlaceKind.Basement)),
                Of("Grounds", place => place.Kind is PlaceKind.Site or PlaceKind.Deck or PlaceKind.Outbuilding or PlaceKind.Garage),
            }.Where(tally => tally.Of > 0),
        ];
    }

    /// <summary>States that places were not looked at, and why: one limitation each.</summary>
    public static IReadOnlyList<EntryBody> Stated(IEnumerable<Place> places, string reason) =>
    [
        .. places.Select(place => new EntryBody.LimitationRecorded
        {
            Place = place.Id, What = $"{place.Name} was not looked at.", Cause = reason,
                Next = "Have it looked at once it can be reached, before you are bound.",
        }),
    ];
}
