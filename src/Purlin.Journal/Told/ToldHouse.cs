namespace Purlin.Journal.Told;

/// <summary>
/// A house as it is told before the first step: the form of its main part and what stands beside it. It becomes the entries that a journal
/// begins with, so that what is drawn from it before the visit is what is drawn after.
/// </summary>
public sealed record ToldHouse
{
    /// <summary>The facts of the property; its storeys follow from the form.</summary>
    public required Property Property { get; init; }

    /// <summary>See <see cref="HouseForm"/>.</summary>
    public string Form { get; init; } = HouseForm.OneFloor;

    /// <summary>Parts beside the main house.</summary>
    public IReadOnlyList<ToldPart> Parts { get; init; } = [];

    /// <summary>Whether there is a porch beside a deck, or instead of one.</summary>
    public bool Porch { get; init; }

    /// <summary>Whether there is a pool.</summary>
    public bool Pool { get; init; }

    /// <summary>Sheds and other buildings on the lot.</summary>
    public int Outbuildings { get; init; }

    /// <summary>What the room on a lower level is called.</summary>
    public string LowerRoom { get; init; } = ToldPart.Sentence(PlaceKind.Room);

    /// <summary>What the walls are clad with; none while unknown.</summary>
    public string? Cladding { get; init; }

    /// <summary>What the front is clad with, where it is not the same.</summary>
    public string? FrontCladding { get; init; }

    /// <summary>What the walls are clad with below, where it is not the same.</summary>
    public string? LowerCladding { get; init; }

    /// <summary>The property with the storeys of its form.</summary>
    public Property Facts => Property with
    {
        Storeys = HouseForm.Storeys(Form),
        Foundation = Form == HouseForm.Manufactured ? Property.Foundation ?? "piers" : Property.Foundation,
        Attic = Form == HouseForm.Manufactured ? Property.Attic ?? "none" : Property.Attic,
        RoofPitch = Form == HouseForm.Manufactured ? Property.RoofPitch ?? 3 : Property.RoofPitch,
    };

    /// <summary>What is written after the opening entry, in order; entries name one another by their number in the whole act.</summary>
    /// <param name="nth">The name of an entry of the same act, counted from 1.</param>
    /// <param name="before">How many entries of the act stand before these; the first of them is the opening entry.</param>
    public IReadOnlyList<EntryBody> Entries(Func<int, EntryName> nth, int before)
    {
        ArgumentNullException.ThrowIfNull(nth);
        List<EntryBody> entries = [.. OfMain(nth(1))];
        entries.AddRange(Beside(Parts, nth, before + entries.Count));
        entries.AddRange(ToldPlaces.Of(this));
        return entries;
    }

    /// <summary>What is written for parts beside the main house, also when they are met later, on the walk.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="nth">The name of an entry of the same act, counted from 1.</param>
    /// <param name="before">How many entries of the act stand before these.</param>
    public static IReadOnlyList<EntryBody> Beside(IReadOnlyList<ToldPart> parts, Func<int, EntryName> nth, int before)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(nth);
        List<EntryBody> entries = [];
        foreach (var part in parts)
        {
            entries.Add(new EntryBody.PartAdded { Kind = part.Kind, Name = part.Name, Side = part.Side });
            entries.AddRange(OfPart(part, nth(before + entries.Count)));
        }
        return entries;
    }

    private IEnumerable<EntryBody> OfMain(EntryName main)
    {
        var levels = HouseForm.Levels(Form);
        yield return new EntryBody.PartLeveled
        {
            Part = main,
            Levels = Facts.Foundation == "basement"
            ? [new Level(-1, LevelForm.Full, "Basement"), .. levels] : levels
        };
        if (Form == HouseForm.Manufactured) yield return new EntryBody.FactStated
        {
            Component = main,
            Fact = "construction",
            Value = FactValue.Of(HouseForm.Manufactured),
            Basis = Basis.Told
        };
        if (Cladding is null && FrontCladding is null && LowerCladding is null) yield break;
        foreach (var side in PartSide.Walls)
        {
            var upper = side == PartSide.Walls[0] ? FrontCladding ?? Cladding : Cladding;
            List<Cladding> claddings = [];
            if (LowerCladding is { } lower && lower != upper) claddings.Add(new Cladding(lower, "below"));
            if (upper is { } all) claddings.Add(new Cladding(all, claddings.Count > 0 ? "above" : null));
            if (claddings.Count > 0) yield return new EntryBody.PartClad
            {
                Part = main,
                Side = side,
                Claddings = claddings,
                Basis = Basis.Told
            };
        }
    }

    private static IEnumerable<EntryBody> OfPart(ToldPart part, EntryName name)
    {
        yield return new EntryBody.PartLeveled { Part = name, Levels = part.Levels };
        if (part.Year is { } year) yield return new EntryBody.FactStated
        {
            Component = name,
            Fact = "year",
            Value = FactValue.Of((double)year),
            Basis = Basis.Told
        };
        if (part.Foundation is { } foundation && !part.IsAbove) yield return new EntryBody.FactStated
        {
            Component = name,
            Fact = "foundation",
            Value = FactValue.Of(foundation),
            Basis = Basis.Told
        };
        foreach (var (kind, room) in part.Rooms()) yield return new EntryBody.PlaceAdded
        {
            Kind = kind,
            Name = room,
            Part = name,
            Level = part.LevelOf(kind)
        };
        if (part.IsAbove || part.Kind == PartKind.AttachedGarage) yield break;
        List<string> kinds = part.Foundation switch
        {
            PlaceKind.CrawlSpace or "piers" => [PlaceKind.CrawlSpace],
            PlaceKind.Basement =>
            [PlaceKind.Basement],
            _ => []
        };
        if (part.Kind != PartKind.SecondUnit) kinds.Add(PlaceKind.Roof);
        foreach (var (kind, called) in kinds.Select(part.Of)) yield return new EntryBody.PlaceAdded
        {
            Kind = kind,
            Name = called,
            Part = name
        };
    }
}
