namespace Purlin.Office.Storage;

/// <summary>A line as it was received.</summary>
public sealed class EntryRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required string Insp { get; init; }

    /// <summary>With fork mark, in the order of arrival; the fold works out its own from the lines.</summary>
    public required string Dev { get; init; }

    public required int Seq { get; init; }

    public required string Hash { get; init; }

    public string? Prev { get; init; }

    public required string Hlc { get; init; }

    public required string Type { get; init; }

    public required byte[] Raw { get; init; }

    /// <summary>Milliseconds since 1970, office time.</summary>
    public required long ReceivedAt { get; init; }
}

/// <summary>A line that failed a check, kept raw.</summary>
public sealed class HeldRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required string Insp { get; init; }

    public required string Hash { get; init; }

    public string? Name { get; init; }

    public required byte[] Raw { get; init; }

    public required string Why { get; init; }

    public required long ReceivedAt { get; init; }
}

/// <summary>One link of the office's own chain.</summary>
public sealed class ReceiptRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required int N { get; init; }

    public required string Insp { get; init; }

    /// <summary>The signed receipt as stored, for ever.</summary>
    public required byte[] Raw { get; init; }
}

/// <summary>A file held whole.</summary>
public sealed class BlobRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required string Sha { get; init; }

    public required long Size { get; init; }

    public required string MediaType { get; init; }

    public required long ReceivedAt { get; init; }
}

/// <summary>A sealed edition: what was issued, byte for byte (page and PDF are files by hash).</summary>
public sealed class EditionRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required string Insp { get; init; }

    public required int Number { get; init; }

    public required string Seal { get; init; }

    public required string Root { get; init; }

    public required string Page { get; init; }

    public required string Pdf { get; init; }

    /// <summary>Milliseconds since 1970, office time.</summary>
    public required long At { get; init; }
}

/// <summary>A session, known by the hash of its token.</summary>
public sealed class SessionRow
{
    public string Tenant { get; init; } = OfficeDb.OnlyTenant;

    public required string TokenHash { get; init; }

    public required long Until { get; init; }
}

/// <summary>A value of the office's own: its device id, the hash of the owner's code.</summary>
public sealed class SettingRow
{
    public required string Name { get; init; }

    public required string Value { get; set; }
}
