namespace Purlin.Journal.Fold;

/// <summary>
/// Gathers the standing lines into the lists of an <see cref="Fold.Inspection"/>. What a line has become is remembered on it, so that a list
/// made again holds the same things, save those that changed.
/// </summary>
internal sealed class State
{
    private readonly Dictionary<Type, List<Line>> kinds = [];
    private readonly Slots slots;
    private readonly IReadOnlyDictionary<EntryName, Line> byName;

    public State(List<Line> order, Slots slots, IReadOnlyDictionary<EntryName, Line> byName)
    {
        (this.slots, this.byName) = (slots, byName);
        foreach (var line in order) Add(line);
        Tree = PlaceTree.Of(Of<EntryBody.PlaceAdded>(), slots);
    }

    public PlaceTree Tree { get; private set; }

    /// <summary>Takes in a line that comes after all others.</summary>
    public void Add(Line line)
    {
        var kind = line.Body.GetType();
        if (!kinds.TryGetValue(kind, out var lines)) kinds[kind] = lines = [];
        lines.Add(line);
    }

    public Inspection Whole(string id, List<Strand> strands, List<Line> order)
    {
        var openings = Of<EntryBody.InspectionOpened>();
        return new Inspection
        {
            Id = id,
            Opening = openings.Find(line => line.Stands) is { } opening ? new Opening(opening.Name, (EntryBody.InspectionOpened)opening.Body) : null,
            Places = Tree.Places(),
            Components = Components(),
            Readings = Readings(),
            Observations = Observations(),
            Photos = Photos(),
            Sounds = Each<EntryBody.SoundTaken, Sound>((line, body) => new Sound(line.Name, body, line.At)),
            Limitations = Limitations(),
            Notes = Notes(),
            Ties = Ties(),
            Overrulings = Overrulings(),
            DutiesMet = DutiesMet(),
            Wordings = Wordings(),
            OwnConditions = OwnConditions(),
            Devices = [.. strands.Select(Device)],
            Editions = [.. Each<EntryBody.EditionSealed, SealedEdition>((line, body) => new SealedEdition(line.Name, body, line.Entry.Hash)).OrderBy(edition => edition.Body.Number)],
            Unknown = [.. Of<EntryBody.Unknown>().Where(line => line.Stands).Select(line => line.Name)],
            Withdrawn = [.. order.Where(line => !line.Stands).Select(line => line.Name)],
            Heads = strands.Where(strand => strand.Lines.Count > 0).ToDictionary(strand => strand.Device, strand => strand.Lines[^1].Name.Seq, StringComparer.Ordinal),
        };
    }

    /// <summary>The inspection with the lists made again that hold one of these lines or rest on it. Only for kinds that <see cref="CanFollow"/>.</summary>
    public Inspection After(Inspection before, IEnumerable<Line> touched)
    {
        HashSet<Type> changed = [];
        foreach (var line in touched)
        {
            changed.Add(line.Body.GetType());
            Forget(line);
        }

        bool Any<T1, T2>() => changed.Contains(typeof(T1)) || changed.Contains(typeof(T2));
        if (Any<EntryBody.PlaceAdded, EntryBody.PlaceNamed>() || changed.Contains(typeof(EntryBody.PlacePlaced)))
        {
            Tree = PlaceTree.Of(Of<EntryBody.PlaceAdded>(), slots);
            before = before with { Places = Tree.Places() };
        }

        if (Any<EntryBody.ComponentAdded, EntryBody.FactStated>()) before = before with { Components = Components() };
        if (changed.Contains(typeof(EntryBody.ReadingTaken))) before = before with { Readings = Readings() };
        if (changed.Contains(typeof(EntryBody.ObservationMade))) before = before with { Observations = Observations() };
        if (Any<EntryBody.PhotoTaken, EntryBody.PhotoPlaced>()) before = before with { Photos = Photos() };
        if (Any<EntryBody.LimitationRecorded, EntryBody.NoteWritten>()) before = before with { Limitations = Limitations(), Notes = Notes() };
        if (changed.Contains(typeof(EntryBody.LooseEndTied))) before = before with { Ties = Ties() };
        if (changed.Contains(typeof(EntryBody.JudgementOverruled))) before = before with { Overrulings = Overrulings() };
        if (changed.Contains(typeof(EntryBody.DutyMet))) before = before with { DutiesMet = DutiesMet() };
        if (changed.Contains(typeof(EntryBody.WordingSaid))) before = before with { Wordings = Wordings() };
        if (changed.Contains(typeof(EntryBody.ConditionWritten))) before = before with { OwnConditions = OwnConditions() };
        return before;
    }

