namespace Purlin.Journal.Merge;

/// <summary>
/// A line that failed a check. Its bytes are kept as they came, its place in its device's sequence counts, the fold passes over it, and it
/// blocks none of the lines behind it.
/// </summary>
/// <param name="Raw">The bytes.</param>
/// <param name="Hash">SHA-256 of the bytes.</param>
/// <param name="Name">Whose line it claims to be, when that much could be read.</param>
/// <param name="Why">All the reasons.</param>
public sealed record HeldLine(ReadOnlyMemory<byte> Raw, string Hash, EntryName? Name, IReadOnlyList<Refusal> Why)
{
    /// <summary>Holds this line for these reasons.</summary>
    /// <param name="raw">The bytes.</param>
    /// <param name="inspection">The inspection it should belong to; a name in another one is none.</param>
    /// <param name="why">The reasons, at least one.</param>
    public static HeldLine Of(ReadOnlyMemory<byte> raw, string? inspection, IReadOnlyList<Refusal> why) =>
        new(raw, Sha.Of(raw.Span), EntryLine.TryName(raw, out var of, out var name) && (inspection is null || of == inspection)
        ? name : null, why);
}
