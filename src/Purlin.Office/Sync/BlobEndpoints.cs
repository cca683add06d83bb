using System.Collections.Concurrent;
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

    private static async Task<IResult> Missing(string[] hashes, HttpContext context, BlobFolder blobs)
    {
        if (hashes.Length > AskAtMost || !Array.TrueForAll(hashes, Sha.Is)) return Refusals.Json(StatusCodes.Status400BadRequest, $"Ask for at most {AskAtMost} hashes of 64 digits.");
        var whole = await blobs.Whole(hashes, context.RequestAborted);
        return Results.Json(hashes.Where(hash => !whole.Contains(hash)));
    }

    private static async Task<IResult> Head(string sha, HttpContext context, BlobFolder blobs)
    {
        if (!Sha.Is(sha)) return Results.NotFound();
        Say(context, await blobs.Row(sha, context.RequestAborted) is { } row ? row.Size : blobs.Arrived(sha), await blobs.Row(sha, context.RequestAborted) is not null);
        return Results.Ok();
    }

    private static async Task<IResult> Original(string sha, HttpContext context, BlobFolder blobs) =>
        Sha.Is(sha) && await blobs.Row(sha, context.RequestAborted) is { } row
            ? Results.File(blobs.PathOf(sha), row.MediaType, enableRangeProcessing: true)
            : Refusals.Json(StatusCodes.Status404NotFound, "This file is not at the office.");

    private static async Task<IResult> Patch(string sha, HttpContext context, BlobFolder blobs, UploadTurns turns)
    {
        if (!Sha.Is(sha)) return Refusals.Json(StatusCodes.Status404NotFound, "A file is named by its hash.");
        if (context.Request.ContentType != "application/offset+octet-stream") return Refusals.Json(StatusCodes.Status415UnsupportedMediaType, "Bytes come as application/offset+octet-stream.");
        if (!Number(context, "Upload-Offset", out var offset) || !Number(context, "Upload-Length", out var length) || offset > length) return Refusals.Json(StatusCodes.Status400BadRequest, "Say Upload-Offset and Upload-Length.");
        if (length > Limits.PhotoBytes || context.Request.ContentLength > ChunkBytes) return Refusals.Json(StatusCodes.Status413PayloadTooLarge, $"A file has at most {Limits.PhotoBytes / 1024 / 1024} MiB and is sent in parts of at most {ChunkBytes / 1024 / 1024} MiB.");
        SlowIsAllowed(context);
        using var turn = await turns.Take(sha, context.RequestAborted);
        using var time = CancellationTokenSource.CreateLinkedTokenSource(turn.Newer, context.RequestAborted);
        time.CancelAfter(ChunkTime);
        try
        {
            return await Take(sha, offset, length, context, blobs, time.Token);
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            Say(context, blobs.Arrived(sha), whole: false);
            return Refusals.Json(StatusCodes.Status409Conflict, "A newer request for the same file, or its time, ended this one; go on from what is here.");
        }
    }

    private static async Task<IResult> Take(string sha, long offset, long length, HttpContext context, BlobFolder blobs, CancellationToken cancel)
    {
        if (await blobs.Row(sha, cancel) is { } row)
        {
            Say(context, row.Size, whole: true);
            return Results.NoContent();
        }

        var arrived = blobs.Arrived(sha);
        if (arrived != offset)
        {
            Say(context, arrived, whole: false);
            return Refusals.Json(StatusCodes.Status409Conflict, $"{arrived} bytes are here; go on from there.");
        }

        await blobs.Append(sha, context.Request.Body, Math.Min(length - offset, ChunkBytes), cancel);
        arrived = blobs.Arrived(sha);
        if (arrived < length)
        {
            Say(context, arrived, whole: false);
            return Results.NoContent();
        }

        if (await blobs.Finish(sha, cancel) is var (status, words)) return Refusals.Json(status, words);
        Say(context, length, whole: true);
        return Results.NoContent();
    }

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

/// <summary>One upload of a file at a time; the newest request ends the one before it, which is most likely a connection already dead.</summary>
internal sealed class UploadTurns
{
    private readonly ConcurrentDictionary<string, (SemaphoreSlim Gate, CancellationTokenSource Latest)> open = new();
    private readonly Lock turn = new();

    public async Task<Held> Take(string sha, CancellationToken cancel)
    {
        SemaphoreSlim gate;
        var mine = new CancellationTokenSource();
        lock (turn)
        {
            if (open.TryGetValue(sha, out var before))
            {
                before.Latest.Cancel();
                gate = before.Gate;
            }
            else
            {
                gate = new SemaphoreSlim(1);
            }

            open[sha] = (gate, mine);
        }

        await gate.WaitAsync(cancel);
        return new Held(this, sha, gate, mine);
    }

    internal sealed class Held(UploadTurns turns, string sha, SemaphoreSlim gate, CancellationTokenSource mine) : IDisposable
    {
        /// <summary>Cancelled when a newer request for the same file arrives.</summary>
        public CancellationToken Newer => mine.Token;

        public void Dispose()
        {
            lock (turns.turn)
            {
                if (turns.open.TryGetValue(sha, out var latest) && latest.Latest == mine) turns.open.TryRemove(sha, out _);
            }

            gate.Release();
            mine.Dispose();
        }
    }
}
