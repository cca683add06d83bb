namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>
    /// An entry is taken back. Keep wins: it has no effect against an entry that builds on its target and that the withdrawer had not seen.
    /// </summary>
    public sealed record EntryWithdrawn : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "entry.withdrawn";

        /// <summary>Which entry.</summary>
        public required EntryName Entry { get; init; }

        /// <summary>Why, when it was more than a slip of the thumb.</summary>
        public string? Reason { get; init; }
    }

    /// <summary>An entry that was taken back stands again.</summary>
    public sealed record EntryRestored : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "entry.restored";

        /// <summary>Which entry (the one that was withdrawn, not the withdrawal).</summary>
        public required EntryName Entry { get; init; }
    }
}
