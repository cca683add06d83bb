using System.Text.Json;
using Purlin.Journal.Merge;

namespace Purlin.Journal.Archive;

/// <summary>The lines of an archive, checked against its manifest; the files beside them are whoever reads the archive to check.</summary>
public sealed class ArchivedLines
{
    private readonly LineBlock block;

    private ArchivedLines(Manifest manifest, LineBlock block) => (Manifest, this.block) = (manifest, block);

    /// <summary>What the archive holds.</summary>
    public Manifest Manifest { get; }

    /// <summary>Its readable lines.</summary>
    public IReadOnlyList<Entry> Entries => block.Entries;

    /// <summary>Lines this program cannot read, kept as they came.</summary>
    public IReadOnlyList<HeldLine> Held => block.Held;

    /// <summary>
    /// Reads <c>manifest.json</c> and <c>journal.jsonl</c>; refused with all the reasons why they do not belong together.
    /// </summary>
    public static Checked<ArchivedLines> Read(byte[] manifest, byte[] journal)
    {
        ArgumentNullException.ThrowIfNull(manifest);
        ArgumentNullException.ThrowIfNull(journal);
        var parsed = Parse(manifest);
        if (!parsed.IsAccepted) return Checked<ArchivedLines>.Refused(parsed.Refusals);
        var known = parsed.OrThrow();
        if (LineLimits.TooMany(ArchiveNames.Journal, journal) is { } tooMany) return tooMany;
        if (Sha.Of(journal) != known.Journal)
            return new Refusal(ArchiveNames.Journal, "journal.given.other-bytes-than-manifest-says",
                "journal.wanted.lines-they-written-something-altered");
        var lines = LineBlock.Read(journal, known.Inspection);
        List<Refusal> refusals = [.. Lines(known, lines), .. Names(known)];
        return refusals.Count > 0 ? Checked<ArchivedLines>.Refused(refusals) : new ArchivedLines(known, lines);
    }

    private static IEnumerable<Refusal> Names(Manifest manifest)
    {
        HashSet<string> listed = new(StringComparer.Ordinal) { ArchiveNames.Manifest, ArchiveNames.Journal };
        return manifest.Files.Where(file => !listed.Add(file.Name))
            .Select(file => new Refusal(ArchiveNames.Manifest, new Said("journal.given.count-twice", ("count", BodyJson.Short(file.Name))),
                "journal.wanted.every-file-once"));
    }

    private static Checked<Manifest> Parse(byte[] text)
    {
        try
        {
            var manifest = JsonSerializer.Deserialize(text, ManifestContext.Default.Manifest);
            if (manifest is null || manifest.Format != Manifest.FormatName)
                return new Refusal(ArchiveNames.Manifest, Said.Verbatim(BodyJson.Short(manifest?.Format ?? "null")),
                    new Said("journal.wanted.format-most", ("most", $"{Manifest.FormatName}")));
            if (manifest.Version > 1)
                return new Refusal(ArchiveNames.Manifest, new Said("journal.given.version-count", ("count", manifest.Version)),
                    "journal.wanted.version-1-newer-program-wrote");
            if (manifest.Files.Any(file => file is null))
                return new Refusal(ArchiveNames.Manifest, "journal.given.null-files", "journal.wanted.files-only");
            return manifest;
        }
        catch (JsonException wrong)
        {
            return new Refusal(ArchiveNames.Manifest, Said.Verbatim(BodyJson.Short(wrong.Path ?? "$")),
                "journal.wanted.json-docs-schema-manifest-schema");
        }
    }

    private static IEnumerable<Refusal> Lines(Manifest manifest, LineBlock block)
    {
        if (block.Torn is not null)
            yield return new Refusal(ArchiveNames.Journal, "journal.given.last-line-cut-off", "journal.wanted.whole-lines");
        if (LineLimits.Refuse(ArchiveNames.Journal, block) is { } beyond)
        {
            yield return beyond;
            yield break;
        }

        if (block.Held.Any(line => line.Why.Any(why => why.Input == "insp")))
        {
            yield return new Refusal(ArchiveNames.Journal, "journal.given.lines-another-inspection",
                new Said("journal.wanted.lines-most", ("most", $"{manifest.Inspection}")));
            yield break;
        }

        // A program of another age may read more or fewer of the lines, but there are as many of them.
        if (manifest.Entries < 0 || manifest.Held < 0 || manifest.Entries + (long)manifest.Held != block.Entries.Count + block.Held.Count)
            yield return new Refusal(ArchiveNames.Manifest,
                new Said("journal.given.entries-held", ("entries", manifest.Entries), ("held", $"{manifest.Held}")),
                new Said("journal.wanted.number-lines", ("most", block.Entries.Count + block.Held.Count)));
        if (Merkle.Root([.. block.Entries.Select(entry => entry.Hash), .. block.Held.Select(line => line.Hash)]) != manifest.LinesRoot)
            yield return new Refusal(ArchiveNames.Manifest, "journal.given.another-root-than-lines",
                "journal.wanted.manifest-written-with-these-lines");
        var set = EntrySet.Of(manifest.Inspection, block.Entries, block.Held);
        if (set.Branches > Limits.Branches)
            yield return new Refusal(ArchiveNames.Journal, new Said("journal.given.branches-devices", ("count", set.Branches)),
                new Said("journal.wanted.most-most", ("most", Limits.Branches)));
        // Only with as many read are the heads the same.
        else if (block.Held.Count == manifest.Held && !Sorted(set.Heads()).SequenceEqual(Sorted(manifest.Heads)))
            yield return new Refusal(ArchiveNames.Manifest, "journal.given.other-heads-than-lines",
                "journal.wanted.manifest-written-with-these-lines");
    }

    private static IEnumerable<KeyValuePair<string, int>> Sorted(IReadOnlyDictionary<string, int> heads) =>
        heads.OrderBy(head => head.Key, StringComparer.Ordinal);
}
