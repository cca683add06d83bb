namespace Purlin.Office.Storage;

/// <summary>A session, known by the hash of its token.</summary>
public sealed class SessionRow
{
    public required string Tenant { get; init; }

    public required string TokenHash { get; init; }

    /// <summary>When it ends by itself, in milliseconds since 1970.</summary>
    public required long Until { get; init; }

    /// <summary>The name under which the device writes its lines; empty for a browser that writes none.</summary>
    public required string Device { get; set; }

    /// <summary>When it signed in; 0 when that was not kept.</summary>
    public required long Since { get; init; }

    /// <summary>When it was last here, to the hour; 0 when that was not kept.</summary>
    public required long Seen { get; set; }
}
