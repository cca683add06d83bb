using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>Something was looked for, with an outcome.</summary>
    public sealed record ObservationMade : EntryBody
    {
        /// <summary>Where.</summary>
        public required EntryName Place { get; init; }

        /// <summary>On what, when a particular one.</summary>
        public EntryName? Component { get; init; }

        /// <summary>The rule book's id of the condition looked for; none for free words.</summary>
        public string? Condition { get; init; }

        /// <summary>
        /// What was looked for, or what was seen, in the inspector's words, when no condition fits or more is to be said.
        /// </summary>
        public string? Words { get; init; }

        /// <summary>See <see cref="Journal.Outcome"/>.</summary>
        public required string Outcome { get; init; }

        /// <summary>Why it could not be looked at; goes with <c>not visible</c>.</summary>
        public string? Reason { get; init; }

        /// <summary>Counts, when many like things were tried.</summary>
        public Sample? Sample { get; init; }

        /// <summary>Where in the place: <c>left of the door</c>, <c>under the sink</c>.</summary>
        public string? Spot { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<ObservationMade>("observation.made", Gathered.Observations);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The observation “{Words ?? Condition ?? Outcome}”";

        /// <inheritdoc/>
        public override string Told(Called called) =>
            $"{(Condition is { } id ? called.Condition(id) : null) ?? Words ?? "Observation"}: {Outcome}, {called.Place(Place)}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) =>
            this with { Place = map(Place), Component = Maybe(Component, map) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("outcome", Outcome, Journal.Outcome.All);
            if (Sample is { } sample)
            {
                var holds = sample.Failed >= 0 && sample.Failed <= sample.Tried && sample.Tried <= sample.Of;
                check.Must(holds, "sample",
                    new Said("journal.given.failed-tried", ("failed", $"{sample.Failed}"), ("tried", $"{sample.Tried}"),
                    ("of", $"{sample.Of}")), "journal.wanted.failed-most-tried-tried-most");
            }
        }
    }
}

/// <summary>Many like things tried: <c>18 of 23 tested, 2 dead</c>.</summary>
/// <param name="Tried">How many were tried or opened.</param>
/// <param name="Of">How many there are.</param>
/// <param name="Failed">How many of those tried showed the condition.</param>
public sealed record Sample(int Tried, int Of, int Failed);
