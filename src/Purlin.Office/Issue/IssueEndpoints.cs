using Purlin.Book;
using Purlin.Office.Sync;
using Purlin.Report;

namespace Purlin.Office.Issue;

/// <summary>Reports as they stand, and sealed editions: docs/SYNC.md, section 5.</summary>
internal static class IssueEndpoints
{
    // A report shows pictures it carries and styles of its own; it runs nothing and asks nobody.
    private const string ReportPolicy =
        "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'; sandbox allow-popups";

    private const string PageType = "text/html; charset=utf-8";

    public static void MapIssue(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/inspections/{insp}/report", WorkingPage);
        routes.MapGet("/office/inspections/{insp}/report.pdf", WorkingPdf);
        routes.MapGet("/office/inspections/{insp}/obstacles", InTheWay);
        routes.MapPost("/office/inspections/{insp}/editions", Seal);
        routes.MapGet("/office/inspections/{insp}/editions", List);
        routes.MapGet("/office/inspections/{insp}/editions/{number:int}/page", (string insp, int number, HttpContext context, Desk desk) => Issued(insp, number, context, desk, pdf: false));
        routes.MapGet("/office/inspections/{insp}/editions/{number:int}/pdf", (string insp, int number, HttpContext context, Desk desk) => Issued(insp, number, context, desk, pdf: true));
    }

    private static async Task<IResult> WorkingPage(string insp, HttpContext context, Desk desk)
    {
        if (await Standing(insp, context, desk) is not { } standing) return Nothing();
        context.Response.Headers.ContentSecurityPolicy = ReportPolicy;
        return Results.Bytes(await desk.Issuing.Page(standing, standing.Work.Copy, context.RequestAborted, Kind(context)), PageType);
    }

    private static async Task<IResult> WorkingPdf(string insp, HttpContext context, Desk desk) =>
        await Standing(insp, context, desk) is { } standing
            ? Results.Bytes(await desk.Issuing.Pdf(standing, standing.Work.Copy, context.RequestAborted, Kind(context)), "application/pdf")
            : Nothing();

    // ?paper=walk asks for another paper than the report; what is no paper, or needs two visits, is the report.
    private static PaperKind Kind(HttpContext context) =>
        Enum.TryParse<PaperKind>(context.Request.Query["paper"], ignoreCase: true, out var kind)
        && Enum.IsDefined(kind) && kind != PaperKind.Second ? kind : PaperKind.Report;

    private static async Task<IResult> InTheWay(string insp, HttpContext context, Desk desk)
    {
        if (await Standing(insp, context, desk) is not { } standing) return Nothing();
        var (obstacles, missing) = await desk.Editions.InTheWay(standing, context.RequestAborted);
        return Results.Json(ObstaclesAnswer.Of(obstacles, missing));
    }

    private static async Task<IResult> Seal(string insp, HttpContext context, Desk desk)
    {
        if (!IsReported(insp)) return Nothing();
        switch (await desk.Editions.Seal(insp, context.RequestAborted))
        {
            case Sealed.Done done:
                return Results.Json(EditionAnswer.Of(done.Edition), statusCode: StatusCodes.Status201Created);
            case Sealed.Refused refused:
                var words = $"Not sealed: {refused.Obstacles.Count} matters stand in the way, {refused.MissingPhotos.Count} photographs are not at the office.";
                return Results.Json(ObstaclesAnswer.Of(refused.Obstacles, refused.MissingPhotos) with { Words = words }, statusCode: StatusCodes.Status409Conflict);
            case Sealed.Unchanged unchanged:
                return Refusals.Json(StatusCodes.Status409Conflict, $"Nothing has changed since edition {unchanged.Last.Number}; it stands.");
            default:
                return Nothing();
        }
    }

    private static async Task<IResult> List(string insp, HttpContext context, Desk desk) =>
        Results.Json((await desk.Journals.Editions(insp, context.RequestAborted)).Select(EditionAnswer.Of));

    private static async Task<IResult> Issued(string insp, int number, HttpContext context, Desk desk, bool pdf)
    {
        var edition = (await desk.Journals.Editions(insp, context.RequestAborted)).FirstOrDefault(one => one.Number == number);
        if (edition is null) return Refusals.Json(StatusCodes.Status404NotFound, "There is no such edition.");
        if (await desk.Blobs.Open(pdf ? edition.Pdf : edition.Page, context.RequestAborted) is not { } bytes)
        {
            const string Damaged = "The office's copy of this edition is damaged or gone. What was sealed is still known by its hash: an archive or backup made before has it.";
            return Refusals.Json(StatusCodes.Status404NotFound, Damaged);
        }

        if (!pdf) context.Response.Headers.ContentSecurityPolicy = ReportPolicy;
        return Results.Stream(bytes, pdf ? "application/pdf" : PageType);
    }

    private static async Task<HeldWork?> Standing(string insp, HttpContext context, Desk desk) =>
        IsReported(insp) ? await desk.Issuing.Judge(insp, context.RequestAborted) : null;

    /// <summary>The inspector's own book is kept here like an inspection, and nothing is reported or sealed of it.</summary>
    private static bool IsReported(string insp) => SyncEndpoints.IsInspection(insp) && insp != OwnWording.Journal;

    private static IResult Nothing() => Refusals.Json(StatusCodes.Status404NotFound, InspectionEndpoints.NotHere);
}
