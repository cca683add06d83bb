using System.Globalization;
using System.Text.Json.Nodes;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Office.Storage;
using Purlin.Office.Sync;

namespace Purlin.Office.Issue;

/// <summary>Reports as they stand, and sealed editions: docs/SYNC.md, section 5.</summary>
internal static class IssueEndpoints
{
    // A report shows pictures it carries and styles of its own; it runs nothing and asks nobody.
    private const string ReportPolicy = "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'; sandbox allow-popups";

    public static void MapIssue(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/inspections/{insp}/report", WorkingPage);
        routes.MapGet("/office/inspections/{insp}/report.pdf", WorkingPdf);
        routes.MapGet("/office/inspections/{insp}/obstacles", InTheWay);
        routes.MapPost("/office/inspections/{insp}/editions", Seal);
        routes.MapGet("/office/inspections/{insp}/editions", List);
        routes.MapGet("/office/inspections/{insp}/editions/{number:int}/page", (string insp, int number, HttpContext context, Editions editions, BlobFolder blobs) => Issued(insp, number, context, editions, blobs, pdf: false));
        routes.MapGet("/office/inspections/{insp}/editions/{number:int}/pdf", (string insp, int number, HttpContext context, Editions editions, BlobFolder blobs) => Issued(insp, number, context, editions, blobs, pdf: true));
    }

    private static async Task<IResult> WorkingPage(string insp, HttpContext context, Issuing issuing)
    {
        if (await Standing(insp, context, issuing) is not { } standing) return Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);
        context.Response.Headers.ContentSecurityPolicy = ReportPolicy;
        return Results.Bytes(await issuing.Page(standing, standing.Work.Copy, context.RequestAborted), "text/html; charset=utf-8");
    }

    private static async Task<IResult> WorkingPdf(string insp, HttpContext context, Issuing issuing) =>
        await Standing(insp, context, issuing) is { } standing
            ? Results.Bytes(await issuing.Pdf(standing, standing.Work.Copy, context.RequestAborted), "application/pdf")
            : Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);

    private static async Task<IResult> InTheWay(string insp, HttpContext context, Issuing issuing, Editions editions)
    {
        if (await Standing(insp, context, issuing) is not { } standing) return Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);
        var (obstacles, missing) = await editions.InTheWay(standing, context.RequestAborted);
        return Results.Json(Json(obstacles, missing));
    }

    private static async Task<IResult> Seal(string insp, HttpContext context, Editions editions)
    {
        if (!IsReported(insp)) return Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);
        switch (await editions.Seal(insp, context.RequestAborted))
        {
            case Sealed.Done done:
                return Results.Json(Json(done.Edition), statusCode: StatusCodes.Status201Created);
            case Sealed.Refused refused:
                var why = Json(refused.Obstacles, refused.MissingPhotos);
                why["words"] = $"Not sealed: {refused.Obstacles.Count} matters stand in the way, {refused.MissingPhotos.Count} photographs are not at the office.";
                return Results.Json(why, statusCode: StatusCodes.Status409Conflict);
            case Sealed.Unchanged unchanged:
                return Refusals.Json(StatusCodes.Status409Conflict, $"Nothing has changed since edition {unchanged.Last.Number}; it stands.");
            default:
                return Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);
        }
    }

    private static async Task<IResult> List(string insp, HttpContext context, Editions editions) =>
        Results.Json(new JsonArray([.. (await editions.Of(insp, context.RequestAborted)).Select(Json)]));

    private static async Task<IResult> Issued(string insp, int number, HttpContext context, Editions editions, BlobFolder blobs, bool pdf)
    {
        var edition = (await editions.Of(insp, context.RequestAborted)).FirstOrDefault(row => row.Number == number);
        if (edition is null || await blobs.Bytes(pdf ? edition.Pdf : edition.Page, context.RequestAborted) is not { } bytes) return Refusals.Json(StatusCodes.Status404NotFound, "There is no such edition.");
        if (!pdf) context.Response.Headers.ContentSecurityPolicy = ReportPolicy;
        return Results.Bytes(bytes, pdf ? "application/pdf" : "text/html; charset=utf-8");
    }

    private static async Task<Standing?> Standing(string insp, HttpContext context, Issuing issuing) =>
        IsReported(insp) ? await issuing.Judge(insp, context.RequestAborted) : null;

    /// <summary>The inspector's own book is kept here like an inspection, and nothing is reported or sealed of it.</summary>
    private static bool IsReported(string insp) => SyncEndpoints.IsInspection(insp) && insp != OwnWording.Journal;

    private static JsonObject Json(IReadOnlyList<Obstacle> obstacles, IReadOnlyList<string> missing) => new()
    {
        ["obstacles"] = new JsonArray([.. obstacles.Select(obstacle => (JsonNode)new JsonObject { ["kind"] = obstacle.GetType().Name, ["words"] = obstacle.Words, ["place"] = obstacle.Place?.ToString() })]),
        ["missingPhotos"] = new JsonArray([.. missing.Select(sha => (JsonNode)sha)]),
    };

    private static JsonObject Json(EditionRow edition) => new()
    {
        ["number"] = edition.Number,
        ["seal"] = edition.Seal,
        ["root"] = edition.Root,
        ["page"] = edition.Page,
        ["pdf"] = edition.Pdf,
        ["at"] = DateTimeOffset.FromUnixTimeMilliseconds(edition.At).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
    };
}
