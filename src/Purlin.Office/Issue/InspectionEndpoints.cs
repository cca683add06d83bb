using Purlin.Journal;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;
using Purlin.Office.Sync;

namespace Purlin.Office.Issue;

/// <summary>What the office holds: inspections, pictures, archives, the key of receipts.</summary>
internal static class InspectionEndpoints
{
    public const string NotHere = "The office holds nothing of this inspection.";

    public static void MapInspections(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/inspections", async (HttpContext context, InspectionList list) => Results.Json(await list.All(context.RequestAborted)));
        routes.MapGet("/office/inspections/{insp}/archive", Archive);
        routes.MapGet("/office/pictures/{sha}", Picture);
        routes.MapGet("/office/key", (ReceiptChain receipts) => Results.Text(receipts.PublicKey, "application/x-pem-file"));
    }

    private static async Task<IResult> Archive(string insp, HttpContext context, Archiving archiving)
    {
        if (!SyncEndpoints.IsInspection(insp) || await archiving.Prepare(insp, context.RequestAborted) is not { } file) return Refusals.Json(StatusCodes.Status404NotFound, NotHere);
        return Results.File(file, "application/zip", $"{insp}.purlin");
    }

    private static async Task<IResult> Picture(string sha, string? size, HttpContext context, PictureViews views)
    {
        var edge = size switch { "view" or null => PictureViews.View, "thumb" => PictureViews.Thumb, _ => 0 };
        if (edge == 0) return Refusals.Json(StatusCodes.Status400BadRequest, "size is view or thumb.");
        if (!Sha.Is(sha) || await views.Of(sha, edge, context.RequestAborted) is not { } bytes) return Refusals.Json(StatusCodes.Status404NotFound, "This photograph is not at the office, or is of a kind that cannot be shown.");
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(bytes, "image/jpeg");
    }
}