    /// <summary>Whether <see cref="After"/> knows every list that a line of this kind has a part in. The rest are rare, and fold everything anew.</summary>
    public static bool CanFollow(EntryBody body) => body is EntryBody.PlaceAdded or EntryBody.PlaceNamed or EntryBody.PlacePlaced or EntryBody.ComponentAdded or EntryBody.FactStated
        or EntryBody.ReadingTaken or EntryBody.ObservationMade or EntryBody.PhotoTaken or EntryBody.PhotoPlaced or EntryBody.LimitationRecorded or EntryBody.NoteWritten
        or EntryBody.LooseEndTied or EntryBody.JudgementOverruled or EntryBody.DutyMet or EntryBody.WordingSaid or EntryBody.ConditionWritten or EntryBody.EntryWithdrawn or EntryBody.EntryRestored;

    /// <summary>What the owner of a slot became rests on the slot.</summary>
    private void Forget(Line line)
    {
        if (Slots.Key(line.Body) is { Of: { } owner } && byName.TryGetValue(owner, out var owned)) owned.Item = null;
    }

    /// <summary>Slots with several values, of things that stand.</summary>
    public IEnumerable<Unsettled> Divergences()
    {
        Line[] openings = [.. Of<EntryBody.InspectionOpened>().Where(line => line.Stands)];
        if (openings.Length > 1)
            yield return new Unsettled(UnsettledKind.Divergence, [.. openings.Select(line => line.Name)], "The inspection was opened more than once. The first opening is used; take back the other.");
        foreach (var held in slots.Diverging())
        {
            var lines = held.Standing;
            if (held.Key is { Of: { } owner } && byName.TryGetValue(owner, out var owned) && !owned.Stands) continue;
            yield return new Unsettled(UnsettledKind.Divergence, [.. lines.Select(line => line.Name)], $"{lines.Count} values stand side by side: {What(lines[0].Body)}. Choose one.");
        }
    }

    private static string What(EntryBody body) => body switch
    {
        EntryBody.FactStated stated => $"the fact “{stated.Fact}”",
        EntryBody.PlaceNamed => "the name of a place",
        EntryBody.PlacePlaced => "where a place belongs",
        EntryBody.PhotoPlaced => "what a photograph shows",
        EntryBody.NoteWritten => "the text of a note",
        EntryBody.LooseEndTied => "how a loose end was tied off",
        EntryBody.JudgementOverruled overruled => $"what the inspector put for the {overruled.Part} of a finding",
        EntryBody.DutyMet => "how a duty was closed",
        EntryBody.WordingSaid said => $"the own words for “{said.Key}”",
        EntryBody.ConditionWritten written => $"the own condition “{written.Id}”",
        _ => body.Type,
    };

    private List<Observation> Observations() => Each<EntryBody.ObservationMade, Observation>((line, body) => new Observation { Id = line.Name, Body = body, At = line.At });

    private List<Reading> Readings() => Each<EntryBody.ReadingTaken, Reading>((line, body) => new Reading { Id = line.Name, Body = body, At = line.At });

    private List<Component> Components() =>
    [
        .. Each<EntryBody.InspectionOpened, Component>((line, _) => new Component { Id = line.Name, Kind = "house", Facts = Facts(line.Name) }),
        .. Each<EntryBody.ComponentAdded, Component>((line, body) => new Component { Id = line.Name, Kind = body.Kind, Place = body.Place, Name = body.Name, Facts = Facts(line.Name) }),
    ];

