using System.Collections.Frozen;
using System.Collections.Immutable;
using Purlin.Book.Looking;
using Purlin.Book.Naming;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>A rule book while it is being read: ids must be unique over all files, and every line needs a source.</summary>
internal sealed class BookDraft
{
    private readonly List<Refusal> refused = [];

    public Dictionary<string, (Condition Rule, string Path)> Conditions { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (LimitationRule Rule, string Path)> Limitations { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (Profile Rule, string Path)> Profiles { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (SourceLine Rule, string Path)> Sources { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (ReadingKind Rule, string Path)> ReadingKinds { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (Feed Rule, string Path)> Feeds { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (FactRule Rule, string Path)> FactRules { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (FactSheet Rule, string Path)> Sheets { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (CauseRule Rule, string Path)> Causes { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (Escalation Rule, string Path)> Escalations { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (Usual Rule, string Path)> Usual { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (Often Rule, string Path)> Often { get; } = new(StringComparer.Ordinal);

    public List<(Fit Rule, string Path)> Fits { get; } = [];

    public List<(Synonym Rule, string Path)> Synonyms { get; } = [];

    public Dictionary<string, (Standard Rule, string Path)> Standards { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (CoreDuty Rule, string Path)> Core { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (VisitRule Rule, string Path)> Visit { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, (SettingRule Rule, string Path)> Settings { get; } = new(StringComparer.Ordinal);

    /// <summary>In the order of the file: the first that fits decides.</summary>
    public Dictionary<string, (ByWhenRule Rule, string Path)> ByWhen { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, IReadOnlyDictionary<string, string>> WordMaps { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, ReadingAlias> Aliases { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> Sentences { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> Cautions { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> SameWords { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> Misheard { get; } = new(StringComparer.Ordinal);

    /// <summary>The files of the folder <c>hearing</c> by their names.</summary>
    public Dictionary<string, Dictionary<string, string[]>> Hearing { get; } = new(StringComparer.Ordinal);

    public HashSet<string> FillerWords { get; } = new(StringComparer.Ordinal);

    /// <summary>Rows of the table of eras; empty where the table is not among the files.</summary>
    public HashSet<string> Eras { get; } = new(StringComparer.Ordinal);

    public HashSet<string> ToldApart { get; } = new(StringComparer.Ordinal);

    public void Refuse(string what, string given, string allowed) => refused.Add(new Refusal(what, Said.Verbatim(given), Said.Verbatim(allowed)));

    /// <summary>The same document may stand in several files of sources, as long as it is the same.</summary>
    public void AddSource(string id, SourceLine source, BookLines file)
    {
        if (Sources.TryGetValue(id, out var first) && (first.Rule.Document, first.Rule.Section, first.Rule.Edition) == (source.Document, source.Section, source.Edition)) return;
        file.Add(Sources, id, source, null);
    }

    public RuleBook ToBook(BookEdition edition, Lazy<string> hash) => new()
    {
        Edition = edition.Number,
        HashOfFiles = hash,
        Conditions = Frozen(Conditions),
        Limitations = Frozen(Limitations),
        Profiles = [.. Profiles.Values.Select(line => line.Rule).OrderByDescending(profile => profile.Rank).ThenBy(profile => profile.Id, StringComparer.Ordinal)],
        Sources = Frozen(Sources),
        ByWhen = [.. ByWhen.Values.Select(line => line.Rule)],
        ReadingKinds = Frozen(ReadingKinds),
        Feeds = InOrder(Feeds),
        FactRules = InOrder(FactRules),
        Sheets = Frozen(Sheets),
        Causes = InOrder(Causes),
        Escalations = InOrder(Escalations),
        Standards = Frozen(Standards),
        Usual = Frozen(Usual),
        Often = Frozen(Often),
        Fits = [.. Fits.Select(line => line.Rule)],
        Synonyms = [.. Synonyms.Select(line => line.Rule)],
        Core = Frozen(Core),
        Visit = InOrder(Visit),
        Settings = Frozen(Settings),
        WordMaps = WordMaps.ToFrozenDictionary(StringComparer.Ordinal),
        Aliases = Aliases.ToFrozenDictionary(StringComparer.Ordinal),
        Words = Sentences.Count == 0 ? Tongue.BuiltIn(Tongue.Standard) : Tongue.BuiltIn(Tongue.Standard).Under(Sentences),
        Cautions = Cautions.ToFrozenDictionary(StringComparer.Ordinal),
        SameWords = SameWords.ToFrozenDictionary(StringComparer.Ordinal),
        Misheard = Misheard.ToFrozenDictionary(StringComparer.Ordinal),
        Hearing = HearingWords.Of(Hearing),
        FillerWords = FillerWords.ToFrozenSet(StringComparer.Ordinal),
        ToldApart = ToldApart.ToFrozenSet(StringComparer.Ordinal),
        Refused = [.. refused],
    };

    private static ImmutableArray<T> InOrder<T>(Dictionary<string, (T Rule, string Path)> lines) =>
        [.. lines.OrderBy(line => line.Key, StringComparer.Ordinal).Select(line => line.Value.Rule)];

    private static FrozenDictionary<string, T> Frozen<T>(Dictionary<string, (T Rule, string Path)> lines) =>
        lines.ToFrozenDictionary(line => line.Key, line => line.Value.Rule, StringComparer.Ordinal);
}
