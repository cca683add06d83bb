using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Judgement;

/// <summary>A small inspection, written down thing by thing, so that a test reads as what was seen in the house.</summary>
internal sealed class SmallHouse
{
    private DateTimeOffset now = new(2026, 5, 4, 9, 0, 0, TimeSpan.FromHours(-5));
    private readonly List<Place> places = [];
    private readonly List<Component> components = [];
    private readonly List<Reading> readings = [];
    private readonly List<Observation> observations = [];
    private readonly List<Photo> photos = [];
    private readonly List<Limitation> limitations = [];
    private readonly List<EntryName> withdrawn = [];
    private readonly Dictionary<string, Slot<EntryBody.LooseEndTied>> ties = [];
    private readonly Dictionary<string, Slot<EntryBody.DutyMet>> duties = [];
    private readonly Dictionary<(string, string), Slot<EntryBody.JudgementOverruled>> overrulings = [];
    private int seq = 1;

    public Property Property { get; set; } = new() { Address = "1 Invented Lane" };

    public IReadOnlyList<string> Standards { get; set; } = [];

    public DateOnly Date { get; set; } = new(2026, 5, 4);

    public string? Client { get; set; }

    public string? Inspector { get; set; }

    public string? Weather { get; set; }

    /// <summary>Days on which editions were sealed, first to last.</summary>
    public List<DateOnly> Editions { get; } = [];

    public static EntryName House { get; } = new("k3f9", 1);

    public EntryName Place(string kind, string? name = null)
    {
        var id = Next();
        places.Add(new Place { Id = id, Kind = kind, Name = name ?? char.ToUpperInvariant(kind[0]) + kind[1..], Order = places.Count });
        return id;
    }

    public EntryName Component(string kind, EntryName? place = null, string? name = null)
    {
        var id = Next();
        components.Add(new Component { Id = id, Kind = kind, Place = place, Name = name });
        return id;
    }

    public EntryName Fact(EntryName component, string fact, FactValue value, string? unit = null, string basis = Basis.Nameplate)
    {
        var id = Next();
        var index = components.FindIndex(known => known.Id == component);
        if (index < 0)
        {
            components.Insert(0, new Component { Id = House, Kind = "house" });
            index = 0;
        }
        Dictionary<string, Slot<Fact>> facts = new(components[index].Facts) { [fact] = Slot(new Fact(value, unit, basis), id) };
        components[index] = components[index] with { Facts = facts };
        return id;
    }

