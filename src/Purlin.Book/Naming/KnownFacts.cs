using System.Collections.Frozen;

namespace Purlin.Book.Naming;

/// <summary>Every fact and every kind of component that some line of a book speaks of, with the words that those lines know.</summary>
internal sealed class KnownFacts
{
    /// <summary>The name of the house among the kinds of component.</summary>
    private const string House = "house";

    private static readonly string[] YesOrNo = ["yes", "no"];

    private readonly RuleBook book;
    private readonly ILookup<string, string> names;
    private readonly FrozenSet<string> anywhere;

    public KnownFacts(RuleBook book)
    {
        this.book = book;
        List<(string Kind, string Fact)> all =
        [
            .. book.Sheets.Values.SelectMany(sheet => sheet.Facts.Select(fact => (sheet.Component, fact.Fact))),
            .. book.FactRules.Select(rule => (rule.Component, rule.Fact)),
            .. book.Feeds.SelectMany(feed => feed.Inputs.Values.SelectMany(taking => taking.FactsOf(feed.Components))),
            .. book.Feeds.SelectMany(feed => feed.Bars.SelectMany(bar => feed.Components.Select(kind => (kind, bar.Fact)))),
            .. book.Aliases.Values.SelectMany(alias => alias.Facts).Concat(book.Conditions.Values.SelectMany(condition =>
                condition.Look).SelectMany(follow => follow.Facts)).Select(Split),
            .. book.Limitations.Values.Select(rule => rule.When?.Fact).OfType<string>().SelectMany(fact =>
                ((string Kind, string Fact)[])[Split(fact), (House, fact)]),
            .. book.Core.Values.SelectMany(core => core.Components.SelectMany(kind => core.Facts.Select(fact => (kind, fact)))),
            .. book.Visit.SelectMany(rule => rule.Facts).Select(fact => (House, fact.Name)),
            .. book.Conditions.Values.SelectMany(condition => condition.Weight.Where).Select(there => (House, there.Fact)),
            .. book.Fits.Select(fit => (fit.Component, fit.Fact)),
            .. book.Synonyms.Where(line => line.Of == Named.Value).SelectMany(line => line.Components.Select(kind => (kind, line.Fact))),
        ];
        names = all.Where(pair => pair.Fact.Length > 0).Distinct().ToLookup(pair => pair.Kind, pair => pair.Fact, StringComparer.Ordinal);
        Components =
        [
            .. book.ComponentKinds().Concat(all.Select(pair => pair.Kind)).Concat(book.Core.Values.SelectMany(core =>
                core.Components)).Concat(book.Limitations.Values.Select(rule => rule.Component))
                .Concat(book.Feeds.SelectMany(feed => feed.Components)).Concat(book.ReadingKinds.Values.Select(kind =>
                    kind.Component)).Concat(book.Usual.Values.SelectMany(usual => usual.Things).Select(thing => thing.Component))
                .Where(kind => kind.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
        anywhere = all.Select(pair => pair.Fact).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>Kinds of component, in alphabetical order.</summary>
    public IReadOnlyList<string> Components { get; }

    /// <summary>Facts of a kind.</summary>
    public IEnumerable<string> Of(string kind) => names[kind];

    /// <summary>Whether some kind has a fact of this name. A house may say by the name of a kind that it has none: "pool: none".</summary>
    public bool IsAnywhere(string kind, string fact) =>
        anywhere.Contains(fact) || (kind == House && Components.Contains(fact, StringComparer.Ordinal));

    /// <summary>Whether the book knows it as a number.</summary>
    public bool IsNumber(string kind, string fact) =>
        Asked(kind, fact) is { } asked ? asked.Number : book.FactRules.Any(rule => rule.Component == kind && rule.Fact == fact && (rule.Age
            || rule.Raise.Above is not null || rule.Raise.Below is not null))
            || (fact == "year" && kind.Length > 0);

    /// <summary>Whether it is answered by yes or no.</summary>
    public bool IsYesOrNo(string kind, string fact) => Asked(kind, fact) is { Choices.Count: > 0 } asked
        && asked.Choices.All(YesOrNo.Contains);

    /// <summary>The unit in which it is asked for.</summary>
    public string UnitOf(string kind, string fact) => Asked(kind, fact)?.Unit ?? "";

    /// <summary>
    /// The words by which something is judged or asked, those of the maps first, since they are compared letter by letter.
    /// </summary>
    public IEnumerable<string> WordsOf(string kind, string fact)
    {
        if (IsNumber(kind, fact) || IsYesOrNo(kind, fact)) return [];
        var maps = book.Feeds.SelectMany(feed => feed.Inputs.Values.Where(taking => taking.FactsOf(feed.Components).Contains((kind,
            fact)))).SelectMany(taking => taking.WordMaps)
            .Distinct(StringComparer.Ordinal).SelectMany(map => book.WordMaps.TryGetValue(map, out var words)
                ? words.Keys : []).Where(word => !word.Contains('/', StringComparison.Ordinal));
        return (Asked(kind, fact)?.Choices ?? []).Concat(maps)
            .Concat(book.FactRules.Where(rule => rule.Component == kind && rule.Fact == fact).SelectMany(rule => rule.Raise.Is))
            .Concat(book.Feeds.Where(feed => feed.Components.Contains(kind)).SelectMany(feed => feed.Bars).Where(bar =>
                bar.Fact == fact).SelectMany(bar => bar.Is))
            .Concat(book.Limitations.Values.Where(rule => rule.When?.Fact is { } when && Split(when) == (kind, fact)).Select(rule =>
                rule.When!.Is).OfType<string>())
            .Distinct(StringComparer.Ordinal);
    }

    /// <summary>Whether some line of the book judges by the words, so that words it does not know lose something.</summary>
    public bool IsJudged(string kind, string fact) => kind == House || book.FactRules.Any(rule => rule.Component == kind
        && rule.Fact == fact)
        || book.Feeds.Any(feed => feed.Inputs.Values.Any(taking => taking.FactsOf(feed.Components).Contains((kind, fact))))
        || book.Limitations.Values.Any(rule => rule.When?.Fact is { } when && Split(when) == (kind, fact));

    private FactKind? Asked(string kind, string fact) => book.Sheets.TryGetValue(kind, out var sheet) ? sheet.Facts.FirstOrDefault(one =>
        one.Fact == fact) : null;

    private static (string Kind, string Fact) Split(string fact) => fact.LastIndexOf('/') is > 0 and var slash ? (fact[..slash],
        fact[(slash + 1)..]) : (House, fact);
}
