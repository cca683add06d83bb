using System.Collections.Frozen;
using System.Collections.Immutable;
using Purlin.Book.Looking;
using Purlin.Book.Naming;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>All knowledge as typed rules, read from <c>rulebook/</c>; a rule without a source or with a dangling reference is refused.</summary>
public sealed record RuleBook
{
    /// <summary>The literal that stands for a source where a fact of the trade has none.</summary>
    public const string CommonPractice = "common practice";

    /// <summary>What stands for the source of a condition of the inspector's own.</summary>
    public const string OwnKnowledge = "the inspector's own knowledge";

    /// <summary>The book itself, under own wording that was laid over it; none for a book as it was read.</summary>
    internal RuleBook? Beneath { get; init; }

    /// <summary>Edition, year and month and a counter: <c>2026.11.1</c>.</summary>
    public required string Edition { get; init; }

    /// <summary>SHA-256 over the files this book was read from, see <see cref="BookEdition.HashOf"/>; own wording laid over it changes nothing of it,
    /// since that stands in the journal. Worked out when first asked for.</summary>
    public string Hash => HashOfFiles.Value;

    internal Lazy<string> HashOfFiles { get; init; } = new(() => "");

    /// <summary>Conditions by id.</summary>
    public FrozenDictionary<string, Condition> Conditions { get; init; } = FrozenDictionary<string, Condition>.Empty;

    /// <summary>Limitations by id.</summary>
    public FrozenDictionary<string, LimitationRule> Limitations { get; init; } = FrozenDictionary<string, LimitationRule>.Empty;

    /// <summary>Profiles, highest rank first.</summary>
    public ImmutableArray<Profile> Profiles { get; init; } = [];

    /// <summary>Kinds of reading by name.</summary>
    public FrozenDictionary<string, ReadingKind> ReadingKinds { get; init; } = FrozenDictionary<string, ReadingKind>.Empty;

    /// <summary>How readings and facts feed the reckonings, in the order of their ids.</summary>
    public ImmutableArray<Feed> Feeds { get; init; } = [];

    /// <summary>Facts that raise a condition by themselves.</summary>
    public ImmutableArray<FactRule> FactRules { get; init; } = [];

    /// <summary>What is asked for on each kind of component.</summary>
    public FrozenDictionary<string, FactSheet> Sheets { get; init; } = FrozenDictionary<string, FactSheet>.Empty;

    /// <summary>Causes that explain several conditions, in the order of their ids.</summary>
    public ImmutableArray<CauseRule> Causes { get; init; } = [];

    /// <summary>Conditions that matter more together, in the order of their ids.</summary>
    public ImmutableArray<Escalation> Escalations { get; init; } = [];

    /// <summary>By when a matter wants doing, in the order in which they are tried.</summary>
    public ImmutableArray<ByWhenRule> ByWhen { get; init; } = [];

    /// <summary>What stands where in most houses, by kind of place.</summary>
    public FrozenDictionary<string, Usual> Usual { get; init; } = FrozenDictionary<string, Usual>.Empty;

    /// <summary>How often a condition is met, by its id.</summary>
    public FrozenDictionary<string, Often> Often { get; init; } = FrozenDictionary<string, Often>.Empty;

    /// <summary>Conditions that only some materials can show.</summary>
    public ImmutableArray<Fit> Fits { get; init; } = [];

    /// <summary>What inspectors write for the names of the book.</summary>
    public ImmutableArray<Synonym> Synonyms { get; init; } = [];

    /// <summary>Standards of practice by id.</summary>
    public FrozenDictionary<string, Standard> Standards { get; init; } = FrozenDictionary<string, Standard>.Empty;

    /// <summary>The common core of all standards by id.</summary>
    public FrozenDictionary<string, CoreDuty> Core { get; init; } = FrozenDictionary<string, CoreDuty>.Empty;

    /// <summary>The common core of the duties around the visit, in the order of their ids.</summary>
    public ImmutableArray<VisitRule> Visit { get; init; } = [];

    /// <summary>The settings that standards may have, by id.</summary>
    public FrozenDictionary<string, SettingRule> Settings { get; init; } = FrozenDictionary<string, SettingRule>.Empty;

    /// <summary>Maps of words by name: what an inspector writes, in the order of the book, and the word by which a reckoning knows it.</summary>
    public FrozenDictionary<string, IReadOnlyDictionary<string, string>> WordMaps { get; init; } = FrozenDictionary<string, IReadOnlyDictionary<string, string>>.Empty;

    /// <summary>Names that rules use as readings and that facts answer.</summary>
    public FrozenDictionary<string, ReadingAlias> Aliases { get; init; } = FrozenDictionary<string, ReadingAlias>.Empty;

    /// <summary>Sources by id.</summary>
    public FrozenDictionary<string, SourceLine> Sources { get; init; } = FrozenDictionary<string, SourceLine>.Empty;

