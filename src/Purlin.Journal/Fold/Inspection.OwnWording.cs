namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Sentences of the rule book in the inspector's own words, by key.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.WordingSaid>> Wordings { get; init; } = new Dictionary<string, Slot<EntryBody.WordingSaid>>();

    /// <summary>Conditions of the inspector's own, by id.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.ConditionWritten>> OwnConditions { get; init; } = new Dictionary<string, Slot<EntryBody.ConditionWritten>>();
}

internal sealed partial class Gathered
{
    /// <summary>Sentences in the inspector's own words.</summary>
    public static Gathered Wordings { get; } = new((state, inspection) => inspection with
    {
        Wordings = state.Keyed("wording.said", key => key.Which, body => (EntryBody.WordingSaid)body),
    });

    /// <summary>Conditions of the inspector's own.</summary>
    public static Gathered OwnConditions { get; } = new((state, inspection) => inspection with
    {
        OwnConditions = state.Keyed("condition.written", key => key.Which, body => (EntryBody.ConditionWritten)body),
    });
}
