using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>The outline of a place on its plan.</summary>
    public sealed record PlanDrawn : Stating
    {
        private const int Most = 100;
        private const double Widest = 1_000;

        /// <summary>Which place.</summary>
        public required EntryName Place { get; init; }

        /// <summary>Its corners in order, in feet; the last is joined to the first.</summary>
        public required IReadOnlyList<Corner> Outline { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PlanDrawn>("plan.drawn", Gathered.Plans);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Place, "");

        internal override string Question => "the outline of a place";

        internal override string Said => "The outline of a place";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Outline drawn, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Place = map(Place) };

        internal override void Check(BodyCheck check)
        {
            check.Must(Outline.Count is >= 3 and <= Most, "outline", new Said("journal.given.count-corners", ("count", Outline.Count)),
                new Said("journal.wanted.3-most", ("most", Most)));
            if (Outline.Count is < 3 or > Most) return;
            var within = Outline.All(corner => Math.Abs(corner.X) <= Widest && Math.Abs(corner.Y) <= Widest);
            check.Must(within, "outline", "journal.given.corner-far-away",
                new Said("journal.wanted.feet-most-from-origin", ("most", $"{Widest}")));
            if (within) check.Must(Math.Abs(Twice(Outline)) > 0.02, "outline", "journal.given.corners-on-one-line",
                "journal.wanted.corners-around-area");
        }

        /// <summary>Twice the area within, counter-clockwise positive.</summary>
        private static double Twice(IReadOnlyList<Corner> outline) =>
            Enumerable.Range(0, outline.Count)
            .Sum(at => (outline[at].X * outline[(at + 1) % outline.Count].Y) - (outline[(at + 1) % outline.Count].X * outline[at].Y));
    }
}

/// <summary>A corner of an outline, in feet.</summary>
/// <param name="X">From the left edge.</param>
/// <param name="Y">From the lower edge.</param>
public sealed record Corner(double X, double Y);
