namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>
    /// Facts of something that is no component, no part of the house and not the house: they stand on record and belong to nothing.
    /// </summary>
    public IReadOnlyList<StrayFact> StrayFacts { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Facts that belong to nothing. What was taken back was something once, and its facts went with it.</summary>
    public static Gathered StrayFacts { get; } = new((state, inspection) => inspection with
    {
        StrayFacts =
        [
            .. from slot in state.Slots.OfType("fact.stated")
               where slot.Key.Of is { } of && !state.Is<EntryBody.ComponentAdded>(of) && !state.Is<EntryBody.PartAdded>(of)
                   && !state.Is<EntryBody.InspectionOpened>(of)
               let line = slot.Standing[0]
               select new StrayFact(line.Name, slot.Key.Of!.Value, slot.Key.Which, FactOf((EntryBody.FactStated)line.Body)),
        ],
    });
}

/// <summary>A fact that belongs to nothing.</summary>
/// <param name="Entry">The entry that states it.</param>
/// <param name="Of">What it names as its owner.</param>
/// <param name="Name">Which fact.</param>
/// <param name="Fact">What is stated.</param>
public sealed record StrayFact(EntryName Entry, EntryName Of, string Name, Fact Fact);