    public EntryName Seen(string condition, EntryName place, EntryName? component = null, Sample? sample = null, string? spot = null, string? words = null) =>
        Observe(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Outcome = Outcome.Seen, Sample = sample, Spot = spot, Words = words });

    public EntryName Clear(string condition, EntryName place, EntryName? component = null, Sample? sample = null) =>
        Observe(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Outcome = Outcome.Clear, Sample = sample });

    public EntryName NotVisible(string condition, EntryName place, string? reason, EntryName? component = null) =>
        Observe(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Outcome = Outcome.NotVisible, Reason = reason });

    public EntryName Observe(EntryBody.ObservationMade body)
    {
        var id = Next();
        observations.Add(new Observation { Id = id, Body = body, At = now });
        return id;
    }

    public EntryName Read(string kind, double value, string unit, EntryName? place = null, EntryName? component = null, string? set = null, PlanPoint? point = null) =>
        Read(new EntryBody.ReadingTaken { Kind = kind, Amount = new Amount(value, unit), Place = place, Component = component, Set = set, Point = point });

    public EntryName Read(EntryBody.ReadingTaken body)
    {
        var id = Next();
        readings.Add(new Reading { Id = id, Body = body, At = now });
        return id;
    }

    public EntryName Limit(string what, string? cause, string? next, EntryName? place = null, EntryName? component = null, string? rule = null)
    {
        var id = Next();
        limitations.Add(new Limitation
        {
            Id = id,
            Body = new EntryBody.LimitationRecorded { What = what, Cause = cause, Next = next, Place = place, Component = component, Rule = rule },
            Cause = cause,
            Next = next,
            At = now,
        });
        return id;
    }

    public EntryName Photograph(EntryName? about = null, EntryName? place = null, string? use = null)
    {
        var id = Next();
        var placed = use is null ? null : Slot(new EntryBody.PhotoPlaced { Photo = id, Use = use, For = about }, Next());
        photos.Add(new Photo { Id = id, Body = new EntryBody.PhotoTaken { Sha = new string('a', 64), Size = 1, MediaType = "image/jpeg", For = about, Place = place }, Placed = placed, At = now });
        return id;
    }

    public void Tie(string looseEnd, string how, EntryName? evidence = null, string? reason = null) =>
        ties[looseEnd] = Slot(new EntryBody.LooseEndTied { LooseEnd = looseEnd, How = how, Evidence = evidence is { } one ? [one] : [], Reason = reason }, Next());

    public void Close(string duty, string how, string? reason = null, string? text = null) =>
        duties[duty] = Slot(new EntryBody.DutyMet { Duty = duty, How = how, Reason = reason, Text = text }, Next());

    public void Overrule(string finding, string part, string value, string reason) =>
        overrulings[(finding, part)] = Slot(new EntryBody.JudgementOverruled { Finding = finding, Part = part, Value = value, Reason = reason }, Next());

    /// <summary>Time passes before what is written next.</summary>
    public void Later(TimeSpan by) => now += by;

    /// <summary>Takes an entry back, as an undo does.</summary>
    public void Withdraw(EntryName entry)
    {
        observations.RemoveAll(known => known.Id == entry);
        readings.RemoveAll(known => known.Id == entry);
        photos.RemoveAll(known => known.Id == entry);
        limitations.RemoveAll(known => known.Id == entry);
        withdrawn.Add(entry);
    }

    /// <summary>The inspection; with a seed, observations and readings come in another order.</summary>
    public Inspection Build(int? shuffled = null)
    {
        var order = shuffled is { } seed ? new Random(seed) : null;
        return new Inspection
        {
            Id = "small",
            Opening = new Opening(House, new EntryBody.InspectionOpened { Property = Property, Date = Date, Standards = Standards, Client = Client, Inspector = Inspector, Weather = Weather }),
            Places = [.. places],
            Components = [.. components],
            Readings = Ordered(readings, order),
            Observations = Ordered(observations, order),
            Photos = [.. photos],
            Limitations = [.. limitations],
            Ties = new Dictionary<string, Slot<EntryBody.LooseEndTied>>(ties),
            DutiesMet = new Dictionary<string, Slot<EntryBody.DutyMet>>(duties),
            Overrulings = new Dictionary<(string, string), Slot<EntryBody.JudgementOverruled>>(overrulings),
            Editions = [.. Editions.Select((day, index) => new SealedEdition(new EntryName("office", index + 1), Sealed(day, index + 1), new string('b', 64)))],
            Withdrawn = [.. withdrawn],
            Entries = seq,
        };
    }

    private static EntryBody.EditionSealed Sealed(DateOnly day, int number) => new()
    {
        Number = number,
        Heads = new Dictionary<string, int>(),
        EntriesRoot = new string('c', 64),
        Page = new string('d', 64),
        Pdf = new string('e', 64),
        RuleBook = Purlin.Book.RuleBook.BuiltIn.Edition,
        At = new DateTimeOffset(day, new TimeOnly(18, 0), TimeSpan.Zero),
    };

    private static T[] Ordered<T>(List<T> things, Random? order)
    {
        T[] all = [.. things];
        order?.Shuffle(all);
        return all;
    }

    private Slot<T> Slot<T>(T value, EntryName by) => new() { Standing = [new Stated<T>(value, by, now) { Line = Had(by) }] };

    /// <summary>One device writes: it had in hand whatever it wrote before.</summary>
    private static Line Had(EntryName by) => new() { Entry = null!, Name = by, Strand = null!, Body = null!, References = [], Knew = [] };

    private EntryName Next() => new("k3f9", ++seq);
}
