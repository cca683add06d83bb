using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Duties;

/// <summary>What a duty closed by hand comes to.</summary>
internal static class HandClosing
{
    /// <summary>None when it does not close this way: a result describes nothing unless it has words.</summary>
    public static (DutyStanding State, string Words)? Close(Slot<EntryBody.DutyMet> slot, bool describe)
    {
        var body = slot.Value;
        var words = body.Text ?? body.Reason ?? "";
        return body.How switch
        {
            DutyClose.NotPresent => (DutyStanding.NotPresent, words),
            DutyClose.NotInspected => (DutyStanding.Limited, words),
            DutyClose.Described => (DutyStanding.Met, words),
            DutyClose.Result when !describe || !string.IsNullOrWhiteSpace(body.Text) => (DutyStanding.Met, words),
            _ => null,
        };
    }
}
