namespace Purlin.Journal.Fold;

/// <summary>
/// The state of one inspection: a fold over its entries. The same set of entries gives the same state whatever the order and repetition
/// of their delivery. All lists are in causal order. Withdrawn things are not in the lists; see <see cref="Withdrawn"/>.
/// </summary>
public sealed record Inspection
{
    /// <summary>Id of the inspection; empty when there is no entry at all.</summary>
    public required string Id { get; init; }

    /// <summary>The opening entry; none when it has not arrived yet. When several stand, the first in causal order.</summary>
    public Opening? Opening { get; init; }

    /// <summary>The tree of places.</summary>
    public IReadOnlyList<Place> Places { get; init; } = [];

    /// <summary>What is there, the house itself first (kind <c>house</c>, named by the opening entry).</summary>
    public IReadOnlyList<Component> Components { get; init; } = [];

    /// <summary>Measured quantities.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>What was looked for, and the outcome.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>Photographs.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    /// <summary>Sound notes.</summary>
    public IReadOnlyList<Sound> Sounds { get; init; } = [];

    /// <summary>What was not looked at or tested.</summary>
    public IReadOnlyList<Limitation> Limitations { get; init; } = [];

    /// <summary>Notes.</summary>
    public IReadOnlyList<Note> Notes { get; init; } = [];

    /// <summary>Loose ends tied by hand, by id of the loose end.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.LooseEndTied>> Ties { get; init; } = new Dictionary<string, Slot<EntryBody.LooseEndTied>>();

    /// <summary>What the inspector overruled, by id of the finding, then by part.</summary>
    public IReadOnlyDictionary<(string Finding, string Part), Slot<EntryBody.JudgementOverruled>> Overrulings { get; init; } = new Dictionary<(string, string), Slot<EntryBody.JudgementOverruled>>();

    /// <summary>Duties closed by hand, by id of the duty.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.DutyMet>> DutiesMet { get; init; } = new Dictionary<string, Slot<EntryBody.DutyMet>>();

    /// <summary>Sentences of the rule book in the inspector's own words, by key.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.WordingSaid>> Wordings { get; init; } = new Dictionary<string, Slot<EntryBody.WordingSaid>>();

    /// <summary>Conditions of the inspector's own, by id.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.ConditionWritten>> OwnConditions { get; init; } = new Dictionary<string, Slot<EntryBody.ConditionWritten>>();

    /// <summary>Devices that wrote here.</summary>
    public IReadOnlyList<Device> Devices { get; init; } = [];

    /// <summary>Sealed editions, by number.</summary>
    public IReadOnlyList<SealedEdition> Editions { get; init; } = [];

    /// <summary>What a person has to settle: slots with several values, parent cycles, withdrawals without effect, forks, far-off clocks.</summary>
    public IReadOnlyList<Unsettled> Unsettled { get; init; } = [];

    /// <summary>Entries of a type this program does not know, counted on screen.</summary>
    public IReadOnlyList<EntryName> Unknown { get; init; } = [];

    /// <summary>Entries that are withdrawn at present.</summary>
    public IReadOnlyList<EntryName> Withdrawn { get; init; } = [];

    /// <summary>Names of sequence numbers that are missing between known ones, of each device.</summary>
    public IReadOnlyList<EntryName> Missing { get; init; } = [];

    /// <summary>Highest sequence of each device.</summary>
    public IReadOnlyDictionary<string, int> Heads { get; init; } = new Dictionary<string, int>();

    /// <summary>Number of entries folded.</summary>
    public int Entries { get; init; }
}

/// <summary>The opening of the inspection.</summary>
/// <param name="Id">Name of the opening entry.</param>
/// <param name="Body">What it says.</param>
public sealed record Opening(EntryName Id, EntryBody.InspectionOpened Body);

/// <summary>A value with the entry that stated it.</summary>
/// <typeparam name="T">What is stated.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="By">The entry that stated it.</param>
/// <param name="At">When, as its device believed.</param>
public sealed record Stated<T>(T Value, EntryName By, DateTimeOffset At);

/// <summary>
/// A slot that state entries give a value. Values nobody has replaced all stand: more than one is a divergence, shown to a person;
/// the tie-break only picks the one drawn first.
/// </summary>
/// <typeparam name="T">What the slot holds.</typeparam>
public sealed record Slot<T>
{
    /// <summary>Every value that stands, the one to draw first at index 0. Never empty.</summary>
    public required IReadOnlyList<Stated<T>> Standing { get; init; }

    /// <summary>The value to draw first.</summary>
    public T Value => Standing[0].Value;

    /// <summary>True when several values stand.</summary>
    public bool Diverges => Standing.Count > 1;
}

/// <summary>A node of the tree of places.</summary>
public sealed record Place
{
    /// <summary>The entry that added it.</summary>
    public required EntryName Id { get; init; }

