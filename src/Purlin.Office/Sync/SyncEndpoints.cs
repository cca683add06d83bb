using System.Text.Json;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Office.Sync;

/// <summary>Entries to and from devices: docs/SYNC.md, section 4.</summary>
internal static class SyncEndpoints
{
    private const int PageLines = 2_000;
    private const string NoSuch = "There is no such inspection.";

    public static void MapSync(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sync/{insp}/heads", Heads);
        routes.MapPost("/sync/{insp}/entries", Push);
        routes.MapGet("/sync/{insp}/entries", Pull);
    }

    public static bool IsInspection(string insp) => EntryLine.IsInspection(insp);

    private static async Task<IResult> Heads(string insp, HttpContext context, Desk desk, OfficeOptions office)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, NoSuch);
        var heads = await desk.Journals.Heads(insp, context.RequestAborted);
        if (heads.ErasedAt is { } erased) return Erased(erased);
        return Results.Json(new HeadsAnswer(heads.Heads, Instant.Milliseconds(office.Clock.GetUtcNow()), heads.Held, Json(heads.Receipt)));
    }

    private static async Task<IResult> Push(string insp, HttpContext context, Desk desk, OfficeOptions office)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, NoSuch);
        if (context.Request.ContentType?.Split(';')[0].Trim() != "application/x-ndjson")
            return Refusals.Json(StatusCodes.Status415UnsupportedMediaType, "Entries come as application/x-ndjson.");
        if (await PushBody.Read(context) is not { } body) return Refusals.Json(StatusCodes.Status413PayloadTooLarge, PushBody.TooMuch);
        var block = LineBlock.Read(body, insp);
        if (await desk.Shelf.Take(insp, block, context.RequestAborted) is not { } arrival)
            return Erased((await desk.Journals.Heads(insp, context.RequestAborted)).ErasedAt ?? office.Clock.GetUtcNow());
        return Results.Json(new PushAnswer
        {
            Heads = arrival.Heads,
            Taken = arrival.Admitted.Taken.Count,
            Held = [.. arrival.Admitted.Held.Select(Named)],
            Turned = [.. arrival.Admitted.Turned.Select(Named)],
            Waiting = [.. arrival.Admitted.Waiting.Select(name => name.ToString())],
            Torn = block.Torn is not null,
            Now = Instant.Milliseconds(office.Clock.GetUtcNow()),
            Receipt = Json(arrival.Receipt),
        });
    }

    private static async Task<IResult> Pull(string insp, string? have, HttpContext context, Desk desk)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, NoSuch);
        if (Parse(have) is not { } heads) return Refusals.Json(StatusCodes.Status400BadRequest, "have lists devices and sequences: k3f9:142,p81c:57.");
        var (lines, more) = await desk.Shelf.With(insp, journal => journal.Lines.Page(heads, PageLines), context.RequestAborted);
        if (more) context.Response.Headers["Purlin-More"] = "1";
        using var page = new MemoryStream(lines.Sum(line => line.Line.Length + 1));
        LineBlock.Write(page, lines.Select(line => line.Line));
        return Results.Bytes(page.GetBuffer().AsMemory(0, (int)page.Length), "application/x-ndjson");
    }

    /// <summary>Its time ran out and somebody had it erased: nothing of it is taken again, and a phone that still has it keeps it.</summary>
    private static IResult Erased(DateTimeOffset when) => Refusals.Json(
        StatusCodes.Status410Gone,
        $"This inspection was erased at the office on {when:yyyy-MM-dd}, after the time it had to be kept. Nothing more of it is taken; what is on this device stays there.");

    private static HeldAnswer Named(HeldLine line) => new(line.Name?.ToString(), line.Hash, string.Join("; ", line.Why));

    private static JsonElement? Json(byte[]? receipt) => receipt is null ? null : JsonElement.Parse(receipt);

    private static Dictionary<string, int>? Parse(string? have)
    {
        Dictionary<string, int> heads = [];
        foreach (var pair in (have ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            var parts = pair.Split(':');
            if (parts.Length != 2 || !EntryName.IsDevice(parts[0]) || !int.TryParse(parts[1], out var seq) || seq < 0 || heads.Count > Limits.Heads) return null;
            heads[parts[0]] = seq;
        }

        return heads;
    }
}