    /// <summary>The language with its sentences for people, own wording over it.</summary>
    public Tongue Words { get; init; } = Tongue.Empty;

    /// <summary>Sentences of the usual cautions by id.</summary>
    public FrozenDictionary<string, string> Cautions { get; init; } = FrozenDictionary<string, string>.Empty;

    /// <summary>Kinds of component of which each one is a matter of its own (two water heaters), unlike windows or outlets.</summary>
    public FrozenSet<string> ToldApart { get; init; } = FrozenSet<string>.Empty;

    /// <summary>Words and short phrases that mean the same as others when an inspector speaks: <c>gfi</c> is <c>gfci</c>.</summary>
    public FrozenDictionary<string, string> SameWords { get; init; } = FrozenDictionary<string, string>.Empty;

    /// <summary>What dictation and hurried fingers make of words, and the words that were meant: <c>soft it</c> is <c>soffit</c>.</summary>
    public FrozenDictionary<string, string> Misheard { get; init; } = FrozenDictionary<string, string>.Empty;

    /// <summary>Words that tell nothing about a defect: "the", "looks", "kind of".</summary>
    public FrozenSet<string> FillerWords { get; init; } = FrozenSet<string>.Empty;

    /// <summary>How things, places and conditions are spoken of.</summary>
    public HearingWords Hearing { get; init; } = new();

    /// <summary>Lines that were refused, each with file and id; empty for a sound book.</summary>
    public ImmutableArray<Refusal> Refused { get; init; } = [];

    /// <summary>The rule book built into this program. Read once, when first asked for.</summary>
    public static RuleBook BuiltIn => BuiltInBook.Value;

    /// <summary>
    /// The book in another language: its words, and its own sentences where that language has them, under the keys of own wording
    /// (<c>water-heater.too-hot/do</c>). Own wording is compared with what this book says.
    /// </summary>
    public RuleBook In(Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(tongue);
        var layer = new OverlayLayer(this with { Words = tongue });
        foreach (var (key, sentence) in tongue.Sentences) layer.Say(key, sentence);
        return layer.Book();
    }

    private static readonly Lazy<RuleBook> BuiltInBook = new(() => BookReader.Read(BookFiles.Embedded(), BookFiles.Whole));

    /// <summary>Kinds of component that the conditions and fact sheets know, in alphabetical order.</summary>
    public ImmutableArray<string> ComponentKinds() => [.. Conditions.Values.Select(condition => condition.Component).Concat(Sheets.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Conditions of one kind of component, in order of their ids.</summary>
    public ImmutableArray<Condition> ConditionsOf(string componentKind) =>
        [.. Conditions.Values.Where(condition => condition.Component == componentKind).OrderBy(condition => condition.Id, StringComparer.Ordinal)];

    /// <summary>Conditions that are looked for in one kind of place, in order of their ids.</summary>
    public ImmutableArray<Condition> ConditionsIn(string placeKind) =>
        [.. Conditions.Values.Where(condition => condition.Places.Contains(placeKind)).OrderBy(condition => condition.Id, StringComparer.Ordinal)];

    /// <summary>Kinds of reading that are taken on one kind of component: its own, and those that a feed for it takes; in the order of the feeds.</summary>
    public ImmutableArray<string> ReadingsOn(string componentKind) =>
        [.. Feeds.Where(feed => feed.Components.Contains(componentKind)).SelectMany(feed => feed.ReadingKinds)
            .Concat(ReadingKinds.Values.Where(kind => kind.Component == componentKind).Select(kind => kind.Kind).Order(StringComparer.Ordinal))
            .Where(ReadingKinds.ContainsKey).Distinct(StringComparer.Ordinal)];

    /// <summary>How a reading of this kind says where it was taken: so far from the wall, at a point of the plan, or only by its place.</summary>
    public Pointing PointingOf(string readingKind) =>
        Feeds.SelectMany(feed => feed.Inputs.Values).Select(taking => taking.PointingOf(readingKind)).FirstOrDefault(pointing => pointing != Pointing.None);

    /// <summary>Kinds of component on which facts are asked for in such a place, in alphabetical order.</summary>
    public ImmutableArray<string> SheetsIn(string placeKind) =>
        [.. Sheets.Values.Where(sheet => sheet.Places.Contains(placeKind)).Select(sheet => sheet.Component).Order(StringComparer.Ordinal)];

    /// <summary>Whether one reading of this kind speaks for the whole house.</summary>
    public bool IsOfHouse(string readingKind) => ReadingKinds.TryGetValue(readingKind, out var kind) && kind.House;

    /// <summary>A source in words; the id itself for <c>common practice</c> and for ids nobody defined.</summary>
    public string SourceInWords(string id) => Sources.TryGetValue(id, out var source) ? source.InWords() : id;
}
