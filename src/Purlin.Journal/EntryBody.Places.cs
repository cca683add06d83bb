using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    private static void LevelIn(BodyCheck check, double? level)
    {
        if (level is { } at) new Level(at, LevelForm.Full).Check(check);
    }

    /// <summary>A place is there.</summary>
    public sealed record PlaceAdded : EntryBody
    {
        /// <summary>Kind of place, see <see cref="PlaceKind"/>.</summary>
        public required string Kind { get; init; }

        /// <summary>What people call it.</summary>
        public required string Name { get; init; }

        /// <summary>The place it is in; none for a place of the site or the house itself.</summary>
        public EntryName? Parent { get; init; }

        /// <summary>Storey: 0 is the ground floor, -1 below it; none outdoors.</summary>
        public int? Storey { get; init; }

        /// <summary>
        /// Height of its floor in storeys, in halves, where a whole storey does not say it: -0.5 for the lower level of a split level.
        /// </summary>
        public double? Level { get; init; }

        /// <summary>The part of the house it belongs to; that of the place it is in when not said, else the main part.</summary>
        public EntryName? Part { get; init; }

        /// <summary>Fractional key among its neighbours; clashes fall to the tie-break.</summary>
        public double? Order { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PlaceAdded>("place.added", Gathered.Places);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The place “{Name}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Place: {Name}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Parent = Maybe(Parent, map), Part = Maybe(Part, map) };

        internal override void Check(BodyCheck check) => LevelIn(check, Level);
    }

    /// <summary>What a place is called.</summary>
    public sealed record PlaceNamed : Stating
    {
        /// <summary>Which place.</summary>
        public required EntryName Place { get; init; }

        /// <summary>Its name from now on.</summary>
        public required string Name { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PlaceNamed>("place.named", Gathered.Places);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Place, "");

        internal override string Question => "the name of a place";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Place called: {Name}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = map(Place) };

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>Where a place hangs in the tree.</summary>
    public sealed record PlacePlaced : Stating
    {
        /// <summary>Which place.</summary>
        public required EntryName Place { get; init; }

        /// <summary>The place it is in; none at the top.</summary>
        public EntryName? Parent { get; init; }

        /// <summary>
        /// The part of the house it belongs to from now on, the opening entry for the main part; as before when not said.
        /// </summary>
        public EntryName? Part { get; init; }

        /// <summary>Height of its floor in storeys, in halves, from now on; as before when not said.</summary>
        public double? Level { get; init; }

        /// <summary>Fractional key among its neighbours.</summary>
        public double? Order { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PlacePlaced>("place.placed", Gathered.Places);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Place, "");

        internal override string Question => "where a place belongs";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"{called.Place(Place)} put in {called.Place(Parent)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = map(Place), Parent = Maybe(Parent, map), Part = Maybe(Part, map) };

        internal override void Check(BodyCheck check) => LevelIn(check, Level);
    }
}
