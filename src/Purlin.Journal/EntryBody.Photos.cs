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

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PhotoTaken>("photo.taken", Gathered.Photos);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A photograph";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Photograph, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = Maybe(Place, map), Component = Maybe(Component, map), For = Maybe(For, map) };

        internal override void Check(BodyCheck check)
        {
            check.Blob(Sha, Size);
            var few = (long)(Width ?? 0) * (Height ?? 0) <= Limits.PhotoPixels;
            check.Must(few, "photograph", $"{Width} x {Height} pixels", $"at most {Limits.PhotoPixels} pixels");
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
}
