namespace Purlin.Office;

/// <summary>Refusals as the wire carries them: a status, and one sentence for people.</summary>
internal static class Refusals
{
    public static IResult Json(int status, string words) => Results.Json(new { words }, statusCode: status);

    public static async Task Write(HttpContext context, int status, string words)
    {
        context.Response.Clear();
        context.Response.StatusCode = status;
        await context.Response.WriteAsJsonAsync(new { words });
    }
}
