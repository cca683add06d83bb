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
        foreach (var again in judged.Again.Where(again => again.Bars)) all.Add(new Obstacle.NotUnderstood(again.Id) { Words = again.Words,
            Place = again.Place });
        if (inspection.Unknown.Count > 0)
            all.Add(new Obstacle.UnknownEntries(inspection.Unknown.Count) { Words = words.Say("obstacle.unknown", ("count",
                inspection.Unknown.Count)) });
        return all;
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