    private Dictionary<string, Slot<Fact>> Facts(EntryName component)
    {
        Dictionary<string, Slot<Fact>> facts = new(StringComparer.Ordinal);
        foreach (var held in slots.FactsOf(component)) facts[held.Key.Which] = held.As(body => FactOf((EntryBody.FactStated)body));
        return facts;
    }

    private static Fact FactOf(EntryBody.FactStated stated) => new(stated.Value, stated.Unit, stated.Basis);

    private List<Photo> Photos() => Each<EntryBody.PhotoTaken, Photo>((line, body) => new Photo
    {
        Id = line.Name,
        Body = body,
        At = line.At,
        Placed = slots.Slot(new SlotKey("photo.placed", line.Name, ""), placed => (EntryBody.PhotoPlaced)placed),
    });

    private List<Limitation> Limitations() => Each<EntryBody.LimitationRecorded, Limitation>((line, body) => new Limitation
    {
        Id = line.Name,
        Body = body,
        At = line.At,
        Cause = Filled(line.Name, "cause") ?? body.Cause,
        Next = Filled(line.Name, "next") ?? body.Next,
    });

    /// <summary>Every text that stands, one under the other: none is hidden behind the first.</summary>
    private string? Filled(EntryName limitation, string part) =>
        slots.At(new SlotKey("note.written", limitation, part)) is { Count: > 0 } lines
            ? string.Join('\n', lines.Select(line => ((EntryBody.NoteWritten)line.Body).Text))
            : null;

    private List<Note> Notes()
    {
        HashSet<EntryName> limitations = [.. Of<EntryBody.LimitationRecorded>().Where(line => line.Stands).Select(line => line.Name)];
        return
        [
            .. from held in slots.OfType("note.written")
               where !(held.Key.Part is "" && held.Key.Which is "cause" or "next" && held.Key.Of is { } about && limitations.Contains(about))
               orderby held.Standing[0].Position
               select new Note(held.Key.Of, held.Key.Which.Length == 0 ? null : held.Key.Which, held.As(body => ((EntryBody.NoteWritten)body).Text)),
        ];
    }

    private Device Device(Strand strand)
    {
        var joined = Of<EntryBody.DeviceJoined>().Find(line => line.Stands && line.Strand.Stem == strand.Stem);
        return new Device(strand.Device, (joined?.Body as EntryBody.DeviceJoined)?.Name, strand.Lines.Count > 0 ? strand.Lines[^1].Name.Seq : 0);
    }

    private Dictionary<string, Slot<EntryBody.LooseEndTied>> Ties() => Keyed("loose-end.tied", key => key.Which, body => (EntryBody.LooseEndTied)body);

    private Dictionary<(string Finding, string Part), Slot<EntryBody.JudgementOverruled>> Overrulings() =>
        Keyed("judgement.overruled", key => (key.Which, key.Part), body => (EntryBody.JudgementOverruled)body);

    private Dictionary<string, Slot<EntryBody.DutyMet>> DutiesMet() => Keyed("duty.met", key => key.Which, body => (EntryBody.DutyMet)body);

    private Dictionary<string, Slot<EntryBody.WordingSaid>> Wordings() => Keyed("wording.said", key => key.Which, body => (EntryBody.WordingSaid)body);

    private Dictionary<string, Slot<EntryBody.ConditionWritten>> OwnConditions() => Keyed("condition.written", key => key.Which, body => (EntryBody.ConditionWritten)body);

    private Dictionary<TKey, Slot<T>> Keyed<TKey, T>(string type, Func<SlotKey, TKey> name, Func<EntryBody, T> value)
        where TKey : notnull =>
        slots.OfType(type).ToDictionary(held => name(held.Key), held => held.As(value));

    private List<Line> Of<TBody>()
        where TBody : EntryBody => kinds.GetValueOrDefault(typeof(TBody)) ?? [];

    private List<T> Each<TBody, T>(Func<Line, TBody, T> make)
        where TBody : EntryBody
        where T : class
    {
        List<T> all = [];
        foreach (var line in Of<TBody>())
            if (line.Stands) all.Add((T)(line.Item ??= make(line, (TBody)line.Body)));
        return all;
    }
}
