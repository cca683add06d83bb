namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>An inspection begins; its name is also the name of the house, a component of kind <c>house</c>.</summary>
    public sealed record InspectionOpened : EntryBody
    {
        /// <summary>What is known of the house before arriving.</summary>
        public required Property Property { get; init; }

        /// <summary>Who ordered it.</summary>
        public string? Client { get; init; }

        /// <summary>Who inspects, with licence where the state has one.</summary>
        public string? Inspector { get; init; }

        /// <summary>The day of the visit.</summary>
        public required DateOnly Date { get; init; }

        /// <summary>Ids of the standards of practice chosen, <c>washington</c> for instance.</summary>
        public IReadOnlyList<string> Standards { get => field ?? []; init; }

        /// <summary>Edition of the rule book the visit began with.</summary>
        public string? RuleBook { get; init; }

        /// <summary>Weather as words: <c>dry, 58 °F, rain two days ago</c>.</summary>
        public string? Weather { get; init; }

        /// <summary>Who was there.</summary>
        public string? Present { get; init; }

        /// <summary>True for invented data, which says so on every page.</summary>
        public bool Demo { get; init; }

        /// <summary>The visit this one comes back to; none for a first visit.</summary>
        public EarlierVisit? Earlier { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Rare<InspectionOpened>("inspection.opened");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "The opening of the inspection";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Opened: {Property.Address}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check)
        {
            if (Earlier is null) return;
            check.Must(Earlier.Inspection.Length > 0, "earlier.inspection", "", "id");
            check.Must(Earlier.Edition is null or > 0, "earlier.edition", $"{Earlier.Edition}", "≥ 1");
            if (Earlier.Seal is { } seal) check.Hash(seal);
        }
    }

    /// <summary>A device begins to write in this inspection.</summary>
    public sealed record DeviceJoined : EntryBody
    {
        /// <summary>What its owner calls it.</summary>
        public required string Name { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Rare<DeviceJoined>("device.joined");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Device: {Name}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>The device compared its clock with the office.</summary>
    public sealed record ClockChecked : EntryBody
    {
        /// <summary>Office time.</summary>
        public required DateTimeOffset Office { get; init; }

        /// <summary>Milliseconds the device's clock is ahead of the office.</summary>
        public required long AheadMilliseconds { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Rare<ClockChecked>("clock.checked");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => "Clock compared with the office";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check) { }
    }

    /// <summary>An edition of the report was sealed; written by the office alone.</summary>
    public sealed record EditionSealed : EntryBody
    {
        /// <summary>1, 2, 3, ...</summary>
        public required int Number { get; init; }

        /// <summary>The heads the edition was made from.</summary>
        public required IReadOnlyDictionary<string, int> Heads { get; init; }

        /// <summary>Merkle root over the hashes of the lines under those heads.</summary>
        public required string EntriesRoot { get; init; }

        /// <summary>Hashes of the photographs it shows.</summary>
        public IReadOnlyList<string> Photos { get => field ?? []; init; }

        /// <summary>SHA-256 of the page.</summary>
        public required string Page { get; init; }

        /// <summary>SHA-256 of the PDF.</summary>
        public required string Pdf { get; init; }

        /// <summary>Edition of the rule book.</summary>
        public required string RuleBook { get; init; }

        /// <summary>SHA-256 over the files of that rule book; none in editions sealed before it was told.</summary>
        public string? RuleBookHash { get; init; }

        /// <summary>Seal of the edition before; none for the first.</summary>
        public string? PreviousEdition { get; init; }

        /// <summary>When, by the office.</summary>
        public required DateTimeOffset At { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Rare<EditionSealed>("edition.sealed");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Edition {Number} sealed";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check)
        {
            foreach (var sha in (string[])[EntriesRoot, Page, Pdf, .. Photos]) check.Hash(sha);
            if (RuleBookHash is { } book) check.Hash(book);
        }
    }
}
