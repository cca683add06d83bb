using Purlin.Field.Visits;
using Purlin.Journal;

namespace Purlin.Field.House;

/// <summary>An act in a few words, for the list of the last ones.</summary>
public static class ActWords
{
    public static string Of(EntryBody body, OpenVisit visit) => body switch
    {
        EntryBody.ObservationMade made => $"{Condition(made, visit)}: {made.Outcome}, {Place(made.Place, visit)}",
        EntryBody.ReadingTaken taken => $"{taken.Kind} {taken.Amount}, {Place(taken.Place, visit)}",
        EntryBody.PhotoTaken taken => $"Photograph, {Place(taken.Place, visit)}",
        EntryBody.SoundTaken taken => $"Sound note, {Place(taken.Place, visit)}",
        EntryBody.NoteWritten note => $"Note: {note.Text}",
        EntryBody.PlaceAdded place => $"Place: {place.Name}",
        EntryBody.ComponentAdded component => $"{component.Kind}, {Place(component.Place, visit)}",
        EntryBody.FactStated fact => $"{fact.Fact}: {fact.Value} ({fact.Basis})",
        EntryBody.LimitationRecorded limitation => $"Could not look: {limitation.What}",
        EntryBody.PhotoPlaced placed => $"Photograph spoken for: {placed.Use}",
        EntryBody.LooseEndTied tied => $"Loose end tied by {tied.How}",
        EntryBody.DutyMet duty => $"Duty closed: {duty.How}",
        EntryBody.JudgementOverruled overruled => $"Overruled: {overruled.Part}{(overruled.Value.Length > 0 ? $", {overruled.Value}" : "")}, because {overruled.Reason}",
        EntryBody.WordingSaid said => said.Now.Length > 0 ? $"Said my way: {said.Now}" : $"Said as the book does: {said.Key}",
        EntryBody.ConditionWritten written => $"Own condition: {written.Id}{(written.Condition is null ? ", given up" : "")}",
        _ => body.Type,
    };

    private static string Condition(EntryBody.ObservationMade made, OpenVisit visit) =>
        made.Condition is { } id && visit.Book.Conditions.TryGetValue(id, out var condition) ? condition.Name : made.Words ?? "Observation";

    private static string Place(EntryName? place, OpenVisit visit) => visit.Inspection.Places.FirstOrDefault(one => one.Id == place)?.Name ?? "whole house";
}
