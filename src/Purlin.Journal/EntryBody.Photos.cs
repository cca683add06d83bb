using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>A photograph was taken; its bytes are kept by their hash.</summary>
    public sealed record PhotoTaken : EntryBody
    {
        /// <summary>SHA-256 of the bytes as the browser delivered them, 64 lower-case hexadecimal digits.</summary>
        public required string Sha { get; init; }

        /// <summary>Bytes.</summary>
        public required long Size { get; init; }

        /// <summary><c>image/jpeg</c>, <c>image/png</c>, <c>image/webp</c>.</summary>
        public required string MediaType { get; init; }

        /// <summary>Pixels across, when known.</summary>
        public int? Width { get; init; }

        /// <summary>Pixels down, when known.</summary>
        public int? Height { get; init; }

        /// <summary>Where it was taken.</summary>
        public EntryName? Place { get; init; }

        /// <summary>Of what.</summary>
        public EntryName? Component { get; init; }

        /// <summary>The observation, reading or limitation it was taken for.</summary>
        public EntryName? For { get; init; }

        /// <summary>What it was taken as, see <see cref="PhotoUse"/>; none when that is still to be said.</summary>
        public string? Use { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PhotoTaken>("photo.taken", Gathered.Photos);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A photograph";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Photograph, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Component = Maybe(Component, map), For = Maybe(For, map) };

        internal override void Check(BodyCheck check)
        {
            check.Blob(Sha, Size);
            check.NoneOrOneOf("use", Use, PhotoUse.All);
            var few = (long)(Width ?? 0) * (Height ?? 0) <= Limits.PhotoPixels;
            check.Must(few, "photograph", new Said("journal.given.width-x-height-pixels", ("width", $"{Width}"), ("height", $"{Height}")),
                new Said("journal.wanted.most-pixels", ("most", $"{Limits.PhotoPixels}")));
        }
    }

    /// <summary>What a photograph shows and how it is used.</summary>
    public sealed record PhotoPlaced : Stating
    {
        /// <summary>Which photograph.</summary>
        public required EntryName Photo { get; init; }

        /// <summary>See <see cref="PhotoUse"/>.</summary>
        public required string Use { get; init; }

        /// <summary>The observation, reading or limitation whose evidence it is.</summary>
        public EntryName? For { get; init; }

        /// <summary>Where, when it differs from where it was taken.</summary>
        public EntryName? Place { get; init; }

        /// <summary>Of what.</summary>
        public EntryName? Component { get; init; }

        /// <summary>What to look at.</summary>
        public string? Caption { get; init; }

        /// <summary>Why it is held back.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PhotoPlaced>("photo.placed", Gathered.Photos);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Photo, "");

        internal override string Question => "what a photograph shows";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Photograph spoken for: {Use}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with
        {
            Photo = map(Photo),
            For = Maybe(For, map),
            Place = Maybe(Place, map),
            Component = Maybe(Component, map),
        };

        internal override void Check(BodyCheck check) => check.OneOf("use", Use, PhotoUse.All);
    }
    /// <summary>A mark is drawn on a photograph. The picture stays as it was taken; several marks stand beside one another.</summary>
    public sealed record PhotoMarked : EntryBody
    {
        /// <summary>Which photograph.</summary>
        public required EntryName Photo { get; init; }

        /// <summary>See <see cref="MarkShape"/>.</summary>
        public required string Shape { get; init; }

        /// <summary>Tail of an arrow, corner of the box around a ring, one end of a line, or where words stand.</summary>
        public required PicturePoint From { get; init; }

        /// <summary>Head of an arrow, opposite corner, other end; none for words.</summary>
        public PicturePoint? To { get; init; }

        /// <summary>Words beside it.</summary>
        public string? Words { get; init; }

        /// <summary>Length of a measured line.</summary>
        public Amount? Length { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PhotoMarked>("photo.marked", Gathered.Photos);

        internal override EntryKind OfKind => ItsKind;

        internal override EntryName? Owner => Photo;

        internal override string Said => "A mark on a photograph";

        /// <inheritdoc/>
        public override string Told(Called called) =>
            $"Mark on a photograph: {Words ?? (Length is { } length ? length.ToString() : Shape)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Photo = map(Photo) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("shape", Shape, MarkShape.All);
            foreach (var point in (PicturePoint?[])[From, To])
                if (point is { } at) check.Must(at is { X: >= 0 and <= 1, Y: >= 0 and <= 1 }, "point",
                    Journal.Said.Verbatim($"{at.X:0.###}, {at.Y:0.###}"),
                    "journal.wanted.within-picture-0-1");
            check.Must(Shape == MarkShape.Words
                ? To is null : To is not null, "to", To is null
                ? new Said("journal.given.nothing") : new Said("journal.given.point"), "journal.wanted.second-point-but-for-words");
            check.Must(Shape != MarkShape.Words
                || Words is { Length: > 0 }, "words", "journal.given.nothing", "journal.wanted.what-stand-there");
            check.Must(Length is null
                || Shape == MarkShape.Line, "length", "journal.given.on-mark-no-line", "journal.wanted.length-on-line");
            check.AtMost("words", Words, 200);
        }
    }
}

/// <summary>A point on a picture, in parts of its width and height from the upper left corner, as it is seen upright.</summary>
/// <param name="X">From the left, 0 to 1.</param>
/// <param name="Y">From above, 0 to 1.</param>
public sealed record PicturePoint(double X, double Y);

/// <summary>What can be drawn on a photograph.</summary>
public static class MarkShape
{
    /// <summary>An arrow to its head.</summary>
    public const string Arrow = "arrow";

    /// <summary>A ring in its box.</summary>
    public const string Ring = "ring";

    /// <summary>A line, with a length when it was measured.</summary>
    public const string Line = "line";

    /// <summary>Words alone.</summary>
    public const string Words = "words";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Arrow, Ring, Line, Words];
}
