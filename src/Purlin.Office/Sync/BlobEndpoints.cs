using System.Globalization;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;
using Purlin.Journal;
using Purlin.Office.Storage;

namespace Purlin.Office.Sync;

/// <summary>Photographs and sounds to the office, by hash, resumable at any byte.</summary>
internal static class BlobEndpoints
{
    private const int ChunkBytes = 4 * 1024 * 1024;
    private const int AskAtMost = 500;
    private static readonly TimeSpan ChunkTime = TimeSpan.FromMinutes(5);

    public static void MapBlobs(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/blobs/missing", Missing);
        routes.MapMethods("/blobs/{sha}", ["HEAD"], Head);
        routes.MapMethods("/blobs/{sha}", ["PATCH"], Patch);
        routes.MapGet("/blobs/{sha}", Original);
    }

    private static async Task<IResult> Missing(string[] hashes, HttpContext context, Desk desk)
    {
        if (hashes.Length > AskAtMost || !Array.TrueForAll(hashes, Sha.Is))
            return Refusals.Json(StatusCodes.Status400BadRequest, $"Ask for at most {AskAtMost} hashes of 64 digits.");
        var held = await desk.Blobs.Has(hashes, context.RequestAborted);
        return Results.Json(hashes.Where(hash => !held.ContainsKey(hash)));
    }

    private static async Task<IResult> Head(string sha, HttpContext context, Desk desk)
    {
        if (!Sha.Is(sha)) return Results.NotFound();
        var blob = await Find(desk, sha, context.RequestAborted);
        Say(context, blob?.Size ?? await desk.Blobs.Arrived(sha, context.RequestAborted), whole: blob is not null);
        return Results.Ok();
    }

    private static async Task<IResult> Original(string sha, HttpContext context, Desk desk)
    {
        const string Gone = "This file is not at the office.";
        if (!Sha.Is(sha) || await Find(desk, sha, context.RequestAborted) is not { } blob) return Refusals.Json(StatusCodes.Status404NotFound, Gone);
        return await desk.Blobs.Open(sha, context.RequestAborted) is { } bytes
            ? Results.Stream(bytes, blob.MediaType, enableRangeProcessing: true)
            : Refusals.Json(StatusCodes.Status404NotFound, $"{Gone} The copy here was damaged; the device that took it is asked for it again.");
    }

    private static async Task<IResult> Patch(string sha, HttpContext context, Desk desk)
    {
        if (!Sha.Is(sha)) return Refusals.Json(StatusCodes.Status404NotFound, "A file is named by its hash.");
        if (context.Request.ContentType != "application/offset+octet-stream")
            return Refusals.Json(StatusCodes.Status415UnsupportedMediaType, "Bytes come as application/offset+octet-stream.");
        if (!Number(context, "Upload-Offset", out var offset) || !Number(context, "Upload-Length", out var length) || offset > length)
            return Refusals.Json(StatusCodes.Status400BadRequest, "Say Upload-Offset and Upload-Length.");
        if (length > Limits.PhotoBytes || context.Request.ContentLength > ChunkBytes)
        {
            var words = $"A file has at most {Limits.PhotoBytes / 1024 / 1024} MiB and is sent in parts of at most {ChunkBytes / 1024 / 1024} MiB.";
            return Refusals.Json(StatusCodes.Status413PayloadTooLarge, words);
        }

        SlowIsAllowed(context);
        using var turn = await desk.Uploads.Take(sha, context.RequestAborted);
        using var time = CancellationTokenSource.CreateLinkedTokenSource(turn.Newer, context.RequestAborted);
        time.CancelAfter(ChunkTime);
        try
        {
            return await Take(sha, offset, length, context, desk, time.Token);
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            Say(context, await desk.Blobs.Arrived(sha, context.RequestAborted), whole: false);
            return Refusals.Json(StatusCodes.Status409Conflict, "A newer request for the same file, or its time, ended this one; go on from what is here.");
        }
    }

    private static async Task<IResult> Take(string sha, long offset, long length, HttpContext context, Desk desk, CancellationToken cancel)
    {
        if (await Find(desk, sha, cancel) is { } blob)
        {
            Say(context, blob.Size, whole: true);
            return Results.NoContent();
        }

        var arrived = await desk.Blobs.Arrived(sha, cancel);
        if (arrived != offset)
        {
            Say(context, arrived, whole: false);
            return Refusals.Json(StatusCodes.Status409Conflict, $"{arrived} bytes are here; go on from there.");
        }

        await desk.Blobs.Part(sha, context.Request.Body, Math.Min(length - offset, ChunkBytes), cancel);
        arrived = await desk.Blobs.Arrived(sha, cancel);
        if (arrived < length)
        {
            Say(context, arrived, whole: false);
            return Results.NoContent();
        }

        if (await desk.Blobs.Finish(sha, cancel) is { } refused) return Refuse(refused);
        Say(context, length, whole: true);
        return Results.NoContent();
    }

    private static IResult Refuse(PartRefusal refused) => refused.OtherBytes
        ? Refusals.Json(StatusCodes.Status422UnprocessableEntity, "The bytes that arrived are not those of this hash. Send the file again from the start.")
        : Refusals.Json(StatusCodes.Status415UnsupportedMediaType, "This is not a picture or sound the office keeps, or it has more than 50 million pixels.");

    private static async Task<Blob?> Find(Desk desk, string sha, CancellationToken cancel) => (await desk.Blobs.Has([sha], cancel)).GetValueOrDefault(sha);

    private static void Say(HttpContext context, long offset, bool whole)
    {
        context.Response.Headers["Upload-Offset"] = offset.ToString(CultureInfo.InvariantCulture);
        if (whole) context.Response.Headers["Purlin-Whole"] = "1";
    }

    private static bool Number(HttpContext context, string header, out long number) =>
        long.TryParse(context.Request.Headers[header], NumberStyles.None, CultureInfo.InvariantCulture, out number);

    /// <summary>A weak signal is no attack: the floor of 240 bytes a second is lifted here alone; the time of one part stays limited.</summary>
    private static void SlowIsAllowed(HttpContext context)
    {
        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } floor) floor.MinDataRate = null;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } most) most.MaxRequestBodySize = ChunkBytes;
    }
}
