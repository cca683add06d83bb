using System.IO.Compression;

namespace Purlin.Office.Sync;

/// <summary>The body of a delivery, unfolded and read no further than its limits.</summary>
internal static class PushBody
{
    private const int Lines = 5_000;
    private const int Bytes = 32 * 1024 * 1024;

    public static string TooMuch => $"Send at most {Lines} lines and {Bytes / 1024 / 1024} MiB at a time.";

    /// <summary>The bytes; none beyond the limits.</summary>
    /// <exception cref="BadHttpRequestException">Packed in a way that is not taken, or not packed at all though it says so.</exception>
    public static async Task<ReadOnlyMemory<byte>?> Read(HttpContext context)
    {
        var encoding = context.Request.Headers.ContentEncoding.ToString();
        if (encoding is not ("" or "gzip" or "identity")) throw new BadHttpRequestException("gzip or nothing", StatusCodes.Status415UnsupportedMediaType);
        await using var from = encoding == "gzip" ? new GZipStream(context.Request.Body, CompressionMode.Decompress) : context.Request.Body;
        var body = new MemoryStream();
        var buffer = new byte[81920];
        var lines = 0;
        try
        {
            for (int read; (read = await from.ReadAsync(buffer, context.RequestAborted)) > 0;)
            {
                body.Write(buffer, 0, read);
                lines += buffer.AsSpan(0, read).Count((byte)'\n');
                if (body.Length > Bytes || lines > Lines) return null;
            }
        }
        catch (InvalidDataException damaged)
        {
            // Cut off or damaged in the middle: what unfolded so far is read like any torn delivery.
            if (body.Length == 0) throw new BadHttpRequestException("not gzip", StatusCodes.Status400BadRequest, damaged);
        }

        return body.GetBuffer().AsMemory(0, (int)body.Length);
    }
}
