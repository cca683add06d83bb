using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;

namespace Purlin.Judgement;

/// <summary>Lists what stands in the way of issue.</summary>
internal static class Obstacles
{
    public static List<Obstacle> List(Inspection inspection, Tongue words, JudgedInspection judged)
    {
        List<Obstacle> all = [];
        foreach (var end in judged.LooseEnds.Where(end => end.Tied is null && end.Blocks))
            all.Add(new Obstacle.LooseEndOpen(end.Id) { Words = end.Question, Place = end.StillToLook.Count > 0 ? end.StillToLook[0] : null });
        foreach (var unknown in judged.Coverage.Where(coverage => coverage.Duties.Count == 0)) all.Add(new Obstacle.Unsettled([]) { Words = unknown.Title });
        foreach (var duty in judged.Coverage.SelectMany(coverage => coverage.Duties).Where(duty => duty.State == DutyStanding.Open))
            all.Add(new Obstacle.DutyOpen(duty.Id) { Words = words.Say("obstacle.duty", ("text", duty.Text), ("missing", duty.Words)), Place = duty.Places.Count > 0 ? duty.Places[0] : null });
        foreach (var duty in judged.Visit.Where(duty => duty is { State: VisitStanding.Open, BarsIssue: true }))
            all.Add(new Obstacle.VisitOpen(duty.Id) { Words = words.Say("obstacle.visit", ("name", duty.Name), ("words", duty.Words)) });
        // Photographs are spoken for in their own order.
        for (var at = 0; at < judged.Photos.Count; at++)
            if (judged.Photos[at].Use is null) all.Add(new Obstacle.PhotoUnspoken(judged.Photos[at].Id) { Words = words.Say("obstacle.photo"), Place = inspection.Photos[at].Place });
        foreach (var note in judged.Notes.Where(note => note.IsSilent))
            all.Add(new Obstacle.NoteUnspoken(note.Id) { Words = words.Say(note.Text.Length == 0 ? "obstacle.sound" : "obstacle.note", ("text", Short(note.Text))), Place = note.Place });
        foreach (var limitation in judged.Limitations)
            if (Missing(limitation) is { } missing)
                all.Add(new Obstacle.LimitationIncomplete(limitation.Id, missing) { Words = words.Say("obstacle.limitation." + missing, ("what", limitation.What)), Place = limitation.Place });
        // A fork, a far-off clock or a broken chain is shown but can never be undone, so it must not bar the issue.
        foreach (var unsettled in inspection.Unsettled.Where(unsettled => unsettled.Kind is UnsettledKind.Divergence or UnsettledKind.ParentCycle or UnsettledKind.KeepWins)) all.Add(new Obstacle.Unsettled(unsettled.Entries) { Words = unsettled.Words });
        foreach (var place in Unvisited(inspection)) all.Add(new Obstacle.PlaceUnvisited
        {
            Words = words.Say("obstacle.place", ("place", place.Name)),
            Place = place.Id,
        });
        foreach (var again in judged.Again.Where(again => again.Bars)) all.Add(new Obstacle.NotUnderstood(again.Id)
        {
            Words = again.Words,
            Place = again.Place,
        });
        if (inspection.Unknown.Count > 0)
            all.Add(new Obstacle.UnknownEntries(inspection.Unknown.Count)
            {
                Words = words.Say("obstacle.unknown", ("count", inspection.Unknown.Count)),
            });
        return all;
    }

    /// <summary>Places from which nothing is on record. A place that holds others was entered on the way to them.</summary>
    private static IEnumerable<Place> Unvisited(Inspection inspection)
    {
        HashSet<EntryName?> met =
        [
            .. inspection.Observations.Select(look => (EntryName?)look.Body.Place), .. inspection.Readings.Select(reading =>
                reading.Body.Place), .. inspection.Limitations.Select(limitation => limitation.Body.Place),
            .. inspection.Absences.Select(absence => absence.Place), .. inspection.Photos.Select(photo =>
                photo.Place), .. inspection.Components.Where(component => component.Facts.Count > 0).Select(component => component.Place),
            .. inspection.Notes.Select(note => note.About), .. inspection.Sounds.Select(sound => sound.Body.Place), .. inspection.Places
                .Select(place => place.Parent),
        ];
        return inspection.Places.Where(place => !met.Contains(place.Id));
    }

    private static string Short(string text) => text.Length <= 120 ? text : text[..117] + "...";

    private static string? Missing(JudgedLimitation limitation) => (limitation.Cause, limitation.Next) switch
    {
        (null, null) => "cause and next",
        (null, _) => "cause",
        (_, null) => "next",
        _ => null,
    };
}
