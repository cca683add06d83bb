namespace Purlin.Journal;

/// <summary>
/// One line of the journal. <see cref="Line"/> holds the bytes written first: they are the entry for ever, stored, sent and hashed as
/// received and never serialised again.
/// </summary>
public sealed class Entry
{
    /// <summary>The UTF-8 bytes of the line, without its line end.</summary>
    public required ReadOnlyMemory<byte> Line { get; init; }

    /// <summary>SHA-256 of <see cref="Line"/>, 64 lower-case hexadecimal digits.</summary>
    public required string Hash { get; init; }

    /// <summary>Version of the line format.</summary>
    public required int Version { get; init; }

    /// <summary>The inspection it belongs to.</summary>
    public required string Inspection { get; init; }

    /// <summary>Its name as written. The second branch of a fork goes by a name with a fork mark in the fold.</summary>
    public required EntryName Name { get; init; }

    /// <summary>When, as the writing device believed.</summary>
    public required Hlc Hlc { get; init; }

    /// <summary>Hash of this device's line before; none for its first.</summary>
    public string? Previous { get; init; }

    /// <summary>Other devices' highest sequence known when writing, where changed since this device's line before.</summary>
    public required IReadOnlyDictionary<string, int> Seen { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody Body { get; init; }

    /// <summary>What of the body was not taken as it was written; empty for a line as this program writes it.</summary>
    public IReadOnlyList<Misread> Misread { get; init; } = [];

    /// <inheritdoc/>
    public override string ToString() => $"{Name} {Body.Type}";
}
