namespace Purlin.Office;

/// <summary>Refusals as the wire carries them: a status, and one sentence for people.</summary>
internal static class Refusals
{
    private static readonly string[] Describing = ["Content-Type", "Content-Length", "Content-Disposition", "Content-Encoding", "ETag", "Last-Modified", "Accept-Ranges"];

    public static IResult Json(int status, string words) => Results.Json(new Refused(words), statusCode: status);

    public static async Task Write(HttpContext context, int status, string words)
    {
        // What described an answer that is not given after all goes; what guards every answer stays.
        foreach (var header in Describing) context.Response.Headers.Remove(header);
        context.Response.StatusCode = status;
        await context.Response.WriteAsJsonAsync(new Refused(words));
    }

    /// <summary>A refusal.</summary>
    /// <param name="Words">One sentence for people.</param>
    internal sealed record Refused(string Words);
}
