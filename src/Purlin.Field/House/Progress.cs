using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.House;

/// <summary>How far the walk has come.</summary>
public static class Progress
{
    /// <summary>Places where something was looked for, measured, photographed or said. What was only stated as out of reach was not looked at.</summary>
    public static HashSet<EntryName> LookedAt(Inspection inspection)
    {
        HashSet<EntryName> known = [.. inspection.Places.Select(place => place.Id)];
        HashSet<EntryName> looked = [];
        foreach (var observation in inspection.Observations) looked.Add(observation.Body.Place);
        foreach (var reading in inspection.Readings) if (reading.Body.Place is { } place) looked.Add(place);
        foreach (var photo in inspection.Photos) if (photo.Place is { } place) looked.Add(place);
        foreach (var component in inspection.Components) if (component.Place is { } place) looked.Add(place);
        foreach (var absence in inspection.Absences) if (absence.Place is { } place) looked.Add(place);
        foreach (var note in inspection.Notes) if (note.About is { } about) looked.Add(about);
        looked.IntersectWith(known);
        return looked;
    }
}
