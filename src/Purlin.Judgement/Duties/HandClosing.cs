using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Duties;

/// <summary>What a duty closed by hand comes to.</summary>
internal static class HandClosing
{
    /// <summary>
    /// None when it does not close this way: a sentence without words tells nothing, nor does a limitation without a reason.
    /// </summary>
    public static (DutyStanding State, string Words)? Close(Slot<EntryBody.DutyMet> slot, bool describe)
    {
        var body = slot.Value;
        var words = body.Text ?? body.Reason ?? "";
        return body.How switch
        {
            DutyClose.NotPresent => (DutyStanding.NotPresent, words),
            _ when !words.Any(char.IsLetterOrDigit) => null,
            DutyClose.NotInspected => (DutyStanding.Limited, words),
            DutyClose.Described => (DutyStanding.Met, words),
            DutyClose.Result when !describe || Tells(body.Text) => (DutyStanding.Met, words),
            _ => null,
        };
    }

    private static bool Tells(string? text) => text?.Any(char.IsLetterOrDigit) == true;
}
