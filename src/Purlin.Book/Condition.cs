namespace Purlin.Book;

/// <summary>
/// An entry of the rule book: what can be wrong with a kind of component, how it is recognised, what it means, what else to look at, who
/// deals with it.
/// </summary>
public sealed record Condition
{
    /// <summary>Kind of component and what is wrong: <c>water-heater.relief-pipe-missing</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Short heading, as a person would say it.</summary>
    public required string Name { get; init; }

    /// <summary>Kind of component, in words.</summary>
    public string Component { get => field ?? ""; init; }

    /// <summary>Building system.</summary>
    public string System { get => field ?? ""; init; }

    /// <summary>Kinds of place where it is looked for.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>Other words people use for it, for the search.</summary>
    public IReadOnlyList<string> Words { get => field ?? []; init; }

    /// <summary>How it is recognised.</summary>
    public IReadOnlyList<string> Signs { get => field ?? []; init; }

    /// <summary>What it is, for a buyer.</summary>
    public required string Means { get; init; }

    /// <summary>What it leads to if left.</summary>
    public string Leads { get => field ?? ""; init; }

    /// <summary>What one sees when it is not there.</summary>
    public string Clears { get => field ?? ""; init; }

    /// <summary>What else to look at once it has been seen.</summary>
    public IReadOnlyList<Follow> Look { get => field ?? []; init; }

    /// <summary>What its weight is worked out from.</summary>
    public required WeightRule Weight { get; init; }

    /// <summary>What to do about it.</summary>
    public required string Do { get; init; }

    /// <summary>Who deals with it.</summary>
    public required string Trade { get; init; }

    /// <summary>Row of the table of eras; none when no rule of any year concerns it.</summary>
    public string? Era { get; init; }

    /// <summary>
    /// Rows of the table of eras by kind of place, where the rule came in at different times; <see cref="Era"/> for all others.
    /// </summary>
    public IReadOnlyDictionary<string, string> Eras { get => field ?? new Dictionary<string, string>(); init; }

    /// <summary>Ids of the cautions that go with it.</summary>
    public IReadOnlyList<string> Cautions { get => field ?? []; init; }

    /// <summary>Whether it is looked for on many like things and so takes counts.</summary>
    public bool Sample { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>. Never empty.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }

    /// <summary>True for one the inspector added.</summary>
    public bool Own { get; init; }
}

/// <summary>A question that a condition opens once it has been seen.</summary>
public sealed record Follow
{
    /// <summary>Short, unique in its condition.</summary>
    public required string Id { get; init; }

    /// <summary>The question, as an instruction to the inspector.</summary>
    public required string Ask { get; init; }

    /// <summary>Kinds of place where the answer can be found; empty for anywhere.</summary>
    public IReadOnlyList<string> In { get => field ?? []; init; }

    /// <summary>
    /// Whether it is asked only where the matter was seen: the stain itself is measured, not every ceiling. An answer from elsewhere counts
    /// all the same.
    /// </summary>
    public bool Here { get; init; }

    /// <summary>Conditions of which a look, seen or clear, answers it.</summary>
    public IReadOnlyList<string> Answers { get => field ?? []; init; }

    /// <summary>Kinds of reading that answer it.</summary>
    public IReadOnlyList<string> Readings { get => field ?? []; init; }

    /// <summary>Facts that answer it, <c>water heater/year</c>.</summary>
    public IReadOnlyList<string> Facts { get => field ?? []; init; }

    /// <summary>How many of the places must answer it.</summary>
    public Need Need { get; init; }

    /// <summary>Whether it must be tied before issue; otherwise <see cref="Refer"/> is printed.</summary>
    public bool Block { get; init; }

    /// <summary>The sentence that hands it to a trade.</summary>
    public required string Refer { get; init; }

    /// <summary>The trade it is handed to.</summary>
    public required string Trade { get; init; }
}

/// <summary>What a condition's weight is worked out from.</summary>
public sealed record WeightRule
{
    /// <summary>What it can do.</summary>
    public required Consequence Consequence { get; init; }

    /// <summary>When it comes to that.</summary>
    public Timing Timing { get; init; }

    /// <summary>Whether several places make it matter more.</summary>
    public Lift Several { get; init; }

    /// <summary>Whether it matters more throughout.</summary>
    public Lift Throughout { get; init; }

    /// <summary>True for what is done before anything else of the same weight: leave the house, shut it off, let nobody near.</summary>
    public bool First { get; init; }

    /// <summary>In what order matters of one weight are dealt with: 0 first of all, then what is under way, soon, later.</summary>
    public int Urgency() => First ? 0 : Timing switch { Timing.Now => 1, Timing.Soon => 2, _ => 3 };

    /// <summary>Where the place of the house makes it matter more: earthquake or storm country.</summary>
    public IReadOnlyList<WeightThere> Where { get => field ?? []; init; }

    /// <summary>The weight where it is seen in one place and nothing else speaks.</summary>
    public Weight InOnePlace() => At(Timing);

    /// <summary>The weight where it shows at once, whatever the timing says.</summary>
    public Weight AtOnce() => At(Timing.Now);

    private Weight At(Timing timing) => (Consequence, timing) switch
    {
        (Consequence.Injury, Timing.Later) => Weight.PutRight,
        (Consequence.Injury, _) => Weight.MakeSafe,
        (Consequence.Damage, Timing.Later) => Weight.PutRight,
        (Consequence.Damage, _) => Weight.ActNow,
        (Consequence.Function, Timing.Now) => Weight.ActNow,
        (Consequence.Function, Timing.Later) => Weight.KeepUp,
        (Consequence.Function, _) => Weight.PutRight,
        (Consequence.Upkeep, _) => Weight.KeepUp,
        _ => Weight.KnowAbout,
    };
}

/// <summary>Another consequence where a fact of the house says so.</summary>
public sealed record WeightThere
{
    /// <summary>Name of a fact of the house: <c>seismic design category</c>.</summary>
    public required string Fact { get; init; }

    /// <summary>It holds for one of these words.</summary>
    public IReadOnlyList<string> Is { get => field ?? []; init; }

    /// <summary>It holds above this number.</summary>
    public double? Above { get; init; }

    /// <summary>The consequence there.</summary>
    public required Consequence Consequence { get; init; }
}
