using Purlin.Book;
using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Understanding;

/// <summary>
/// Puts what is on record into the names of the book before it is judged, so that one thing is not judged under two names and nothing is
/// passed over
/// because of a letter. What did not change is the same object as before, list by list and thing by thing. For one inspection and one
/// thread.
/// </summary>
internal sealed class Renaming
{
    private readonly Understood<Place> places = new();
    private readonly Understood<Component> components = new();
    private readonly Understood<Reading> readings = new();
    private readonly Understood<Observation> observations = new();
    private readonly Understood<Absence> absences = new();
    private readonly Understood<Opening> openings = new();
    private RuleBook? book;

    /// <summary>The inspection in the names of the book, and what is to be looked at again.</summary>
    public (Inspection Inspection, IReadOnlyList<LookAgain> Again) Of(Inspection inspection, RuleBook now)
    {
        if (!ReferenceEquals(book, now)) Forget();
        book = now;
        var names = KnownNames.Of(now);
        Telling telling = new(now.Words);
        ThingNames things = new(names, telling);
        ReadingNames measured = new(now, names, telling);
        List<LookAgain> again = [];
        inspection = inspection with
        {
            Opening = inspection.Opening is { } opening ? openings.Each([opening], new PropertyNames(names, telling).Opening,
                again)[0] : null,
            Places = places.Each(inspection.Places, things.Place, again),
            Components = components.Each(inspection.Components, things.Component, again),
            Readings = readings.Each(inspection.Readings, measured.Reading, again),
            Observations = observations.Each(inspection.Observations, things.Observation, again),
            Absences = absences.Each(inspection.Absences, things.Absence, again),
        };
        again.AddRange(new References(inspection, now, names, telling).List());
        again.AddRange(inspection.Misread.Select(telling.Misread));
        return (inspection, [.. again.Select(one => Settled(inspection, one)).DistinctBy(one => one.Id)]);
    }

    private static LookAgain Settled(Inspection inspection, LookAgain again)
    {
        var placed = again.Place is null ? again with { Place = PlaceOf(inspection, again.Entry) } : again;
        return inspection.Ties.TryGetValue(again.Id, out var tie) ? placed with { Bars = false, Settled = tie.Value.Reason ?? "" } : placed;
    }

    private static EntryName? PlaceOf(Inspection inspection, EntryName entry) =>
        inspection.Observations.FirstOrDefault(known => known.Id == entry)?.Body.Place ?? inspection.Readings.FirstOrDefault(known =>
            known.Id == entry)?.Body.Place
        ?? inspection.Components.FirstOrDefault(known => known.Id == entry)?.Place ?? inspection.Absences.FirstOrDefault(known =>
            known.Id == entry)?.Place;

    private void Forget()
    {
        places.Forget();
        components.Forget();
        readings.Forget();
        observations.Forget();
        absences.Forget();
        openings.Forget();
    }
}
