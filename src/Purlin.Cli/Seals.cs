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
        foreach (var group in inspection.Editions.GroupBy(edition => edition.Body.Number).OrderBy(group => group.Key))
        {
            // Two devices that had not seen one another may each have sealed: both stand, and it is said.
            if (group.Count() > 1) yield return $"edition {group.Key}: it was sealed {group.Count()} times, by {string.Join(" and ", group.Select(edition => edition.Id.Device).Distinct(StringComparer.Ordinal))}";
            HashSet<string?> before = [.. inspection.Editions.Where(edition => edition.Body.Number == group.Key - 1).Select(edition => (string?)edition.Seal)];
            if (before.Count == 0) before.Add(null);
            foreach (var words in group.SelectMany((edition, at) => Amiss(file, set, edition, before, at == 0))) yield return words;
        }
    }

    private static IEnumerable<string> Amiss(InspectionFile file, EntrySet set, SealedEdition edition, HashSet<string?> before, bool isFirst)
    {
        var (number, body) = (edition.Body.Number, edition.Body);
        if (Merkle.Root(set.Under(body.Heads).Select(entry => entry.Hash)) != body.EntriesRoot)
            yield return $"edition {number}: the lines under it are not the ones that were sealed";
        if (!before.Contains(body.PreviousEdition)) yield return $"edition {number}: the edition before it is not the one it names";
        // An archive holds one page and one PDF under a number.
        if (!file.HasPhotos || !isFirst) yield break;
        foreach (var (name, sealedHash) in new[] { (ArchiveNames.Page(number), body.Page), (ArchiveNames.Pdf(number), body.Pdf) })
        {
            if (file.Extra(name) is not { } bytes) yield return $"edition {number}: {name} is not in the archive";
            else if (Sha.Of(bytes) != sealedHash) yield return $"edition {number}: {name} is not the one that was sealed";
        }
    }
}
