using Purlin.Book;
using Purlin.Book.Looking;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Findings;

namespace Purlin.Judgement.Looking;

/// <summary>What the order of looks asks of the whole house, laid out once.</summary>
internal sealed class LookGround
{
    private readonly Dictionary<string, Profile> expected = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> together = new(StringComparer.Ordinal);
    private readonly ILookup<string, Fit> fits;
    private readonly Dictionary<EntryName, string> kinds;
    private readonly Dictionary<(LooseEndId End, string Condition), double> best = [];

    public LookGround(Inspection inspection, JudgedInspection judged, RuleBook book)
    {
        (Inspection, Judged, Book) = (inspection, judged, book);
        Property = inspection.Opening?.Body.Property;
        kinds = inspection.Places.ToDictionary(place => place.Id, place => place.Kind);
        Things = inspection.Components.ToLookup(component => component.Kind, StringComparer.Ordinal);
        Seen = inspection.Observations.Where(seen => seen.Body.Condition is not null && seen.Body.Outcome == Outcome.Seen)
            .ToLookup(seen => seen.Body.Condition!, StringComparer.Ordinal);
        foreach (var profile in Alerting.Expected(book, Property, State(inspection), judged.Year, Things))
            foreach (var condition in profile.Conditions) expected.TryAdd(condition, profile);
        foreach (var cause in book.Causes.Where(cause => cause.Conditions.Any(Seen.Contains)))
            foreach (var condition in cause.Conditions) together.TryAdd(condition, [.. cause.Conditions]);
        fits = book.Fits.SelectMany(fit => fit.Conditions.Select(id => (id, fit))).ToLookup(pair => pair.id, pair => pair.fit, StringComparer.Ordinal);
    }

    private static string? State(Inspection inspection) =>
        inspection.Components.FirstOrDefault(component => component.Id == inspection.Opening?.Id)?.Fact("state")?.Value.Text;

    public Inspection Inspection { get; }

    public JudgedInspection Judged { get; }

    public RuleBook Book { get; }

    public Property? Property { get; }

    /// <summary>What is on record, by kind of component.</summary>
    public ILookup<string, Component> Things { get; }

    /// <summary>What was seen anywhere, by condition.</summary>
    public ILookup<string, Observation> Seen { get; }

    /// <summary>Year of the house; none while nobody knows.</summary>
    public int? Built => Property?.YearBuilt;

    /// <summary>What leads to expect a condition in a house of these years and materials.</summary>
    public Profile? Expected(string condition) => expected.GetValueOrDefault(condition);

    /// <summary>Another condition of one cause that was seen: a full gutter where the wall is stained.</summary>
    public string? SeenOfItsCause(string condition) =>
        together.TryGetValue(condition, out var others) ? others.FirstOrDefault(other => other != condition && Seen.Contains(other)) : null;

    /// <summary>The chance that a thing of this kind stands in a place, from what is on record and from what is usual in such a house.</summary>
    public double Share(EntryName? place, string kind, string component)
    {
        if (place is not null && Things[component].Any(thing => thing.Place == place)) return 1;
        // What was said not to be here, or not in the house at all, is not looked for here again.
        if (Inspection.Absences.Any(absence => absence.Kind == component && (absence.Place is null ? absence.Part is null && !Things.Contains(component) : absence.Place == place))) return 0;
        var share = Book.Usual.GetValueOrDefault(kind)?.Share(component, Property) ?? 0;
        // One water heater on record in the garage: a second one in the attic is unlikely.
        return Book.ToldApart.Contains(component) && Things.Contains(component) ? share * Second : share;
    }

    /// <summary>
    /// Whether a place is as good as any to answer a question about such a thing: bare wire is looked for in the attic, not at each wall.
    /// </summary>
    public bool IsBestFor(LooseEnd end, Condition condition, double here)
    {
        if (!best.TryGetValue((end.Id, condition.Id), out var most))
        {
            most = end.StillToLook.Select(other => kinds.TryGetValue(other, out var kind) ? Share(other, kind, condition.Component) : 0).DefaultIfEmpty(here).Max();
            best[(end.Id, condition.Id)] = most;
        }
        return here >= AsGood * most;
    }

    /// <summary>
    /// Whether things that are on record can show a condition: false when all of them are told to be of another material. The things of
    /// the place speak; where it has none, those of the house.
    /// </summary>
    public bool CanShow(Condition condition, IReadOnlyList<Component> here)
    {
        var things = here.Count > 0 ? here : [.. Things[condition.Component]];
        foreach (var byFact in fits[condition.Id].GroupBy(fit => fit.Fact, StringComparer.Ordinal))
        {
            var told = things.Select(thing => thing.Fact(byFact.Key)?.Value.Text).Where(text => !string.IsNullOrWhiteSpace(text)).ToList();
            if (told.Count > 0 && told.Count == things.Count && !told.Exists(text => byFact.Any(fit => fit.Holds(text!)))) return false;
        }
        return true;
    }

    /// <summary>Whether a condition needs a certain material and a thing of it is on record.</summary>
    public bool IsOfItsMaterial(Condition condition, IReadOnlyList<Component> here) =>
        fits[condition.Id].Any(fit => here.Any(thing => thing.Fact(fit.Fact)?.Value.Text is { } text && fit.Holds(text)));

    private const double Second = 0.1;
    private const double AsGood = 0.8;
}
