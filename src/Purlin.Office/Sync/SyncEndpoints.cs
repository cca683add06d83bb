using System.IO.Compression;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Office.Sync;

/// <summary>Entries to and from devices: docs/SYNC.md, section 4.</summary>
internal static class SyncEndpoints
{
    private const int PageLines = 2_000;
    private const int PushLines = 5_000;
    private const int PushBytes = 32 * 1024 * 1024;

    public static void MapSync(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sync/{insp}/heads", Heads);
        routes.MapPost("/sync/{insp}/entries", Push);
        routes.MapGet("/sync/{insp}/entries", Pull);
    }

    public static bool IsInspection(string insp) => insp.Length is > 0 and <= 64 && insp.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');

    private static async Task<IResult> Heads(string insp, HttpContext context, OfficeStore store, OfficeOptions office)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, "There is no such inspection.");
        var (heads, held) = await store.With(insp, journal => (journal.Heads(), journal.Held.Count), context.RequestAborted);
        await using var db = store.Db();
        return Results.Json(new JsonObject
        {
            ["heads"] = Json(heads),
            ["now"] = Now(office),
            ["held"] = held,
            ["receipt"] = await ReceiptChain.Last(db, insp) is { } receipt ? JsonNode.Parse(receipt) : null,
        });
    }

    private static async Task<IResult> Push(string insp, HttpContext context, OfficeStore store, OfficeOptions office)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, "There is no such inspection.");
        if (context.Request.ContentType?.Split(';')[0].Trim() != "application/x-ndjson") return Refusals.Json(StatusCodes.Status415UnsupportedMediaType, "Entries come as application/x-ndjson.");
        if (await Body(context) is not { } body) return Refusals.Json(StatusCodes.Status413PayloadTooLarge, $"Send at most {PushLines} lines and {PushBytes / 1024 / 1024} MiB at a time.");
        var block = LineBlock.Read(body, insp);
        var arrival = await store.Take(insp, block, context.RequestAborted);
        return Results.Json(new JsonObject
        {
            ["heads"] = Json(arrival.Heads),
            ["taken"] = arrival.Admitted.Taken.Count,
            ["held"] = new JsonArray([.. arrival.Admitted.Held.Select(line => (JsonNode)new JsonObject { ["name"] = line.Name?.ToString(), ["hash"] = line.Hash, ["why"] = string.Join("; ", line.Why) })]),
            ["waiting"] = new JsonArray([.. arrival.Admitted.Waiting.Select(name => (JsonNode)name.ToString())]),
            ["torn"] = block.Torn is not null,
            ["now"] = Now(office),
            ["receipt"] = arrival.Receipt is { } receipt ? JsonNode.Parse(receipt) : null,
        });
    }

    private static async Task<IResult> Pull(string insp, string? have, HttpContext context, OfficeStore store)
    {
        if (!IsInspection(insp)) return Refusals.Json(StatusCodes.Status404NotFound, "There is no such inspection.");
        if (Parse(have) is not { } heads) return Refusals.Json(StatusCodes.Status400BadRequest, "have lists devices and sequences: k3f9:142,p81c:57.");
        var (lines, more) = await store.With(insp, journal => journal.Page(heads, PageLines), context.RequestAborted);
        if (more) context.Response.Headers["Purlin-More"] = "1";
        using var page = new MemoryStream();
        LineBlock.Write(page, lines.Select(line => line.Line));
        return Results.Bytes(page.ToArray(), "application/x-ndjson");
    }

    /// <summary>The body unfolded, read no further than its limits; none beyond them.</summary>
    private static async Task<byte[]?> Body(HttpContext context)
    {
        var encoding = context.Request.Headers.ContentEncoding.ToString();
        if (encoding is not ("" or "gzip" or "identity")) throw new BadHttpRequestException("gzip or nothing", StatusCodes.Status415UnsupportedMediaType);
        await using var from = encoding == "gzip" ? new GZipStream(context.Request.Body, CompressionMode.Decompress) : context.Request.Body;
        using var body = new MemoryStream();
        var buffer = new byte[81920];
        var lines = 0;
        try
        {
            for (int read; (read = await from.ReadAsync(buffer, context.RequestAborted)) > 0;)
            {
                body.Write(buffer, 0, read);
                lines += buffer.AsSpan(0, read).Count((byte)'\n');
                if (body.Length > PushBytes || lines > PushLines) return null;
            }
        }
        catch (InvalidDataException damaged)
        {
            // Cut off or damaged in the middle: what unfolded so far is read like any torn delivery.
            if (body.Length == 0) throw new BadHttpRequestException("not gzip", StatusCodes.Status400BadRequest, damaged);
        }

        return body.ToArray();
    }

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

    private static JsonObject Json(IReadOnlyDictionary<string, int> heads) => new(heads.Select(head => KeyValuePair.Create(head.Key, (JsonNode?)head.Value)));

    private static string Now(OfficeOptions office) => office.Clock.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'");
}
