namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Loose ends tied by hand, by id of the loose end.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.LooseEndTied>> Ties { get; init; } = new Dictionary<string, Slot<EntryBody.LooseEndTied>>();

    /// <summary>What the inspector overruled, by id of the finding, then by part.</summary>
    public IReadOnlyDictionary<(string Finding, string Part), Slot<EntryBody.JudgementOverruled>> Overrulings { get; init; } = new Dictionary<(string, string), Slot<EntryBody.JudgementOverruled>>();

    /// <summary>Duties closed by hand, by id of the duty.</summary>
    public IReadOnlyDictionary<string, Slot<EntryBody.DutyMet>> DutiesMet { get; init; } = new Dictionary<string, Slot<EntryBody.DutyMet>>();
}

internal sealed partial class Gathered
{
    /// <summary>Loose ends tied by hand.</summary>
    public static Gathered Ties { get; } = new((state, inspection) => inspection with
    {
        Ties = state.Keyed("loose-end.tied", key => key.Which, body => (EntryBody.LooseEndTied)body),
    });

    /// <summary>What was overruled.</summary>
    public static Gathered Overrulings { get; } = new((state, inspection) => inspection with
    {
        Overrulings = state.Keyed("judgement.overruled", key => (key.Which, key.Part), body => (EntryBody.JudgementOverruled)body),
    });

    /// <summary>Duties closed by hand.</summary>
    public static Gathered DutiesMet { get; } = new((state, inspection) => inspection with
    {
        DutiesMet = state.Keyed("duty.met", key => key.Which, body => (EntryBody.DutyMet)body),
    });
}
