using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>A component is there.</summary>
    public sealed record ComponentAdded : EntryBody
    {
        /// <summary>Kind as the rule book names it: <c>water heater</c>, <c>supply piping</c>.</summary>
        public required string Kind { get; init; }

        /// <summary>Where it is; none for what runs through the whole house.</summary>
        public EntryName? Place { get; init; }

        /// <summary>The part of the house it belongs to; that of its place when not said, else the main part.</summary>
        public EntryName? Part { get; init; }

        /// <summary>The component it is a piece of: a circuit of its panel, a coil of its air handler.</summary>
        public EntryName? Of { get; init; }

        /// <summary>What tells it from its like: <c>upstairs unit</c>.</summary>
        public string? Name { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ComponentAdded>("component.added", Gathered.Components,
            Gathered.StrayFacts);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The component “{Name ?? Kind}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"{Kind}, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Part = Maybe(Part, map), Of = Maybe(Of, map) };

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>Where a component belongs from now on: all of it is said again.</summary>
    public sealed record ComponentPlaced : Stating
    {
        /// <summary>Which component.</summary>
        public required EntryName Component { get; init; }

        /// <summary>Where it is; none for what runs through the whole house.</summary>
        public EntryName? Place { get; init; }

        /// <summary>The part of the house it belongs to; that of its place when not said, else the main part.</summary>
        public EntryName? Part { get; init; }

        /// <summary>The component it is a piece of.</summary>
        public EntryName? Of { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ComponentPlaced>("component.placed", Gathered.Components);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Component, "");

        internal override string Question => "where a component belongs";

        internal override string Said => "The moving of a component";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Moved to {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Component = map(Component), Place = Maybe(Place, map), Part = Maybe(Part, map), Of = Maybe(Of, map) };

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>A kind of component was looked for and is not there: in a place, in a part of the house, or in the whole house.</summary>
    public sealed record ComponentAbsent : EntryBody
    {
        /// <summary>Kind as the rule book names it.</summary>
        public required string Kind { get; init; }

        /// <summary>Where it is not; none for the part or the house.</summary>
        public EntryName? Place { get; init; }

        /// <summary>The part of the house that has none; none for the whole house, or when a place is said.</summary>
        public EntryName? Part { get; init; }

        /// <summary>More about it, in the inspector's words.</summary>
        public string? Words { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ComponentAbsent>("component.absent", Gathered.Absences);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The absence of “{Kind}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"No {Kind}, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Part = Maybe(Part, map) };

        internal override void Check(BodyCheck check)
        {
            check.Must(Kind.Length is > 0 and <= 200, "kind", Journal.Said.Verbatim(BodyJson.Short(Kind)), "journal.wanted.kind-component");
            check.AtMost("words", Words, Limits.SentenceCharacters);
        }
    }

    /// <summary>A fact of a component, of a part of the house, or of the house and its main part: the name of the opening entry.</summary>
    public sealed record FactStated : Stating
    {
        /// <summary>Whose fact.</summary>
        public required EntryName Component { get; init; }

        /// <summary>Which: <c>year</c>, <c>material</c>, <c>capacity</c>, <c>fuel</c>, ...</summary>
        public required string Fact { get; init; }

        /// <summary>Words, number or yes/no.</summary>
        public required FactValue Value { get; init; }

        /// <summary>Unit of a number that has one.</summary>
        public string? Unit { get; init; }

        /// <summary>See <see cref="Journal.Basis"/>.</summary>
        public required string Basis { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<FactStated>("fact.stated", Gathered.Components, Gathered.Parts,
            Gathered.StrayFacts);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Component, Fact);

        internal override string Question => $"the fact “{Fact}”";

        internal override string Said => $"The fact “{Fact}: {Value}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"{Fact}: {Value} ({Basis})";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Component = map(Component) };

        internal override void Check(BodyCheck check) => check.OneOf("basis", Basis, Journal.Basis.All);
    }
}
