using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Cli;

/// <summary>Whether each sealed edition still is what was sealed: the lines under it, its page, its PDF, the edition before it.</summary>
internal static class Seals
{
    public static IEnumerable<string> Amiss(InspectionFile file)
    {
        var inspection = file.Inspection;
        if (inspection.Editions.Count == 0) yield break;
        var set = EntrySet.Of(inspection.Id, file.Entries, file.Held);
        string? before = null;
        foreach (var edition in inspection.Editions.OrderBy(edition => edition.Body.Number))
        {
            foreach (var words in Amiss(file, set, edition, before)) yield return words;
            before = edition.Seal;
        }
    }

    private static IEnumerable<string> Amiss(InspectionFile file, EntrySet set, SealedEdition edition, string? before)
    {
        var (number, body) = (edition.Body.Number, edition.Body);
        if (Merkle.Root(set.Under(body.Heads).Select(entry => entry.Hash)) != body.EntriesRoot)
            yield return $"edition {number}: the lines under it are not the ones that were sealed";
        if (body.PreviousEdition != before) yield return $"edition {number}: the edition before it is not the one it names";
        if (!file.HasPhotos) yield break;
        foreach (var (name, sealedHash) in new[] { (ArchiveNames.Page(number), body.Page), (ArchiveNames.Pdf(number), body.Pdf) })
        {
            if (file.Extra(name) is not { } bytes) yield return $"edition {number}: {name} is not in the archive";
            else if (Sha.Of(bytes) != sealedHash) yield return $"edition {number}: {name} is not the one that was sealed";
        }
    }
}
