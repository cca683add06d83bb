using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Says how each photograph is spoken for, so that none shows what the text leaves out.</summary>
internal static class PhotoSpeaking
{
    public static List<SpokenPhoto> Speak(EvidenceIndex evidence, IReadOnlyList<Finding> findings, IReadOnlyList<Sighting> looks, IReadOnlyList<JudgedLimitation> limitations)
    {
        Dictionary<EntryName, string> findingOf = [];
        foreach (var finding in findings)
            foreach (var entry in finding.Evidence) findingOf.TryAdd(entry, finding.Id);
        var clear = looks.Where(look => look.Outcome == Outcome.Clear).SelectMany(look => look.Entries).ToHashSet();
        var hidden = looks.Where(look => look.Outcome == Outcome.NotVisible).SelectMany(look => look.Entries).Concat(limitations.Select(limitation => limitation.Id)).ToHashSet();

        var readings = evidence.Inspection.Readings.Select(reading => reading.Id).ToHashSet();
        hidden.UnionWith(readings);
        List<SpokenPhoto> spoken = [];
        foreach (var photo in evidence.Inspection.Photos)
        {
            var finding = photo.For is { } named && findingOf.TryGetValue(named, out var id) ? id : null;
            var placed = photo.Placed?.Value;
            var use = placed?.Use ?? (finding is not null ? PhotoUse.Finding : photo.For is { } about ? UseOf(about, clear, hidden, evidence) : null);
            spoken.Add(new SpokenPhoto(photo.Id, use, use == PhotoUse.Finding ? finding : null, placed?.Caption));
        }
        return spoken;
    }

    /// <summary>A photograph taken for a reading, a limitation or a clear look says by that what it is for.</summary>
    private static string? UseOf(EntryName about, HashSet<EntryName> clear, HashSet<EntryName> hidden, EvidenceIndex evidence)
    {
        if (clear.Contains(about)) return PhotoUse.Fine;
        if (hidden.Contains(about)) return PhotoUse.Context;
        return evidence.Withdrawn.Contains(about) ? null : PhotoUse.Context;
    }
}
