namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>
    /// An entry is taken back. Keep wins: it has no effect against an entry that builds on its target and that the withdrawer had not seen.
    /// </summary>
    public sealed record EntryWithdrawn : EntryBody
    {
        /// <summary>Which entry.</summary>
        public required EntryName Entry { get; init; }

        /// <summary>Why, when it was more than a slip of the thumb.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<EntryWithdrawn>("entry.withdrawn");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A withdrawal";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Taken back{(Reason is null ? "" : $", because {Reason}")}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Entry = map(Entry) };

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>An entry that was taken back stands again.</summary>
    public sealed record EntryRestored : EntryBody
    {
        /// <summary>Which entry (the one that was withdrawn, not the withdrawal).</summary>
        public required EntryName Entry { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<EntryRestored>("entry.restored");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A restoration";

        /// <inheritdoc/>
        public override string Told(Called called) => "Restored";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Entry = map(Entry) };

        internal override void Check(BodyCheck check) { }
    }
}
