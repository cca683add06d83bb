namespace Purlin.Journal.Merge;

/// <summary>
/// What the lines of one inspection may be together, wherever they come from: asked before anything is worked out from them.
/// </summary>
public static class LineLimits
{
    private const int Lines = Limits.Entries + Limits.OfficeEntries + Limits.HeldLines;

    /// <summary>
    /// Why these bytes are not even parsed: more of them, or more lines, than an inspection can have. None when they may be.
    /// </summary>
    public static Refusal? TooMany(string input, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > Limits.JournalBytes)
            return new Refusal(input, new Said("journal.given.count-bytes", ("count", bytes.Length)),
                new Said("journal.wanted.most-most", ("most", Limits.JournalBytes)));
        var lines = bytes.Count((byte)'\n');
        return lines > Lines ? new Refusal(input, new Said("journal.given.count-lines", ("count", lines)),
            new Said("journal.wanted.most-most", ("most", Lines))) : null;
    }

    /// <summary>
    /// Why these lines are not folded: too many of a kind. None when they may be. Branches are counted by <see cref="EntrySet.Branches"/>.
    /// </summary>
    public static Refusal? Refuse(string input, LineBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        if (block.Entries.Count > Limits.Entries + Limits.OfficeEntries)
            return new Refusal(input, new Said("journal.given.count-lines", ("count", block.Entries.Count)),
                new Said("journal.wanted.most-most", ("most", Limits.Entries)));
        if (block.Held.Count > Limits.HeldLines)
            return new Refusal(input, new Said("journal.given.lines-cannot-read", ("count", block.Held.Count)),
                new Said("journal.wanted.most-most", ("most", Limits.HeldLines)));
        var devices = block.Entries.Select(entry => entry.Name.Device).Distinct(StringComparer.Ordinal).Count();
        // The office writes too, with a device of its own.
        return devices > Limits.Devices + 1
            ? new Refusal(input, new Said("journal.given.lines-devices", ("count", devices)),
            new Said("journal.wanted.most-most", ("most", $"{Limits.Devices}"))) : null;
    }
}
