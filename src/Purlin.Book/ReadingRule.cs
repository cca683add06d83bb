using System.Text.Json.Serialization;
using Purlin.Book.Takings;

namespace Purlin.Book;

/// <summary>A kind of reading: what is measured, in what unit, within what bounds a person can believe it.</summary>
public sealed record ReadingKind
{
    /// <summary>Its name: <c>return dry bulb</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Unit to offer first; empty for a count.</summary>
    public required string Unit { get; init; }

    /// <summary>Below this the reading is asked for again.</summary>
    public required double Least { get; init; }

    /// <summary>Above this the reading is asked for again.</summary>
    public required double Most { get; init; }

    /// <summary>What it is measured with.</summary>
    public string Instrument { get => field ?? ""; init; }

    /// <summary>Kind of component it is taken on; empty when on none.</summary>
    public string Component { get => field ?? ""; init; }

    /// <summary>Kinds of place where it is taken; empty for any.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>True when one reading speaks for the whole house, wherever it was taken.</summary>
    public bool House { get; init; }

    /// <summary>What the number says by itself, without a reckoning.</summary>
    public IReadOnlyList<Raise> Raises { get => field ?? []; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>What a reading, fact or reckoning raises as a condition.</summary>
public sealed record Raise
{
    /// <summary>The condition.</summary>
    public required string Condition { get; init; }

    /// <summary>An input or member of the result to look at, <c>result.tilt</c>; the verdict alone when none.</summary>
    public string? On { get; init; }

    /// <summary>Raised above this, in <see cref="Unit"/>.</summary>
    public double? Above { get; init; }

    /// <summary>Raised below this, in <see cref="Unit"/>.</summary>
    public double? Below { get; init; }

    /// <summary>Raised above what stands there: <c>inputs.mocp</c>.</summary>
    public string? Over { get; init; }

    /// <summary>Raised below what stands there.</summary>
    public string? Under { get; init; }

    /// <summary>Raised when the words are one of these.</summary>
    public IReadOnlyList<string> Is { get => field ?? []; init; }

    /// <summary>Unit of the limit; the reading is converted to it.</summary>
    public string Unit { get => field ?? ""; init; }

    /// <summary>Raised only when the reckoning's verdict is this; any when none.</summary>
    public string? Verdict { get; init; }

    /// <summary>The sentence to print with it; the reckoning's own when none.</summary>
    public string? Because { get; init; }

    /// <summary>Kinds of place where it is raised; empty for anywhere.</summary>
    public IReadOnlyList<string> In { get => field ?? []; init; }

    /// <summary>
    /// It neither raises nor clears unless each of these is one of the words: inputs or results of a reckoning (shingles on a flat roof,
    /// not tiles); for a number alone, facts of its component, or of those in its place: the draft of a burner.
    /// </summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> For { get => field ?? new Dictionary<string, IReadOnlyList<string>>(); init; }

    /// <summary>Whether the contrary counts as a look that found nothing.</summary>
    public bool Clears { get; init; }
}

/// <summary>A fact that keeps a reckoning from being made, with the sentence that says why.</summary>
/// <param name="Fact">Which fact.</param>
/// <param name="Is">Its words.</param>
/// <param name="Because">Why.</param>
public sealed record Bar(string Fact, IReadOnlyList<string> Is, string Because);

/// <summary>How readings and facts feed a reckoning: where each of its inputs comes from, and what its result raises.</summary>
public sealed record Feed
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The reckoning's name.</summary>
    public required string Reckoning { get; init; }

    /// <summary>What one working is made for.</summary>
    public required FeedBy By { get; init; }

    /// <summary>Kinds of component it is about; the first is named when the readings name none.</summary>
    public IReadOnlyList<string> Components { get => field ?? []; init; }

    /// <summary>Kinds of place whose readings it takes; empty for all.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>Where each input comes from.</summary>
    public required IReadOnlyDictionary<string, Taking> Inputs { get; init; }

    /// <summary>Facts of the component that keep it from being reckoned at all: the table is for another material.</summary>
    public IReadOnlyList<Bar> Bars { get => field ?? []; init; }

    /// <summary>Another feed does it where one of these facts is on record.</summary>
    public IReadOnlyList<string> Without { get => field ?? []; init; }

    /// <summary>Inputs that go in together or not at all.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Together { get => field ?? []; init; }

    /// <summary>What was inferred and is asked to be confirmed: member of the result, and the fact that confirms it.</summary>
    public IReadOnlyDictionary<string, string> Confirms { get => field ?? new Dictionary<string, string>(); init; }

    /// <summary>Whether the one reading or fact that is still missing is asked for.</summary>
    public bool Asks { get; init; }

    /// <summary>Kinds of reading that go in, however deep they stand.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> ReadingKinds =>
        field ??= [.. Inputs.Values.SelectMany(taking => taking.ReadingKinds).Distinct(StringComparer.Ordinal)];

    /// <summary>The inputs that are on record for one working, whole or not.</summary>
    public FedInputs Bind(Ground ground, FeedGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        var fed = new FedInputs(group.Component?.Id);
        fed.IsWhole = Inputs.Fill(ground, group, fed, fed.Inputs) && !fed.LacksKnownPart;
        foreach (var pair in Together.Where(pair => !pair.All(fed.Inputs.ContainsKey)))
            foreach (var name in pair) fed.Inputs.Remove(name);
        return fed;
    }

    /// <summary>What keeps a working from being made, so that nothing is passed over in silence.</summary>
    public IReadOnlyList<Lack> Lacks(Ground ground, FeedGroup group) => [.. Inputs.Lacks(ground, group).Distinct()];

    /// <summary>Conditions it raises.</summary>
    public IReadOnlyList<Raise> Raises { get => field ?? []; init; }

    /// <summary>Other names under which rules ask for its result: <c>temperature split</c>.</summary>
    public IReadOnlyList<string> Answers { get => field ?? []; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>A fact that by itself raises a condition: a pipe of a material known to fail.</summary>
public sealed record FactRule
{
    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>Which fact.</summary>
    public required string Fact { get; init; }

    /// <summary>True when the number is a year, and its age is what counts.</summary>
    public bool Age { get; init; }

    /// <summary>What it raises, when its words or number are so.</summary>
    public required Raise Raise { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>A name that rules use as a reading, and that facts answer: <c>water heater age</c>.</summary>
public sealed record ReadingAlias
{
    /// <summary>Facts that answer, <c>water heater/year</c>.</summary>
    public IReadOnlyList<string> Facts { get => field ?? []; init; }

    /// <summary>Kinds of reading that answer.</summary>
    public IReadOnlyList<string> Readings { get => field ?? []; init; }
}
