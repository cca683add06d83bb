namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Outlines of places on their plans, by place.</summary>
    public IReadOnlyDictionary<EntryName, Slot<EntryBody.PlanDrawn>> Plans { get; init; } = new Dictionary<EntryName, Slot<EntryBody.PlanDrawn>>();
}

internal sealed partial class Gathered
{
    /// <summary>Outlines of places.</summary>
    public static Gathered Plans { get; } = new((state, inspection) => inspection with
    {
        Plans = state.Keyed("plan.drawn", key => key.Of!.Value, body => (EntryBody.PlanDrawn)body),
    });
}
