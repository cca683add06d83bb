using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Features;
using Purlin.Journal;
using Purlin.Office.Owner;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;
using Purlin.Office.Sync;

namespace Purlin.Office.Issue;

/// <summary>What the office holds: inspections, pictures, archives, the key of receipts, how well its disk is.</summary>
internal static class InspectionEndpoints
{
    public const string NotHere = "The office holds nothing of this inspection.";

    public static void MapInspections(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/inspections", List);
        routes.MapGet("/office/inspections/{insp}/archive", Archive);
        routes.MapPut("/office/inspections/{insp}/retention", Retain);
        routes.MapDelete("/office/inspections/{insp}", Erase);
        routes.MapGet("/office/pictures/{sha}", Picture);
        routes.MapGet("/office/key", (ReceiptChain receipts) => Results.Text(receipts.PublicKey, "application/x-pem-file"));
        routes.MapGet("/office/state", State);
    }

    private static async Task<IResult> List(string? search, int? skip, int? count, HttpContext context, Desk desk)
    {
        var page = await desk.Journals.List(new ListAsk(search, Math.Max(0, skip ?? 0), count is { } most ? Math.Clamp(most, 0, 10_000) : null), context.RequestAborted);
        context.Response.Headers["Purlin-Total"] = page.Total.ToString(CultureInfo.InvariantCulture);
        return Results.Json(page.Inspections);
    }

    /// <summary>Written straight into the answer: an archive needs no room on the office's disk, so that one can be had when the disk is full.</summary>
    private static async Task<IResult> Archive(string insp, HttpContext context, Desk desk)
    {
        if (!SyncEndpoints.IsInspection(insp) || await desk.Archiving.Prepare(insp, context.RequestAborted) is not { } leaving) return Refusals.Json(StatusCodes.Status404NotFound, NotHere);
        // The zip library only writes the old way.
        if (context.Features.Get<IHttpBodyControlFeature>() is { } body) body.AllowSynchronousIO = true;
        return Results.Stream(to => Task.Run(() => leaving.Write(to)), "application/zip", $"{insp}.purlin");
    }

    private static async Task<IResult> Retain(string insp, RetentionAsk ask, HttpContext context, Desk desk)
    {
        if (!SyncEndpoints.IsInspection(insp) || await desk.Journals.Heads(insp, context.RequestAborted) is { Position: 0 }) return Refusals.Json(StatusCodes.Status404NotFound, NotHere);
        if (ask.KeepUntil is not { } day) return Refusals.Json(StatusCodes.Status400BadRequest, "Say keepUntil, a day such as 2031-11-25.");
        await desk.Journals.KeepUntil(insp, new DateTimeOffset(day, TimeOnly.MinValue, TimeSpan.Zero));
        return Results.NoContent();
    }

    private static async Task<IResult> Erase(string insp, HttpContext context, Desk desk, OfficeOptions office)
    {
        if (!SyncEndpoints.IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, NotHere);
        var heads = await desk.Journals.Heads(insp, context.RequestAborted);
        if (heads.Position == 0) return Refusals.Json(StatusCodes.Status404NotFound, NotHere);
        if (heads.ErasedAt is null && !await Erasure.Run(desk, insp, office.Clock.GetUtcNow()))
        {
            var why = heads.KeepUntil is { } until ? $"It must be kept until {until:yyyy-MM-dd}." : "Nobody has said until when it must be kept; say that first.";
            return Refusals.Json(StatusCodes.Status409Conflict, $"Not erased. {why}");
        }

        return Results.NoContent();
    }

    private static async Task<IResult> Picture(string sha, string? size, HttpContext context, Desk desk)
    {
        var edge = size switch { "view" or null => PictureViews.View, "thumb" => PictureViews.Thumb, _ => 0 };
        if (edge == 0) return Refusals.Json(StatusCodes.Status400BadRequest, "size is view or thumb.");
        return Sha.Is(sha) && await desk.Views.Of(sha, edge, context.RequestAborted) is { } bytes
            ? Results.Bytes(bytes, "image/jpeg")
            : Refusals.Json(StatusCodes.Status404NotFound, "This photograph is not at the office, or is of a kind that cannot be shown.");
    }

    /// <summary>When the files were last looked at and found good, for the person to see.</summary>
    private static async Task<IResult> State(HttpContext context, Desk desk, OfficeSettings settings, ReceiptChain receipts)
    {
        var scrubbed = await Scrub.Last(settings, desk.Tenant, context.RequestAborted);
        return Results.Json(new OfficeState(scrubbed?.At, scrubbed?.Good, scrubbed?.Files ?? 0, scrubbed?.Damaged ?? 0, receipts.Fingerprint), JsonSerializerOptions.Web);
    }

    private sealed record RetentionAsk(DateOnly? KeepUntil);

    private sealed record OfficeState(string? FilesLookedAt, string? FilesLastAllGood, int Files, int Damaged, string KeyFingerprint);
}
