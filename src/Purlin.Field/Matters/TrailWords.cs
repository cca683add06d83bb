using Purlin.Field.Visits;
using Purlin.Journal;

namespace Purlin.Field.Matters;

/// <summary>One line of the trail of evidence.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Place">Where to go to see it in its place.</param>
/// <param name="At">When.</param>
public sealed record TrailStep(EntryName Entry, string Words, EntryName? Place, DateTimeOffset At);

/// <summary>Says the entries that a matter rests on.</summary>
public static class TrailWords
{
    public static IReadOnlyList<TrailStep> Of(OpenVisit visit, IReadOnlyList<EntryName> evidence)
    {
        var entries = visit.Entries.GroupBy(entry => entry.Name).ToDictionary(group => group.Key, group => group.First());
        return [.. evidence.Where(entries.ContainsKey).Select(name => Step(visit, entries[name]))];
    }

    private static TrailStep Step(OpenVisit visit, Entry entry) => entry.Body switch
    {
        EntryBody.ObservationMade made => new(entry.Name, Observed(made, visit), made.Place, entry.Hlc.At),
        EntryBody.ReadingTaken taken => new(entry.Name, Joined($"Measured: {taken.Kind} {taken.Amount}", taken.Label, taken.Instrument is null ? null : $"by {taken.Instrument}"), taken.Place, entry.Hlc.At),
        EntryBody.FactStated fact => new(entry.Name, $"{Kind(fact.Component, visit)}: {fact.Fact} {fact.Value} {fact.Unit} ({fact.Basis})".Replace("  ", " ", StringComparison.Ordinal), PlaceOf(fact.Component, visit), entry.Hlc.At),
        EntryBody.ComponentAdded added => new(entry.Name, Hand.Sentence(added.Kind), added.Place, entry.Hlc.At),
        var other => new(entry.Name, House.ActWords.Of(other, visit), null, entry.Hlc.At),
    };

    private static string Observed(EntryBody.ObservationMade made, OpenVisit visit)
    {
        var name = made.Condition is { } id && visit.Book.Conditions.TryGetValue(id, out var condition) ? condition.Name : null;
        var sample = made.Sample is { } tried ? $"{tried.Failed} of {tried.Tried} tried, of {tried.Of}" : null;
        return $"{Hand.Sentence(made.Outcome)}: {Joined(name, made.Words, made.Spot, made.Reason, sample)}";
    }

    private static string Joined(params IEnumerable<string?> parts) => string.Join(", ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));

    private static string Kind(EntryName component, OpenVisit visit) =>
        visit.Inspection.Components.FirstOrDefault(one => one.Id == component) is { } found ? Hand.ComponentInWords(found) : "House";

    private static EntryName? PlaceOf(EntryName component, OpenVisit visit) => visit.Inspection.Components.FirstOrDefault(one => one.Id == component)?.Place;
}
