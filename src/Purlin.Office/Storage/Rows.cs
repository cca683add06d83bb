namespace Purlin.Office.Storage;

/// <summary>A line as it was received.</summary>
public sealed class EntryRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    /// <summary>With fork mark, in the order of arrival; the fold works out its own from the lines.</summary>
    public required string Dev { get; init; }

    public required int Seq { get; init; }

    public required string Hash { get; init; }

    public string? Prev { get; init; }

    public required string Hlc { get; init; }

    public required string Type { get; init; }

    /// <summary>The bytes; none once the inspection was erased after its time.</summary>
    public required byte[] Raw { get; init; }

    /// <summary>Milliseconds since 1970, office time.</summary>
    public required long ReceivedAt { get; init; }

    /// <summary>Number in the order of arrival within its inspection, lines in quarantine counted.</summary>
    public required int Position { get; init; }
}

/// <summary>A line that failed a check, kept raw.</summary>
public sealed class HeldRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    public required string Hash { get; init; }

    public string? Name { get; init; }

    public required byte[] Raw { get; init; }

    public required string Why { get; init; }

    public required long ReceivedAt { get; init; }

    /// <summary>Number in the order of arrival within its inspection.</summary>
    public required int Position { get; init; }
}

/// <summary>What lists and heads show of an inspection, written with its lines.</summary>
public sealed class InspectionRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    public required string Address { get; set; }

    /// <summary>Day of the visit, 2026-11-25; empty while unknown.</summary>
    public required string Date { get; set; }

    /// <summary>Address, date and id in lower case, where a search looks.</summary>
    public required string Words { get; set; }

    public required bool Demo { get; set; }

    public required int Entries { get; set; }

    public required int Held { get; set; }

    public required int Photos { get; set; }

    public required int PhotosHere { get; set; }

    public required int Editions { get; set; }

    /// <summary>JSON object, device to sequence.</summary>
    public required string Heads { get; set; }

    public required string Root { get; set; }

    public required int Position { get; set; }

    public required long ReceivedAt { get; set; }

    /// <summary>The latest receipt's number.</summary>
    public int? Receipt { get; set; }
}

/// <summary>Until when an inspection must be kept, and when it was erased after that.</summary>
public sealed class RetentionRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    /// <summary>Milliseconds since 1970.</summary>
    public required long KeepUntil { get; set; }

    /// <summary>Milliseconds since 1970, office time; none while it is kept.</summary>
    public long? ErasedAt { get; set; }
}

/// <summary>A photograph that stands in an inspection.</summary>
public sealed class PhotoRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    public required string Sha { get; init; }
}

/// <summary>One link of the office's own chain.</summary>
public sealed class ReceiptRow
{
    public required string Tenant { get; init; }

    public required int N { get; init; }

    public required string Insp { get; init; }

    /// <summary>The signed receipt as stored, for ever.</summary>
    public required byte[] Raw { get; init; }
}

/// <summary>A file held whole.</summary>
public sealed class BlobRow
{
    public required string Tenant { get; init; }

    public required string Sha { get; init; }

    public required long Size { get; init; }

    public required string MediaType { get; init; }

    public required long ReceivedAt { get; init; }

    /// <summary>When its bytes were last hashed, milliseconds since 1970, office time.</summary>
    public long HashedAt { get; set; }

    /// <summary>The file's own time of change when it was last hashed: another one means hashing again.</summary>
    public long Stamp { get; set; }
}

/// <summary>A sealed edition: what was issued, byte for byte (page and PDF are files by hash).</summary>
public sealed class EditionRow
{
    public required string Tenant { get; init; }

    public required string Insp { get; init; }

    public required int Number { get; init; }

    public required string Seal { get; init; }

    public required string Root { get; init; }

    public required string Page { get; init; }

    public required string Pdf { get; init; }

    /// <summary>Milliseconds since 1970, office time.</summary>
    public required long At { get; init; }
}

/// <summary>A value of the office's own: its device id, the hash of the owner's code.</summary>
public sealed class SettingRow
{
    public required string Tenant { get; init; }

    public required string Name { get; init; }

    public required string Value { get; set; }
}
