using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Report.Writing;

namespace Purlin.Report.Section;

/// <summary>How a place stands: looked at or not, loose ends open there, matters pinned there.</summary>
internal sealed record Standing(bool Looked, int OpenEnds, IReadOnlyList<Pin> Pins)
{
    public static Standing Untouched { get; } = new(false, 0, []);

    /// <summary>How every place stands.</summary>
    public static IReadOnlyDictionary<EntryName, Standing> Of(Inspection inspection, JudgedInspection? judged, SectionOptions options)
    {
        var looked = LookedAt(inspection);
        var open = (judged?.LooseEnds ?? []).Where(end => end.Tied is null)
            .SelectMany(end => (end.StillToLook.Count > 0 ? end.StillToLook : OpenedIn(inspection, end)).Distinct())
            .GroupBy(place => place).ToDictionary(group => group.Key, group => group.Count());
        var pins = options.Pins ? Pin.All(judged, options) : [];
        return inspection.Places.ToDictionary(place => place.Id, place => new Standing(
            looked.Contains(place.Id), open.GetValueOrDefault(place.Id), [.. pins.Where(pin => pin.Places.Contains(place.Id))]));
    }

    private static HashSet<EntryName> LookedAt(Inspection inspection) =>
    [
        .. inspection.Observations.Select(observation => observation.Body.Place),
        .. inspection.Readings.Select(reading => reading.Body.Place).OfType<EntryName>(),
        .. inspection.Photos.Select(photo => photo.Place).OfType<EntryName>(),
        .. inspection.Components.Select(component => component.Place).OfType<EntryName>(),
        .. inspection.Absences.Select(absence => absence.Place).OfType<EntryName>(),
        .. inspection.Notes.Select(note => note.About).OfType<EntryName>(),
    ];

    private static IEnumerable<EntryName> OpenedIn(Inspection inspection, LooseEnd end) =>
        inspection.Observations.Where(observation => end.OpenedBy.Contains(observation.Id)).Select(observation => observation.Body.Place)
            .Concat(inspection.Readings.Where(reading => end.OpenedBy.Contains(reading.Id)).Select(reading => reading.Body.Place)
                .OfType<EntryName>());
}

/// <summary>A finding as it is pinned: its number is its place in the order of weight.</summary>
internal sealed record Pin(int Number, Weight Weight, string Title, IReadOnlyList<EntryName> Places, string Words)
{
    public int Bars => (int)Weight;

    /// <summary>Every finding that is in the report, heaviest first.</summary>
    public static IReadOnlyList<Pin> All(JudgedInspection? judged, SectionOptions options)
    {
        Phrase words = new(options.Words);
        return [.. (judged?.Findings ?? []).Where(finding => !finding.LeftOut).Select((finding, index) => new Pin(index + 1,
            finding.Weight, finding.Title, finding.Places, $"{index + 1}: {words.Word(finding.Weight)}, {finding.Title}")).Where(pin =>
            pin.Weight >= options.Least)];
    }
}
