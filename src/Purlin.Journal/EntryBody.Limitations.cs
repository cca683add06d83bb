using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>Something was not looked at or tested.</summary>
    public sealed record LimitationRecorded : EntryBody
    {
        /// <summary>What was not looked at or tested.</summary>
        public required string What { get; init; }

        /// <summary>Why; may be filled in later (<see cref="LimitationCompleted"/>), but issue waits for it.</summary>
        public string? Cause { get; init; }

        /// <summary>What the buyer should do about it.</summary>
        public string? Next { get; init; }

        /// <summary>The rule book's limitation, when it offered this one.</summary>
        public string? Rule { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<LimitationRecorded>("limitation.recorded", Gathered.Limitations,
            Gathered.Notes);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The limitation “{What}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Could not look: {What}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check) { }
    }
    /// <summary>
    /// The cause or the next step of a limitation, said later. In earlier journals a note about the limitation did this; both share a slot.
    /// </summary>
    public sealed record LimitationCompleted : Stating
    {
        /// <summary>The member that says why.</summary>
        public const string Cause = "cause";

        /// <summary>The member that says what the buyer should do.</summary>
        public const string Next = "next";

        /// <summary>Which limitation.</summary>
        public required EntryName Limitation { get; init; }

        /// <summary>What is said: <see cref="Cause"/> or <see cref="Next"/>.</summary>
        public required string Member { get; init; }

        /// <summary>The whole text.</summary>
        public required string Text { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<LimitationCompleted>("limitation.completed", Gathered.Limitations,
            Gathered.Notes);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => SlotOf(Limitation, Member);

        internal override string Question =>
            Member == Cause ? "why something could not be looked at" : "what the buyer should do about a limitation";

        internal override string Said => "What was said of a limitation";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Limitation, {(Member == Cause ? "why" : "what to do")}: {Text}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Limitation = map(Limitation) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("member", Member, [Cause, Next]);
            check.AtMost("text", Text, Limits.NoteCharacters);
        }

        /// <summary>The slot of one member: that of the note which filled it in earlier journals.</summary>
        internal static SlotKey SlotOf(EntryName limitation, string member) => new("note.written", limitation, member);
    }
}
