using Purlin.Journal;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>
/// The journals of one tenant, wherever they are kept. Lines are only ever added; who adds says what it believed to be held, and is told when that is no
/// longer so. What a list of inspections shows is kept with each journal, so that no list reads lines.
/// </summary>
public interface IJournals
{
    /// <summary>How far a journal goes; <see cref="JournalHeads.None"/> when nothing is held of it.</summary>
    Task<JournalHeads> Heads(string inspection, CancellationToken cancel);

    /// <summary>Lines in the order of their arrival, from one after this position on.</summary>
    Task<IReadOnlyList<KeptLine>> Read(string inspection, int after, CancellationToken cancel);

    /// <summary>Adds lines, receipt and what lists show, all or nothing, and only on what was expected; acknowledged when this returns true.</summary>
    Task<bool> Append(Appending what);

    /// <summary>The office's signed receipts for an inspection, first to last, as they were signed.</summary>
    Task<IReadOnlyList<byte[]>> Receipts(string inspection, CancellationToken cancel);

    /// <summary>Sealed editions of an inspection, by number.</summary>
    Task<IReadOnlyList<IssuedEdition>> Editions(string inspection, CancellationToken cancel);

    /// <summary>Inspections, newest visit first.</summary>
    Task<InspectionPage> List(ListAsk ask, CancellationToken cancel);

    /// <summary>Those of these photographs that stand in some inspection.</summary>
    Task<IReadOnlySet<string>> Shown(IReadOnlyCollection<string> hashes, CancellationToken cancel);

    /// <summary>Notes until when an inspection must be kept.</summary>
    Task KeepUntil(string inspection, DateTimeOffset until);

    /// <summary>
    /// Drops the bytes of every line of an inspection whose time has run out; names, hashes, receipts and seals stay, so that what was issued can still be
    /// recognised. False when it must still be kept, or nobody ever said how long.
    /// </summary>
    Task<bool> Erase(string inspection, DateTimeOffset now);
}

/// <summary>How far a journal goes.</summary>
public sealed record JournalHeads
{
    /// <summary>Nothing is held.</summary>
    public static JournalHeads None { get; } = new();

    /// <summary>Merkle root over the hashes of all its lines, held ones too: two journals with one root are the same journal. Empty for none.</summary>
    public string Root { get; init; } = "";

    /// <summary>Number of the line that arrived last; 0 for none.</summary>
    public int Position { get; init; }

    /// <summary>Lines kept that could not be read.</summary>
    public int Held { get; init; }

    /// <summary>Each device's last line up to which nothing is missing.</summary>
    public IReadOnlyDictionary<string, int> Heads { get; init; } = new Dictionary<string, int>();

    /// <summary>The office's latest receipt.</summary>
    public byte[]? Receipt { get; init; }

    /// <summary>Until when it must be kept, when somebody said so.</summary>
    public DateTimeOffset? KeepUntil { get; init; }

    /// <summary>When its lines were dropped.</summary>
    public DateTimeOffset? ErasedAt { get; init; }
}

/// <summary>A line as it was received.</summary>
/// <param name="Position">Its number in the order of arrival, from 1.</param>
/// <param name="Raw">Its bytes.</param>
/// <param name="Why">Why it could not be read when it came; none for an entry.</param>
public sealed record KeptLine(int Position, byte[] Raw, string? Why);

/// <summary>What is to be added to a journal in one step.</summary>
public sealed record Appending
{
    /// <summary>The inspection.</summary>
    public required string Inspection { get; init; }

    /// <summary>The root of what is believed to be held; nothing is added when something else is.</summary>
    public required string Expected { get; init; }

    /// <summary>Entries, each with the device name it is kept under (marked in the order of arrival where a device was copied).</summary>
    public required IReadOnlyList<(string Device, Entry Entry)> Taken { get; init; }

    /// <summary>Lines that failed a check.</summary>
    public required IReadOnlyList<HeldLine> Held { get; init; }

    /// <summary>What lists show of the journal once these are in.</summary>
    public required Outline Outline { get; init; }

    /// <summary>Signs the receipt that follows the tenant's last one.</summary>
    public required Func<ReceiptLink, byte[]> Sign { get; init; }

    /// <summary>The edition that one of the entries seals.</summary>
    public IssuedEdition? Edition { get; init; }

    /// <summary>Office time.</summary>
    public required DateTimeOffset At { get; init; }
}

/// <summary>Where the next receipt goes on.</summary>
/// <param name="N">Its number, from 1.</param>
/// <param name="Previous">The receipt before it as stored; none for the first.</param>
public sealed record ReceiptLink(int N, byte[]? Previous);

/// <summary>A sealed edition: page and PDF are files by hash.</summary>
/// <param name="Number">1, 2, 3, ...</param>
/// <param name="Seal">Hash of the sealing line.</param>
/// <param name="Root">Root of the lines it was made from.</param>
/// <param name="Page">Hash of the page.</param>
/// <param name="Pdf">Hash of the PDF.</param>
/// <param name="At">Office time.</param>
public sealed record IssuedEdition(int Number, string Seal, string Root, string Page, string Pdf, DateTimeOffset At);
