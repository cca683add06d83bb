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
    private const string StandardInput = "-";
    private const long MostPiped = 512L * 1024 * 1024;

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
        if (path == StandardInput) return Streamed(Console.OpenStandardInput(), path);
        if (Directory.Exists(path) || !File.Exists(path)) return new Refusal("file", path,
            "a file that exists: NAME.purlin or NAME.jsonl, or - for standard input");
        FileStream file;
        try
        {
            file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception failed) when (failed is UnauthorizedAccessException or IOException)
        {
            return new Refusal("file", path, "a file that may be read");
        }
        if (!file.CanSeek) return Streamed(file, path);
        if (path.EndsWith(".purlin", StringComparison.OrdinalIgnoreCase) || IsArchive(file)) return Archive(file);
        using (file) return file.Length > Limits.JournalBytes ? TooLong(path) : Lines(path, ReadAll(file));
    }

    /// <summary>
    /// A pipe is read to its end before anything is made of it: an archive is read from its directory, which stands last.
    /// </summary>
    private static Checked<InspectionFile> Streamed(Stream pipe, string path)
    {
        MemoryStream held = new();
        using (pipe)
        {
            var block = new byte[64 * 1024];
            int read;
            while ((read = pipe.Read(block)) > 0)
            {
                held.Write(block, 0, read);
                if (held.Length > MostPiped) return new Refusal("file", $"{path}, more than {MostPiped} bytes on a pipe",
                    "a file; write it to disk first");
            }
        }
        held.Position = 0;
        if (IsArchive(held)) return Archive(held);
        return held.Length > Limits.JournalBytes ? TooLong(path) : Lines(path, held.ToArray());
    }

    private static Checked<InspectionFile> Archive(Stream stream)
    {
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

    private static Refusal TooLong(string path) => new("file", $"{path} of more than {Limits.JournalBytes} bytes",
        "the lines of one inspection");

    private static byte[] ReadAll(FileStream file)
    {
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Whether it begins as a zip file does; whatever its name is.</summary>
    private static bool IsArchive(Stream stream)
    {
        Span<byte> head = stackalloc byte[2];
        var isZip = stream.ReadAtLeast(head, 2, throwOnEndOfStream: false) == 2 && head is [(byte)'P', (byte)'K'];
        stream.Position = 0;
        return isZip;
    }

    private static Checked<InspectionFile> Lines(string path, byte[] file)
    {
        // Editors put a mark at the head of a file that is no part of its first line.
        var bytes = file is [0xEF, 0xBB, 0xBF, ..] ? file.AsMemory(3) : file.AsMemory();
        if (LineLimits.TooMany("file", bytes.Span) is { } tooMany) return tooMany;
        var block = LineBlock.Read(bytes);
        if (block.Entries.Count == 0)
        {
            const int Shown = 5;
            return Checked<InspectionFile>.Refused([new Refusal("file", $"{path} holds no readable line",
                "journal lines, one JSON object a line"), .. block.Held.Take(Shown).SelectMany(held => held.Why)]);
        }
        if (block.Entries.Select(entry => entry.Inspection).Distinct().Count() > 1) return new Refusal("file", $"{path} holds lines of several inspections", "lines of one inspection");
        if (LineLimits.Refuse("file", block) is { } beyond) return beyond;
        var set = EntrySet.Of(block.Entries[0].Inspection, block.Entries);
        if (set.Branches > Limits.Branches) return new Refusal("file", $"{set.Branches} branches of its devices", $"at most {Limits.Branches}");
        return new InspectionFile(null, block.Entries, block.Held, block.TornWords);
    }
}
