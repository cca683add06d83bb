namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>A fact of a component (or of the house: the name of the opening entry).</summary>
    public sealed record FactStated : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "fact.stated";

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

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>What a place is called.</summary>
    public sealed record PlaceNamed : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "place.named";

        /// <summary>Which place.</summary>
        public required EntryName Place { get; init; }

        /// <summary>Its name from now on.</summary>
        public required string Name { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>Where a place hangs in the tree.</summary>
    public sealed record PlacePlaced : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "place.placed";

        /// <summary>Which place.</summary>
        public required EntryName Place { get; init; }

        /// <summary>The place it is in; none at the top.</summary>
        public EntryName? Parent { get; init; }

        /// <summary>Fractional key among its neighbours.</summary>
        public double? Order { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>What a photograph shows and how it is used.</summary>
    public sealed record PhotoPlaced : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "photo.placed";

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

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>The whole text of one note.</summary>
    public sealed record NoteWritten : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "note.written";

        /// <summary>The entry the note is about (place, component, observation, reading, photograph, limitation); none for the inspection.</summary>
        public EntryName? About { get; init; }

        /// <summary>Tells several notes about one thing apart, and the parts of a limitation filled in later: <c>cause</c>, <c>next</c>.</summary>
        public string? Part { get; init; }

        /// <summary>The whole text.</summary>
        public required string Text { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>A loose end was tied off by hand.</summary>
    public sealed record LooseEndTied : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "loose-end.tied";

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

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>The inspector overrules a part of the judgement, with a reason.</summary>
    public sealed record JudgementOverruled : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "judgement.overruled";

        /// <summary>Id of the finding, as judgement names it.</summary>
        public required string Finding { get; init; }

        /// <summary>Which part: <c>weight</c>, <c>text</c>, <c>recommendation</c>, <c>trade</c>, <c>left out</c>.</summary>
        public required string Part { get; init; }

        /// <summary>The value in its stead: a weight's word, a sentence, a trade; empty for <c>left out</c>.</summary>
        public string Value { get => field ?? ""; init; }

        /// <summary>Why.</summary>
        public required string Reason { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>A duty was closed by hand.</summary>
    public sealed record DutyMet : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "duty.met";

        /// <summary>Id of the duty, <c>core:S-01</c> or <c>washington:308-408C-080(1)(a)</c>.</summary>
        public required string Duty { get; init; }

        /// <summary>See <see cref="DutyClose"/>.</summary>
        public required string How { get; init; }

        /// <summary>The result or description.</summary>
        public string? Text { get; init; }

        /// <summary>Why not inspected.</summary>
        public string? Reason { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }
}
