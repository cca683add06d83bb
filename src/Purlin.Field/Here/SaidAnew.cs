using Purlin.Field.Visits;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.Here;

/// <summary>
/// An observation said anew: more exactly where, with counts, with the reason. The earlier one is withdrawn in the same act, and what was tied
/// to it, photographs and loose ends, goes over to the new one.
/// </summary>
public static class SaidAnew
{
    /// <summary>The new observation stands second in the act that is written.</summary>
    public static EntryName Name { get; } = Together.Nth(2);

    /// <summary>What is to be written as one act.</summary>
    public static IReadOnlyList<EntryBody> Of(Inspection inspection, Observation before, EntryBody.ObservationMade now) =>
    [
        new EntryBody.EntryWithdrawn { Entry = before.Id },
        now,
        .. inspection.Photos.Where(photo => photo.For == before.Id).Select(Over),
        .. inspection.Ties.Values.SelectMany(slot => slot.Standing).Where(tie => tie.Value.Evidence.Contains(before.Id)).Select(tie => tie.Value with { Evidence = [.. tie.Value.Evidence.Select(name => name == before.Id ? Name : name)] }),
    ];

    /// <summary>What was just seen, under the name it has since it was said more exactly; none when it was taken back.</summary>
    public static EntryName? NowOf(OpenVisit visit, EntryName? seen)
    {
        if (seen is not { } name || visit.Inspection.Observations.Any(known => known.Id == name)) return seen;
        return visit.Entries.FirstOrDefault(entry => entry.Name == name)?.Body is EntryBody.ObservationMade { Condition: { } condition } before
            ? visit.Inspection.Observations.LastOrDefault(known => known.Body.Place == before.Place && known.Body.Condition == condition && known.Body.Outcome == Outcome.Seen)?.Id
            : null;
    }

    private static EntryBody.PhotoPlaced Over(Photo photo) => new()
    {
        Photo = photo.Id,
        Use = photo.Placed?.Value.Use ?? PhotoUse.Finding,
        For = Name,
        Place = photo.Place,
        Component = photo.Component,
        Caption = photo.Placed?.Value.Caption,
        Reason = photo.Placed?.Value.Reason,
    };
}
