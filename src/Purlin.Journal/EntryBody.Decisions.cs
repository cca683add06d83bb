using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>A loose end was tied off by hand.</summary>
    public sealed record LooseEndTied : Stating
    {
        /// <summary>Id of the loose end, as judgement names it.</summary>
        public required string LooseEnd { get; init; }

        /// <summary>See <see cref="Journal.Tie"/>.</summary>
        public required string How { get; init; }

        /// <summary>The evidence, when tied by evidence.</summary>
        public IReadOnlyList<EntryName> Evidence { get => field ?? []; init; }

        /// <summary>To whom it was handed.</summary>
        public string? Trade { get; init; }

        /// <summary>Why it could not be settled, or what the evidence says.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<LooseEndTied>("loose-end.tied", Gathered.Ties);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, null, LooseEnd);

        internal override string Question => "how a loose end was tied off";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Loose end tied by {How}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Evidence = Each(Evidence, map) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("how", How, Tie.All);
            check.List("evidence", Evidence);
        }
    }

    /// <summary>The inspector overrules a part of the judgement, with a reason.</summary>
    public sealed record JudgementOverruled : Stating
    {
        /// <summary>Id of the finding, as judgement names it.</summary>
        public required string Finding { get; init; }

        /// <summary>Which part: <c>weight</c>, <c>text</c>, <c>recommendation</c>, <c>trade</c>, <c>left out</c>.</summary>
        public required string Part { get; init; }

        /// <summary>The value in its stead: a weight's word, a sentence, a trade; empty for <c>left out</c>.</summary>
        public string Value { get => field ?? ""; init; }

        /// <summary>Why.</summary>
        public required string Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<JudgementOverruled>("judgement.overruled", Gathered.Overrulings);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, null, Finding, Part);

        internal override string Question => $"what the inspector put for the {Part} of a finding";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Overruled: {Part}{(Value.Length > 0 ? $", {Value}" : "")}, because {Reason}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>A duty was closed by hand.</summary>
    public sealed record DutyMet : Stating
    {
        /// <summary>Id of the duty, <c>core:S-01</c> or <c>washington:308-408C-080(1)(a)</c>.</summary>
        public required string Duty { get; init; }

        /// <summary>See <see cref="DutyClose"/>.</summary>
        public required string How { get; init; }

        /// <summary>The result or description.</summary>
        public string? Text { get; init; }

        /// <summary>Why not inspected.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<DutyMet>("duty.met", Gathered.DutiesMet);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, null, Duty);

        internal override string Question => "how a duty was closed";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Duty closed: {How}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check) => check.OneOf("how", How, DutyClose.All);
    }
}
