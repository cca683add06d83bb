using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>The whole text of one note.</summary>
    public sealed record NoteWritten : Stating
    {
        /// <summary>
        /// The entry the note is about (place, component, observation, reading, photograph); a sound note, which is thereby written down;
        /// none for the inspection.
        /// </summary>
        public EntryName? About { get; init; }

        /// <summary>
        /// Tells several notes about one thing apart: drawn by lot for each, so that two devices never mean one. (In earlier journals also
        /// <c>cause</c>, <c>next</c> of a limitation, and <c>absent window</c>.)
        /// </summary>
        public string? Part { get; init; }

        /// <summary>The whole text.</summary>
        public required string Text { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<NoteWritten>("note.written", Gathered.Limitations, Gathered.Notes,
            Gathered.Sounds, Gathered.Absences);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, About, Part ?? "");

        internal override string Question => "the text of a note";

        internal override string Said => "A note";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Note: {Text}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { About = Maybe(About, map) };

        internal override void Check(BodyCheck check) => check.AtMost("text", Text, Limits.NoteCharacters, "; split the note");
    }

    /// <summary>A sound note was recorded; its bytes are kept by their hash.</summary>
    public sealed record SoundTaken : EntryBody
    {
        /// <summary>SHA-256 of the bytes.</summary>
        public required string Sha { get; init; }

        /// <summary>Bytes.</summary>
        public required long Size { get; init; }

        /// <summary>As the recorder named it.</summary>
        public required string MediaType { get; init; }

        /// <summary>Length.</summary>
        public double? Seconds { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<SoundTaken>("sound.taken", Gathered.Sounds);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A sound note";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Sound note, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check) => check.Blob(Sha, Size);
    }
    /// <summary>What becomes of a note or a sound note: nothing said is silent.</summary>
    public sealed record NoteFated : Stating
    {
        /// <summary>The text of the note that was in hand; none for a sound note.</summary>
        public EntryName? Note { get; init; }

        /// <summary>What that note is about, as it says itself.</summary>
        public EntryName? About { get; init; }

        /// <summary>Its part, as it says itself.</summary>
        public string? Part { get; init; }

        /// <summary>The sound note; none for a written one.</summary>
        public EntryName? Sound { get; init; }

        /// <summary>See <see cref="Fate"/>.</summary>
        public required string How { get; init; }

        /// <summary>What it is called as a matter of its own.</summary>
        public string? Title { get; init; }

        /// <summary>The words as they go into the report; the note's own when not said.</summary>
        public string? Text { get; init; }

        /// <summary>A weight's word, for a matter of its own.</summary>
        public string? Weight { get; init; }

        /// <summary>What to do, for a matter of its own.</summary>
        public string? Recommendation { get; init; }

        /// <summary>Who does it, for a matter of its own.</summary>
        public string? Trade { get; init; }

        /// <summary>The thing or place it goes under, or that it is a matter of.</summary>
        public EntryName? Under { get; init; }

        /// <summary>Why it is kept out.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<NoteFated>("note.fated", Gathered.Notes, Gathered.Sounds);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => Sound is { } sound ? new(ItsKind.Type, sound, "", "sound") : SlotOf(About, Part);

        internal override string Question => "what becomes of a note";

        internal override string Said => "What becomes of a note";

        /// <inheritdoc/>
        public override string Told(Called called) => How switch
        {
            Fate.Matter => $"A matter of its own: {Title}",
            Fate.Under => "Note put in the report",
            _ => $"Note kept out, because {Reason}",
        };

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Note = Maybe(Note, map), About = Maybe(About, map), Sound = Maybe(Sound, map), Under = Maybe(Under, map) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("how", How, Fate.All);
            check.Must(Note is null != Sound is null, "note", Note is null
                ? new Said("journal.given.nothing") : new Said("journal.given.note-sound-note"), "journal.wanted.note-or-sound-note");
            check.Must(How != Fate.Matter
                || (Title is { Length: > 0 } && Weight is { Length: > 0 }), "matter", "journal.given.no-title-or-no-weight",
                "journal.wanted.what-called-how-much-matters");
            check.Must(How != Fate.Under
                || Under is not null, "under", "journal.given.nothing", "journal.wanted.thing-or-place-goes-under");
            check.Must(How != Fate.KeptOut || Reason is { Length: > 0 }, "reason", "journal.given.nothing", "journal.wanted.why-kept-out");
            check.AtMost("title", Title, 200);
            check.AtMost("text", Text, Limits.NoteCharacters);
            check.AtMost("weight", Weight, 40);
            check.AtMost("trade", Trade, 200);
            check.AtMost("recommendation", Recommendation, Limits.SentenceCharacters);
            check.AtMost("reason", Reason, Limits.SentenceCharacters);
        }

        /// <summary>The slot of a written note's fate.</summary>
        internal static SlotKey SlotOf(EntryName? about, string? part) => new("note.fated", about, part ?? "", "note");
    }
}

/// <summary>What becomes of a note.</summary>
public static class Fate
{
    /// <summary>It is a matter of its own.</summary>
    public const string Matter = "matter";

    /// <summary>It goes under a thing or a place in the report.</summary>
    public const string Under = "under";

    /// <summary>It is kept out of the report; a reason goes with it.</summary>
    public const string KeptOut = "kept out";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Matter, Under, KeptOut];
}
