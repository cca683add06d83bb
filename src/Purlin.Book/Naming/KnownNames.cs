using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Book.Naming;

/// <summary>
/// Finds among the names of a book what somebody meant who wrote them otherwise. What is plain is taken; for the rest the nearest names are
/// told.
/// One is made for each book and kept with it; several threads may ask.
/// </summary>
public sealed class KnownNames
{
    private static readonly ConditionalWeakTable<RuleBook, KnownNames> Made = [];

    private readonly RuleBook book;
    private readonly ILookup<Named, Synonym> synonyms;
    private readonly KnownFacts facts;
    private readonly ValueWords words;
    private readonly Lazy<NameList> places, components, readings, conditions, units, limitations;
    private readonly ConcurrentDictionary<string, NameList> factNames = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Kind, string Fact), (NameList Words, IReadOnlyList<string> Parts)> values = new();

    private KnownNames(RuleBook book)
    {
        this.book = book;
        synonyms = book.Synonyms.ToLookup(line => line.Of);
        facts = new KnownFacts(book);
        words = new ValueWords(synonyms);
        places = new(() => new NameList(PlaceKind.All, Said(Named.Place)));
        components = new(() => new NameList(facts.Components, Said(Named.Component)));
        readings = new(() => new NameList(book.ReadingKinds.Keys.Order(StringComparer.Ordinal), Said(Named.Reading)));
        conditions = new(() => new NameList(book.Conditions.Keys.Order(StringComparer.Ordinal), Said(Named.Condition)
            .Concat(book.Conditions.Values.OrderBy(line => line.Id, StringComparer.Ordinal).Select(line => (line.Name, line.Id)))));
        units = new(() => new NameList(synonyms[Named.Unit].Select(line => line.Means), Said(Named.Unit)));
        limitations = new(() => new NameList(book.Limitations.Keys.Order(StringComparer.Ordinal), []));
    }

    /// <summary>The names of a book.</summary>
    public static KnownNames Of(RuleBook book) => Made.GetValue(book, one => new KnownNames(one));

    /// <summary>A kind of place.</summary>
    public Meant Place(string given) => places.Value.Find(given);

    /// <summary>A kind of component.</summary>
    public Meant Component(string given) => components.Value.Find(given);

    /// <summary>A kind of reading.</summary>
    public Meant Reading(string given) => readings.Value.Find(given);

    /// <summary>The id of a condition; its name is taken for it.</summary>
    public Meant Condition(string given) => conditions.Value.Find(given);

    /// <summary>The id of a limitation.</summary>
    public Meant Limitation(string given) => limitations.Value.Find(given);

    /// <summary>A unit, as it is written by whom it does not matter: <c>PSI</c>, <c>degrees F</c>.</summary>
    public Meant Unit(string given) => Units.Compatible(given, given) ? Meant.AsWritten(given) : units.Value.Find(given);

    /// <summary>The name of a fact of this kind of component. One that any other kind has is taken as it is.</summary>
    public Meant Fact(string kind, string given) => facts.IsAnywhere(kind, given) ? Meant.AsWritten(given) : NamesOf(kind).Find(given);

    /// <summary>Whether the fact of this kind is a number.</summary>
    public bool IsNumber(string kind, string fact) => facts.IsNumber(kind, fact);

    /// <summary>Whether the fact of this kind is answered by yes or no.</summary>
    public bool IsYesOrNo(string kind, string fact) => facts.IsYesOrNo(kind, fact);

    /// <summary>The unit in which the number is asked for; empty where it has none or nobody asks.</summary>
    public string UnitOf(string kind, string fact) => facts.UnitOf(kind, fact);

    /// <summary>The words of a fact. Where the book knows no words for it everything is taken as it is.</summary>
    public Meant Value(string kind, string fact, string given)
    {
        var (known, parts) = values.GetOrAdd((kind, fact), key => WordsOf(key.Kind, key.Fact));
        if (known.Names.Count == 0) return Meant.AsWritten(given);
        var meant = known.Find(given);
        if (meant.Found == Found.Unknown && !facts.IsJudged(kind, fact)) return Meant.AsWritten(given);
        return meant.Found is Found.AsWritten or Found.Same || !parts.Any(part => given.Contains(part, StringComparison.OrdinalIgnoreCase))
            ? meant : Meant.AsWritten(given);
    }

    private NameList NamesOf(string kind) => factNames.GetOrAdd(kind, one => new NameList(facts.Of(one), SaidOf(Named.Fact, one, "")));

    private (NameList, IReadOnlyList<string>) WordsOf(string kind, string fact)
    {
        List<string> meant = [.. synonyms[Named.Value].Where(line => IsFor(line, kind, fact)).Select(line => line.Means)];
        return (new NameList(facts.WordsOf(kind, fact).Concat(meant), SaidOf(Named.Value, kind, fact), words.Reduce),
            [.. book.Fits.Where(fit => fit.Component == kind && fit.Fact == fact).SelectMany(fit =>
                fit.Words).Distinct(StringComparer.Ordinal)]);
    }

    private IEnumerable<(string Said, string Means)> Said(Named of) => synonyms[of].SelectMany(line => line.Said.Select(said =>
        (said, line.Means)));

    private IEnumerable<(string Said, string Means)> SaidOf(Named of, string kind, string fact) =>
        synonyms[of].Where(line => IsFor(line, kind, fact)).SelectMany(line => line.Said.Select(said => (said, line.Means)));

    private static bool IsFor(Synonym line, string kind, string fact) => line.Fact == fact && (line.Components.Count == 0
        || line.Components.Contains(kind));
}
