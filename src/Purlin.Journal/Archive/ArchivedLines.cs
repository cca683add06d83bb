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
            return new Refusal(ArchiveNames.Journal, "other bytes than the manifest says",
                "the lines as they were written; something was altered or lost");
        var lines = LineBlock.Read(journal, known.Inspection);
        List<Refusal> refusals = [.. Lines(known, lines), .. Names(known)];
        return refusals.Count > 0 ? Checked<ArchivedLines>.Refused(refusals) : new ArchivedLines(known, lines);
    }

    private static IEnumerable<Refusal> Names(Manifest manifest)
    {
        HashSet<string> listed = new(StringComparer.Ordinal) { ArchiveNames.Manifest, ArchiveNames.Journal };
        return manifest.Files.Where(file => !listed.Add(file.Name))
            .Select(file => new Refusal(ArchiveNames.Manifest, $"{BodyJson.Short(file.Name)} twice", "every file once"));
    }

    private static Checked<Manifest> Parse(byte[] text)
    {
        try
        {
            var manifest = JsonSerializer.Deserialize(text, ManifestContext.Default.Manifest);
            if (manifest is null || manifest.Format != Manifest.FormatName)
                return new Refusal(ArchiveNames.Manifest, BodyJson.Short(manifest?.Format ?? "null"), $"format {Manifest.FormatName}");
            if (manifest.Version > 1)
                return new Refusal(ArchiveNames.Manifest, $"version {manifest.Version}",
                    "version 1; a newer program wrote this archive, use it to read it");
            if (manifest.Files.Any(file => file is null)) return new Refusal(ArchiveNames.Manifest, "null in files", "files only");
            return manifest;
        }
        catch (JsonException wrong)
        {
            return new Refusal(ArchiveNames.Manifest, BodyJson.Short(wrong.Path ?? "$"), "JSON as docs/schema/manifest.schema.json has it");
        }
    }

    private static IEnumerable<Refusal> Lines(Manifest manifest, LineBlock block)
    {
        if (block.Torn is not null) yield return new Refusal(ArchiveNames.Journal, "a last line cut off", "whole lines");
        if (LineLimits.Refuse(ArchiveNames.Journal, block) is { } beyond)
        {
            yield return beyond;
            yield break;
        }

        if (block.Held.Any(line => line.Why.Any(why => why.Input == "insp")))
        {
            yield return new Refusal(ArchiveNames.Journal, "lines of another inspection", $"lines of {manifest.Inspection}");
            yield break;
        }

        // A program of another age may read more or fewer of the lines, but there are as many of them.
        if (manifest.Entries < 0 || manifest.Held < 0 || manifest.Entries + (long)manifest.Held != block.Entries.Count + block.Held.Count)
            yield return new Refusal(ArchiveNames.Manifest, $"{manifest.Entries} entries and {manifest.Held} held",
                $"the number of its lines, {block.Entries.Count + block.Held.Count}");
        if (Merkle.Root([.. block.Entries.Select(entry => entry.Hash), .. block.Held.Select(line => line.Hash)]) != manifest.LinesRoot)
            yield return new Refusal(ArchiveNames.Manifest, "another root than its lines have",
                "the manifest that was written with these lines");
        var set = EntrySet.Of(manifest.Inspection, block.Entries, block.Held);
        if (set.Branches > Limits.Branches)
            yield return new Refusal(ArchiveNames.Journal, $"{set.Branches} branches of its devices", $"at most {Limits.Branches}");
        // Only with as many read are the heads the same.
        else if (block.Held.Count == manifest.Held && !Sorted(set.Heads()).SequenceEqual(Sorted(manifest.Heads)))
            yield return new Refusal(ArchiveNames.Manifest, "other heads than its lines have",
                "the manifest that was written with these lines");
    }

    private static IEnumerable<KeyValuePair<string, int>> Sorted(IReadOnlyDictionary<string, int> heads) =>
        heads.OrderBy(head => head.Key, StringComparer.Ordinal);
}
