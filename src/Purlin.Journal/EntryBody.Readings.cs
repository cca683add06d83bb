using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>A quantity was measured.</summary>
    public sealed record ReadingTaken : EntryBody
    {
        /// <summary>Kind as the rule book names it: <c>return dry bulb</c>, <c>floor level</c>, <c>static water pressure</c>.</summary>
        public required string Kind { get; init; }

        /// <summary>Number and unit exactly as written.</summary>
        public required Amount Amount { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }

        /// <summary>With what.</summary>
        public string? Instrument { get; init; }

        /// <summary>Readings taken together share a set: one cooling run, one floor survey, one circuit.</summary>
        public string? Set { get; init; }

        /// <summary>Where on a plan, for a survey.</summary>
        public PlanPoint? Point { get; init; }

        /// <summary>Anything that goes with the number: <c>carpet</c>, <c>breaker 12</c>.</summary>
        public string? Label { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ReadingTaken>("reading.taken", Gathered.Readings);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The reading “{Kind}” {Amount}";

        /// <inheritdoc/>
        public override string Told(Called called) => $"{Kind} {Amount}, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = Maybe(Place, map), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check) { }
    }
}

/// <summary>A point on a plan.</summary>
/// <param name="X">From the left edge.</param>
/// <param name="Y">From the lower edge.</param>
/// <param name="Unit"><c>ft</c> or <c>m</c>.</param>
/// <param name="Covering">Thickness of the covering at that point, in the reading's unit; 0 when bare.</param>
public sealed record PlanPoint(double X, double Y, string Unit, double Covering = 0);
