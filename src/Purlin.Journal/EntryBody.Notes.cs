using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>The whole text of one note.</summary>
    public sealed record NoteWritten : Stating
    {
        /// <summary>The entry the note is about (place, component, observation, reading, photograph, limitation); none for the inspection.</summary>
        public EntryName? About { get; init; }

        /// <summary>Tells several notes about one thing apart, and the parts of a limitation filled in later: <c>cause</c>, <c>next</c>.</summary>
        public string? Part { get; init; }

        /// <summary>The whole text.</summary>
        public required string Text { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<NoteWritten>("note.written", Gathered.Limitations, Gathered.Notes);

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

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = Maybe(Place, map), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check) => check.Blob(Sha, Size);
    }
}
