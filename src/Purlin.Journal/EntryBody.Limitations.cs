using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>Something was not looked at or tested.</summary>
    public sealed record LimitationRecorded : EntryBody
    {
        /// <summary>What was not looked at or tested.</summary>
        public required string What { get; init; }

        /// <summary>Why; may be filled in later by a note of state, but issue waits for it.</summary>
        public string? Cause { get; init; }

        /// <summary>What the buyer should do about it.</summary>
        public string? Next { get; init; }

        /// <summary>The rule book's limitation, when it offered this one.</summary>
        public string? Rule { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<LimitationRecorded>("limitation.recorded", Gathered.Limitations, Gathered.Notes);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The limitation “{What}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Could not look: {What}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = Maybe(Place, map), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check) { }
    }
}
