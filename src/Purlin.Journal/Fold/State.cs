namespace Purlin.Journal.Fold;

/// <summary>Gathers the standing lines into the lists of an <see cref="Fold.Inspection"/>.</summary>
internal sealed class State(List<Line> order, Slots slots, IReadOnlyDictionary<EntryName, Line> byName)
{
    private readonly List<Line> standing = order.FindAll(line => line.Stands);

    public PlaceTree Tree { get; } = PlaceTree.Of(order, slots);

    public Inspection Inspection(string id, List<Strand> strands)
    {
        var opening = standing.Find(line => line.Body is EntryBody.InspectionOpened);
        return new Inspection
        {
            Id = id,
            Opening = opening is null ? null : new Opening(opening.Name, (EntryBody.InspectionOpened)opening.Body),
            Places = Tree.Places(),
            Components = Components(),
            Readings = Each<EntryBody.ReadingTaken, Reading>((line, body) => new Reading { Id = line.Name, Body = body, At = line.At }),
            Observations = Each<EntryBody.ObservationMade, Observation>((line, body) => new Observation { Id = line.Name, Body = body, At = line.At }),
            Photos = Each<EntryBody.PhotoTaken, Photo>(Photo),
            Sounds = Each<EntryBody.SoundTaken, Sound>((line, body) => new Sound(line.Name, body, line.At)),
            Limitations = Each<EntryBody.LimitationRecorded, Limitation>(Limitation),
            Notes = Notes(),
            Ties = Keyed("loose-end.tied", key => key.Which, body => (EntryBody.LooseEndTied)body),
            Overrulings = Keyed("judgement.overruled", key => (key.Which, key.Part), body => (EntryBody.JudgementOverruled)body),
            DutiesMet = Keyed("duty.met", key => key.Which, body => (EntryBody.DutyMet)body),
            Devices = [.. strands.Select(Device)],
            Editions = [.. Each<EntryBody.EditionSealed, SealedEdition>((line, body) => new SealedEdition(line.Name, body, line.Entry.Hash)).OrderBy(edition => edition.Body.Number)],
            Unknown = [.. standing.Where(line => line.Body is EntryBody.Unknown).Select(line => line.Name)],
            Withdrawn = [.. order.Where(line => !line.Stands).Select(line => line.Name)],
            Heads = strands.Where(strand => strand.Lines.Count > 0).ToDictionary(strand => strand.Device, strand => strand.Lines[^1].Name.Seq, StringComparer.Ordinal),
        };
    }

    /// <summary>Slots with several values, of things that stand.</summary>
    public IEnumerable<Unsettled> Divergences()
    {
        Line[] openings = [.. standing.Where(line => line.Body is EntryBody.InspectionOpened)];
        if (openings.Length > 1)
            yield return new Unsettled(UnsettledKind.Divergence, [.. openings.Select(line => line.Name)], "The inspection was opened more than once. The first opening is used; take back the other.");
        foreach (var lines in slots.Standing.Values.Where(lines => lines.Count > 1).OrderBy(lines => lines[0].Position))
        {
            if (Slots.Key(lines[0].Body) is { Of: { } owner } && byName.TryGetValue(owner, out var owned) && !owned.Stands) continue;
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
        _ => body.Type,
    };

    private List<Component> Components()
    {
        Dictionary<EntryName, Dictionary<string, Slot<Fact>>> facts = [];
        foreach (var (key, lines) in slots.Standing)
        {
            if (key is not { Type: "fact.stated", Of: { } owner }) continue;
            if (!facts.TryGetValue(owner, out var own)) facts[owner] = own = new Dictionary<string, Slot<Fact>>(StringComparer.Ordinal);
            own[key.Which] = Slots.Slot(lines, body => FactOf((EntryBody.FactStated)body));
        }

        IReadOnlyDictionary<string, Slot<Fact>> Of(EntryName name) => facts.TryGetValue(name, out var own) ? own : new Dictionary<string, Slot<Fact>>();
        return
        [
            .. Each<EntryBody.InspectionOpened, Component>((line, _) => new Component { Id = line.Name, Kind = "house", Facts = Of(line.Name) }),
            .. Each<EntryBody.ComponentAdded, Component>((line, body) => new Component { Id = line.Name, Kind = body.Kind, Place = body.Place, Name = body.Name, Facts = Of(line.Name) }),
        ];
    }

    private static Fact FactOf(EntryBody.FactStated stated) => new(stated.Value, stated.Unit, stated.Basis);

    private Photo Photo(Line line, EntryBody.PhotoTaken body) => new()
    {
        Id = line.Name,
        Body = body,
        At = line.At,
        Placed = slots.Slot(new SlotKey("photo.placed", line.Name, ""), placed => (EntryBody.PhotoPlaced)placed),
    };

    private Limitation Limitation(Line line, EntryBody.LimitationRecorded body) => new()
    {
        Id = line.Name,
        Body = body,
        At = line.At,
        Cause = Filled(line.Name, "cause") ?? body.Cause,
        Next = Filled(line.Name, "next") ?? body.Next,
    };

    /// <summary>Every text that stands, one under the other: none is hidden behind the first.</summary>
    private string? Filled(EntryName limitation, string part) =>
        slots.At(new SlotKey("note.written", limitation, part)) is { Count: > 0 } lines
            ? string.Join('\n', lines.Select(line => ((EntryBody.NoteWritten)line.Body).Text))
            : null;

    private List<Note> Notes()
    {
        HashSet<EntryName> limitations = [.. standing.Where(line => line.Body is EntryBody.LimitationRecorded).Select(line => line.Name)];
        return
        [
            .. from slot in slots.Standing
               where slot.Key.Type == "note.written" && !(slot.Key.Part is "" && slot.Key.Which is "cause" or "next" && slot.Key.Of is { } about && limitations.Contains(about))
               orderby slot.Value[0].Position
               select new Note(slot.Key.Of, slot.Key.Which.Length == 0 ? null : slot.Key.Which, Slots.Slot(slot.Value, body => ((EntryBody.NoteWritten)body).Text)),
        ];
    }

    private Device Device(Strand strand)
    {
        var joined = standing.Find(line => line.Strand.Stem == strand.Stem && line.Body is EntryBody.DeviceJoined);
        return new Device(strand.Device, (joined?.Body as EntryBody.DeviceJoined)?.Name, strand.Lines.Count > 0 ? strand.Lines[^1].Name.Seq : 0);
    }

    private Dictionary<TKey, Slot<T>> Keyed<TKey, T>(string type, Func<SlotKey, TKey> name, Func<EntryBody, T> value)
        where TKey : notnull =>
        slots.Standing.Where(slot => slot.Key.Type == type).ToDictionary(slot => name(slot.Key), slot => Slots.Slot(slot.Value, value));

    private List<T> Each<TBody, T>(Func<Line, TBody, T> make)
        where TBody : EntryBody =>
        [.. standing.Where(line => line.Body is TBody).Select(line => make(line, (TBody)line.Body))];
}
