namespace Purlin.Book;

/// <summary>Where one input of a reckoning comes from; one of the ways is filled in.</summary>
public sealed record FeedInput
{
    /// <summary>A kind of reading; the last one taken counts.</summary>
    public string? Reading { get; init; }

    /// <summary>All readings of a kind, as a list.</summary>
    public string? Readings { get; init; }

    /// <summary>Readings of a kind with points on a plan.</summary>
    public string? Points { get; init; }

    /// <summary>Readings of a kind with points, as distance from the wall and level.</summary>
    public string? Distances { get; init; }

    /// <summary>Three kinds of reading, in a length each, multiplied to a volume.</summary>
    public IReadOnlyList<string>? Box { get; init; }

    /// <summary>A fact of the component the working is for, or <c>kind/fact</c> of another.</summary>
    public string? Fact { get; init; }

    /// <summary>The greatest of a fact over all components of a kind, <c>kind/fact</c>.</summary>
    public string? Most { get; init; }

    /// <summary>A fact of the property: <c>yearBuilt</c>, <c>floorArea</c>, <c>footprint</c>, <c>bedrooms</c>, <c>bathrooms</c>, <c>storeys</c>, <c>roofPitch</c>.</summary>
    public string? Property { get; init; }

    /// <summary>A setting of the standards chosen, <c>cooling outdoor least</c>; the strictest of several counts.</summary>
    public string? Setting { get; init; }

    /// <summary>The year of the visit.</summary>
    public bool Now { get; init; }

    /// <summary>Kind of the component itself.</summary>
    public bool Kind { get; init; }

    /// <summary>Fixed words, or what is presumed where the fact is not on record.</summary>
    public string? Text { get; init; }

    /// <summary>A fixed number, or what is presumed where the fact is not on record.</summary>
    public double? Number { get; init; }

    /// <summary>True when the reading may come from anywhere in the house, not only from the same set.</summary>
    public bool House { get; init; }

    /// <summary>True when the reading may come from anywhere in the same place.</summary>
    public bool Here { get; init; }

    /// <summary>True when the reckoning does without.</summary>
    public bool Optional { get; init; }

    /// <summary>The reckoning does without unless this other input is given.</summary>
    public string? With { get; init; }

    /// <summary>True when the number goes in bare, since the input is a count.</summary>
    public bool Bare { get; init; }

    /// <summary>Inputs of an object.</summary>
    public IReadOnlyDictionary<string, FeedInput>? Group { get; init; }

    /// <summary>A list of objects; one is left out when something it needs is not on record.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, FeedInput>>? List { get; init; }

    /// <summary>A list of bare values; one is left out when it is not on record.</summary>
    public IReadOnlyList<FeedInput>? Values { get; init; }

    /// <summary>Several ways, of which the first that is on record counts.</summary>
    public IReadOnlyList<FeedInput>? First { get; init; }

    /// <summary>One element for each of the components that hang together with this one.</summary>
    public FeedEach? Each { get; init; }

    /// <summary>How many components of these kinds are on record; left out when none is.</summary>
    public IReadOnlyList<string>? Count { get; init; }

    /// <summary>True when a component of this kind is on record, else left out.</summary>
    public string? Present { get; init; }

    /// <summary>Facts written under each other with what stands before them on a plate.</summary>
    public IReadOnlyList<PlateLine>? Lines { get; init; }

    /// <summary>What another feed worked out for the same component, or <c>kind/feed</c> for that of another: its id.</summary>
    public string? Worked { get; init; }

    /// <summary>Which member of that result.</summary>
    public string? Take { get; init; }

    /// <summary>True when only what was read counts, not what was inferred.</summary>
    public bool Sure { get; init; }

    /// <summary>True when of a date only the year goes in.</summary>
    public bool Year { get; init; }

    /// <summary>Words of the fact put into the words of the reckoning.</summary>
    public IReadOnlyDictionary<string, string>? Words { get; init; }

    /// <summary>Words by the number: the first band whose limit it does not pass.</summary>
    public IReadOnlyList<Band>? Bands { get; init; }

    /// <summary>Kinds of reading that this takes, however deep they stand.</summary>
    public IEnumerable<string> ReadingKinds()
    {
        if ((Reading ?? Readings ?? Points ?? Distances) is { } kind) yield return kind;
        foreach (var side in Box ?? []) yield return side;
        var inner = (List ?? []).Append(Group).Append(Each?.Of).OfType<IReadOnlyDictionary<string, FeedInput>>().SelectMany(group => group.Values)
            .Concat(First ?? []).Concat(Values ?? []).Concat(new[] { Each?.Value }.OfType<FeedInput>());
        foreach (var deeper in inner)
            foreach (var its in deeper.ReadingKinds()) yield return its;
    }
}

/// <summary>Components of which each gives one element of a list.</summary>
public sealed record FeedEach
{
    /// <summary>Their kinds.</summary>
    public required IReadOnlyList<string> Kinds { get; init; }

    /// <summary>Only those in the same place.</summary>
    public bool Here { get; init; }

    /// <summary>Only those whose fact is one of these words.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Where { get => field ?? new Dictionary<string, IReadOnlyList<string>>(); init; }

    /// <summary>Not those whose fact is one of these words.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Not { get => field ?? new Dictionary<string, IReadOnlyList<string>>(); init; }

    /// <summary>True when the sum means nothing with one of them missing.</summary>
    public bool All { get; init; }

    /// <summary>Facts that must be on record before it can be told whether one of them counts: the fuel of a range.</summary>
    public IReadOnlyList<string> Known { get => field ?? []; init; }

    /// <summary>The element, when it is a bare value.</summary>
    public FeedInput? Value { get; init; }

    /// <summary>Inputs of the element, when it is an object.</summary>
    public IReadOnlyDictionary<string, FeedInput>? Of { get; init; }
}

/// <summary>A fact as it would stand on a plate.</summary>
/// <param name="Before">What stands before it; empty when the fact is the plate's own text.</param>
/// <param name="Fact">The fact.</param>
public sealed record PlateLine(string Before, string Fact);

/// <summary>A word for numbers up to a limit.</summary>
/// <param name="Word">The word.</param>
/// <param name="Most">The limit; none for all above.</param>
public sealed record Band(string Word, double? Most = null);

/// <summary>A fact that keeps a reckoning from being made, with the sentence that says why.</summary>
/// <param name="Fact">Which fact.</param>
/// <param name="Is">Its words.</param>
/// <param name="Because">Why.</param>
public sealed record Bar(string Fact, IReadOnlyList<string> Is, string Because);
