using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Report;

namespace Purlin.Cli;

/// <summary>An inspection read from a file: an archive <c>NAME.purlin</c>, or bare journal lines <c>NAME.jsonl</c>.</summary>
internal sealed class InspectionFile : IDisposable
{
    private readonly OpenedArchive? archive;

    private InspectionFile(OpenedArchive? archive, IReadOnlyList<Entry> entries, IReadOnlyList<HeldLine> held, string? torn)
    {
        this.archive = archive;
        Held = held;
        Torn = torn;
        Entries = entries;
        Inspection = Folding.Fold(entries);
    }

    public IReadOnlyList<Entry> Entries { get; }

    public IReadOnlyList<HeldLine> Held { get; }

    /// <summary>One sentence when the last line was cut off.</summary>
    public string? Torn { get; }

    public Inspection Inspection { get; }

    public static Checked<InspectionFile> Open(string path)
    {
        if (!File.Exists(path)) return new Refusal("file", path, "a file that exists: NAME.purlin or NAME.jsonl");
        if (path.EndsWith(".jsonl", StringComparison.OrdinalIgnoreCase)) return Lines(path);
        var stream = File.OpenRead(path);
        if (!stream.CanSeek)
        {
            stream.Dispose();
            return new Refusal("file", $"{path}, a pipe", "a file; write it to disk first");
        }
        return ArchiveReader.Open(stream).Match<Checked<InspectionFile>>(
            archive => new InspectionFile(archive, archive.Entries, archive.Held, null),
            refusals =>
            {
                stream.Dispose();
                return Checked<InspectionFile>.Refused(refusals);
            });
    }

    /// <summary>Worked through with this book; the clock counts only while the journal has no opening.</summary>
    public Work Work(RuleBook book, TimeProvider clock) => Report.Work.Of(Inspection, Entries, book, clock.GetLocalNow().Year, new JudgingMemory());

    public byte[]? Photo(string sha) => archive?.Photo(sha);

    /// <summary>A file of the archive beside journal and photographs; none when it is not there.</summary>
    public byte[]? Extra(string name) => archive?.File(name);

    public bool HasPhotos => archive is not null;

    public void Dispose() => archive?.Dispose();

    private static Checked<InspectionFile> Lines(string path)
    {
        if (new FileInfo(path).Length > Limits.JournalBytes) return new Refusal("file", $"{path} of more than {Limits.JournalBytes} bytes", "the lines of one inspection");
        var bytes = File.ReadAllBytes(path);
        if (LineLimits.TooMany("file", bytes) is { } tooMany) return tooMany;
        var block = LineBlock.Read(bytes);
        if (block.Entries.Count == 0) return new Refusal("file", $"{path} holds no readable line", "journal lines, one JSON object a line");
        if (block.Entries.Select(entry => entry.Inspection).Distinct().Count() > 1) return new Refusal("file", $"{path} holds lines of several inspections", "lines of one inspection");
        if (LineLimits.Refuse("file", block) is { } beyond) return beyond;
        var set = EntrySet.Of(block.Entries[0].Inspection, block.Entries);
        if (set.Branches > Limits.Branches) return new Refusal("file", $"{set.Branches} branches of its devices", $"at most {Limits.Branches}");
        return new InspectionFile(null, block.Entries, block.Held, block.TornWords);
    }
}
