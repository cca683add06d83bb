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

        /// <summary>What tells it from its like: <c>upstairs unit</c>.</summary>
        public string? Name { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ComponentAdded>("component.added", Gathered.Components);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The component “{Name ?? Kind}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"{Kind}, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = Maybe(Place, map) };

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>A fact of a component (or of the house: the name of the opening entry).</summary>
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

        internal static EntryKind ItsKind { get; } = EntryKind.Of<FactStated>("fact.stated", Gathered.Components);

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