    /// <summary>See <see cref="PlaceKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>What people call it, after renaming.</summary>
    public required string Name { get; init; }

    /// <summary>The place it is in, after moving and with cycles cut.</summary>
    public EntryName? Parent { get; init; }

    /// <summary>Storey: 0 is the ground floor; none outdoors.</summary>
    public int? Storey { get; init; }

    /// <summary>Key among its neighbours.</summary>
    public double Order { get; init; }
}

/// <summary>A thing that is there, with its facts.</summary>
public sealed record Component
{
    /// <summary>The entry that added it.</summary>
    public required EntryName Id { get; init; }

    /// <summary>Kind as the rule book names it.</summary>
    public required string Kind { get; init; }

    /// <summary>Where it is; none for what runs through the whole house.</summary>
    public EntryName? Place { get; init; }

    /// <summary>What tells it from its like.</summary>
    public string? Name { get; init; }

    /// <summary>Facts by name: <c>year</c>, <c>material</c>, ...</summary>
    public IReadOnlyDictionary<string, Slot<Fact>> Facts { get; init; } = new Dictionary<string, Slot<Fact>>();

    /// <summary>The fact to draw first; none when not recorded.</summary>
    public Fact? Fact(string name) => Facts.TryGetValue(name, out var slot) ? slot.Value : null;
}

/// <summary>A fact and how it is known.</summary>
/// <param name="Value">As written.</param>
/// <param name="Unit">Unit of a number that has one.</param>
/// <param name="Basis">See <see cref="Journal.Basis"/>.</param>
public sealed record Fact(FactValue Value, string? Unit, string Basis);

/// <summary>A measured quantity.</summary>
public sealed record Reading
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.ReadingTaken Body { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}

/// <summary>Something looked for, with its outcome.</summary>
public sealed record Observation
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.ObservationMade Body { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}

/// <summary>A photograph and how it is spoken for.</summary>
public sealed record Photo
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.PhotoTaken Body { get; init; }

    /// <summary>How it is spoken for; none yet.</summary>
    public Slot<EntryBody.PhotoPlaced>? Placed { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The evidence it belongs to: as placed, else as taken.</summary>
    public EntryName? For => Placed?.Value.For ?? Body.For;

    /// <summary>Where: as placed, else as taken.</summary>
    public EntryName? Place => Placed?.Value.Place ?? Body.Place;

    /// <summary>Of what: as placed, else as taken.</summary>
    public EntryName? Component => Placed?.Value.Component ?? Body.Component;
}

/// <summary>A sound note.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="At">When, as its device believed.</param>
public sealed record Sound(EntryName Id, EntryBody.SoundTaken Body, DateTimeOffset At);

/// <summary>Something not looked at or tested; cause and next step may have been filled in later by notes with part <c>cause</c> and <c>next</c>.</summary>
public sealed record Limitation
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.LimitationRecorded Body { get; init; }

    /// <summary>Why, with what was filled in later.</summary>
    public string? Cause { get; init; }

    /// <summary>What the buyer should do, with what was filled in later.</summary>
    public string? Next { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}

/// <summary>A note.</summary>
/// <param name="About">What it is about; none for the inspection.</param>
/// <param name="Part">Tells several notes about one thing apart.</param>
/// <param name="Text">Every text that stands.</param>
public sealed record Note(EntryName? About, string? Part, Slot<string> Text);

/// <summary>A device that wrote here.</summary>
/// <param name="Id">Its id, with fork mark.</param>
/// <param name="Name">What its owner calls it, when it said so.</param>
/// <param name="Head">Its highest sequence.</param>
public sealed record Device(string Id, string? Name, int Head);

/// <summary>A sealed edition.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="Seal">Hash of the sealing line.</param>
public sealed record SealedEdition(EntryName Id, EntryBody.EditionSealed Body, string Seal);

/// <summary>Something a person has to settle; nothing of it is lost meanwhile.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Entries">The entries concerned.</param>
/// <param name="Words">One plain sentence that says what happened and what to do.</param>
public sealed record Unsettled(UnsettledKind Kind, IReadOnlyList<EntryName> Entries, string Words);

/// <summary>Kinds of what a person has to settle.</summary>
public enum UnsettledKind
{
    /// <summary>Several values stand in one slot.</summary>
    Divergence,

    /// <summary>Places were put inside one another; the later edge is ignored.</summary>
    ParentCycle,

    /// <summary>A withdrawal without effect, because something builds on its target.</summary>
    KeepWins,

    /// <summary>Two different lines bear the same name: a copied profile; both are kept.</summary>
    Fork,

    /// <summary>A clock more than a day off; the entries stand where cause puts them.</summary>
    FarClock,

    /// <summary>A line's predecessor hash does not match; the line is kept.</summary>
    BrokenChain,
}
