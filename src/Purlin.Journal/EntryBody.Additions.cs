namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>An inspection begins; its name is also the name of the house, a component of kind <c>house</c>.</summary>
    public sealed record InspectionOpened : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "inspection.opened";

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
    }

    /// <summary>A place is there.</summary>
    public sealed record PlaceAdded : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "place.added";

        /// <summary>Kind of place, see <see cref="PlaceKind"/>.</summary>
        public required string Kind { get; init; }

        /// <summary>What people call it.</summary>
        public required string Name { get; init; }

        /// <summary>The place it is in; none for a place of the site or the house itself.</summary>
        public EntryName? Parent { get; init; }

        /// <summary>Storey: 0 is the ground floor, -1 below it; none outdoors.</summary>
        public int? Storey { get; init; }

        /// <summary>Fractional key among its neighbours; clashes fall to the tie-break.</summary>
        public double? Order { get; init; }
    }

    /// <summary>A component is there.</summary>
    public sealed record ComponentAdded : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "component.added";

        /// <summary>Kind as the rule book names it: <c>water heater</c>, <c>supply piping</c>.</summary>
        public required string Kind { get; init; }

        /// <summary>Where it is; none for what runs through the whole house.</summary>
        public EntryName? Place { get; init; }

        /// <summary>What tells it from its like: <c>upstairs unit</c>.</summary>
        public string? Name { get; init; }
    }

    /// <summary>A quantity was measured.</summary>
    public sealed record ReadingTaken : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "reading.taken";

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
    }

    /// <summary>Something was looked for, with an outcome.</summary>
    public sealed record ObservationMade : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "observation.made";

        /// <summary>Where.</summary>
        public required EntryName Place { get; init; }

        /// <summary>On what, when a particular one.</summary>
        public EntryName? Component { get; init; }

        /// <summary>The rule book's id of the condition looked for; none for free words.</summary>
        public string? Condition { get; init; }

        /// <summary>What was looked for, or what was seen, in the inspector's words, when no condition fits or more is to be said.</summary>
        public string? Words { get; init; }

        /// <summary>See <see cref="Journal.Outcome"/>.</summary>
        public required string Outcome { get; init; }

        /// <summary>Why it could not be looked at; goes with <c>not visible</c>.</summary>
        public string? Reason { get; init; }

        /// <summary>Counts, when many like things were tried.</summary>
        public Sample? Sample { get; init; }

        /// <summary>Where in the place: <c>left of the door</c>, <c>under the sink</c>.</summary>
        public string? Spot { get; init; }
    }

    /// <summary>A photograph was taken; its bytes are kept by their hash.</summary>
    public sealed record PhotoTaken : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "photo.taken";

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
    }

    /// <summary>A sound note was recorded; its bytes are kept by their hash.</summary>
    public sealed record SoundTaken : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "sound.taken";

        /// <summary>SHA-256 of the bytes.</summary>
        public required string Sha { get; init; }

        /// <summary>Bytes.</summary>
        public required long Size { get; init; }

        /// <summary>As the recorder named it.</summary>
        public required string MediaType { get; init; }

        /// <summary>Length.</summary>
        public double? Seconds { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }
    }

    /// <summary>Something was not looked at or tested.</summary>
    public sealed record LimitationRecorded : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "limitation.recorded";

        /// <summary>What was not looked at or tested.</summary>
        public required string What { get; init; }

        /// <summary>Why; may be filled in later by a note of state, but issue waits for it.</summary>
        public string? Cause { get; init; }

        /// <summary>What the buyer should do about it.</summary>
        public string? Next { get; init; }

        /// <summary>The rule book's limitation, when it offered this one.</summary>
        public string? Rule { get; init; }

        /// <summary>Where.</summary>
        public EntryName? Place { get; init; }

        /// <summary>On what.</summary>
        public EntryName? Component { get; init; }
    }

    /// <summary>A device begins to write in this inspection.</summary>
    public sealed record DeviceJoined : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "device.joined";

        /// <summary>What its owner calls it.</summary>
        public required string Name { get; init; }
    }

    /// <summary>The device compared its clock with the office.</summary>
    public sealed record ClockChecked : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "clock.checked";

        /// <summary>Office time.</summary>
        public required DateTimeOffset Office { get; init; }

        /// <summary>Milliseconds the device's clock is ahead of the office.</summary>
        public required long AheadMilliseconds { get; init; }
    }

    /// <summary>An edition of the report was sealed; written by the office alone.</summary>
    public sealed record EditionSealed : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => "edition.sealed";

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

        /// <summary>Seal of the edition before; none for the first.</summary>
        public string? PreviousEdition { get; init; }

        /// <summary>When, by the office.</summary>
        public required DateTimeOffset At { get; init; }
    }
}

/// <summary>A point on a plan.</summary>
/// <param name="X">From the left edge.</param>
/// <param name="Y">From the lower edge.</param>
/// <param name="Unit"><c>ft</c> or <c>m</c>.</param>
/// <param name="Covering">Thickness of the covering at that point, in the reading's unit; 0 when bare.</param>
public sealed record PlanPoint(double X, double Y, string Unit, double Covering = 0);

/// <summary>Many like things tried: <c>18 of 23 tested, 2 dead</c>.</summary>
/// <param name="Tried">How many were tried or opened.</param>
/// <param name="Of">How many there are.</param>
/// <param name="Failed">How many of those tried showed the condition.</param>
public sealed record Sample(int Tried, int Of, int Failed);
