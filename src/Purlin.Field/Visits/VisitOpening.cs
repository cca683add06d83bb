using Purlin.Field.Device;
using Purlin.Field.MyWording;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Journal.Told;

namespace Purlin.Field.Visits;

/// <summary>Opens an inspection: the opening entry, the places a house of these facts has, this phone, and the inspector's own wording, in one transaction.</summary>
public sealed class VisitOpening(Phone phone, OwnBook own)
{
    public async Task<(string Inspection, string Words)> OpenAsync(EntryBody.InspectionOpened opened, ToldHouse told)
    {
        ArgumentNullException.ThrowIfNull(told);
        var inspection = await phone.NewVisitAsync(opened.Property.Address, opened.Date, opened.Demo);
        List<EntryBody> bodies = [opened, new EntryBody.DeviceJoined { Name = "Phone" }, .. told.Entries(Together.Nth, 2), .. OwnWording.Entries(await own.ReadAsync(), Folding.Fold([]))];
        var kept = await phone.WriteAsync(inspection, "The inspection", bodies);
        return kept.Ok ? (inspection, "") : ("", kept.Words ?? "The inspection was not kept.");
    }
}
