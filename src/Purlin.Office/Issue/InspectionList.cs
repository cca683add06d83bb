using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>The inspections the office holds, newest visit first, with what is here of each. The inspector's own wording is kept like one and is none.</summary>
public sealed class InspectionList(OfficeStore store, BlobFolder blobs)
{
    /// <summary>One object an inspection.</summary>
    public async Task<JsonArray> All(CancellationToken cancel)
    {
        await using var db = store.Db();
        var held = await db.Entries.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp != OwnWording.Journal)
            .GroupBy(row => row.Insp).Select(group => new { Insp = group.Key, Last = group.Max(row => row.ReceivedAt) }).ToListAsync(cancel);
        List<(DateOnly Date, JsonObject Json)> all = [];
        foreach (var inspection in held)
        {
            var (state, unread) = await store.With(inspection.Insp, journal => (Folding.Fold(journal.Entries), journal.Held.Count), cancel);
            var photos = state.Photos.Select(photo => photo.Body.Sha).Distinct(StringComparer.Ordinal).ToList();
            var here = await blobs.Whole(photos, cancel);
            all.Add((state.Opening?.Body.Date ?? default, new JsonObject
            {
                ["id"] = inspection.Insp,
                ["address"] = state.Opening?.Body.Property.Address ?? "",
                ["date"] = state.Opening?.Body.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
                ["demo"] = state.Opening?.Body.Demo ?? false,
                ["entries"] = state.Entries,
                ["held"] = unread,
                ["photos"] = photos.Count,
                ["photosHere"] = here.Count,
                ["editions"] = state.Editions.Count,
                ["lastReceived"] = DateTimeOffset.FromUnixTimeMilliseconds(inspection.Last).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
            }));
        }

        return new JsonArray([.. all.OrderByDescending(one => one.Date).Select(one => (JsonNode)one.Json)]);
    }
}
