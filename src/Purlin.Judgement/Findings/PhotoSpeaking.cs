using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Says how each photograph is spoken for, so that none shows what the text leaves out.</summary>
internal static class PhotoSpeaking
{
    public static List<SpokenPhoto> Speak(Inspection inspection, EvidenceIndex evidence, Looks looks, IReadOnlyList<Finding> findings)
    {
        Dictionary<EntryName, FindingId> findingOf = [];
        foreach (var finding in findings)
            foreach (var entry in finding.Evidence) findingOf.TryAdd(entry, finding.Id);
        List<SpokenPhoto> spoken = new(inspection.Photos.Count);
        foreach (var photo in inspection.Photos)
        {
            FindingId? finding = photo.For is { } named && findingOf.TryGetValue(named, out var id) ? id : null;
            var use = photo.Use ?? (finding is not null ? PhotoUse.Finding : photo.For is { } about ? UseOf(about, looks, evidence) : null);
            spoken.Add(new SpokenPhoto(photo.Id, use, use == PhotoUse.Finding ? finding : null, photo.Caption));
        }
        return spoken;
    }

    /// <summary>A photograph taken for a reading, a limitation or a clear look says by that what it is for.</summary>
    private static string? UseOf(EntryName about, Looks looks, EvidenceIndex evidence)
    {
        foreach (var look in looks.By(about))
            if (look.Outcome == Outcome.Clear) return PhotoUse.Fine;
        return evidence.IsWithdrawn(about) ? null : PhotoUse.Context;
    }
}
