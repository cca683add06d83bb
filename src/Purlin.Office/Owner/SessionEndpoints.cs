using System.Text;

namespace Purlin.Office.Owner;

/// <summary>Signing in and out.</summary>
internal static class SessionEndpoints
{
    public static void MapSession(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/session", async (HttpContext context, OwnerAccount owner) => Results.Json(new { signedIn = await owner.IsSignedIn(SessionCookie.Read(context), context.RequestAborted) })).WithMetadata(OpenToAll.Yes);
        routes.MapPost("/office/session", SignIn).WithMetadata(OpenToAll.Yes);
        routes.MapDelete("/office/session", SignOut);
        routes.MapGet("/office/enter", () => Results.Text(Embedded("enter.html"), "text/html; charset=utf-8")).WithMetadata(OpenToAll.Yes);
        routes.MapGet("/office/enter.js", () => Results.Text(Embedded("enter.js"), "text/javascript; charset=utf-8")).WithMetadata(OpenToAll.Yes);
    }

    private static async Task<IResult> SignIn(HttpContext context, OwnerAccount owner, SignInRequest request)
    {
        var (token, wait) = await owner.SignIn(request.Code ?? "", context.RequestAborted);
        if (wait is { } time)
        {
            var seconds = (int)Math.Ceiling(time.TotalSeconds);
            context.Response.Headers.RetryAfter = $"{seconds}";
            return Refusals.Json(StatusCodes.Status429TooManyRequests, $"Too many wrong codes. Try again in {seconds} seconds.");
        }

        if (token is null) return Refusals.Json(StatusCodes.Status401Unauthorized, "This is not the owner's code. It was shown when the office was first started; purlin serve --new-owner-code makes a new one.");
        SessionCookie.Write(context, token);
        return Results.NoContent();
    }

    private static async Task<IResult> SignOut(HttpContext context, OwnerAccount owner)
    {
        await owner.SignOut(SessionCookie.Read(context)!, context.RequestAborted);
        SessionCookie.Clear(context);
        return Results.NoContent();
    }

    private static string Embedded(string name)
    {
        using var reader = new StreamReader(typeof(SessionEndpoints).Assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private sealed record SignInRequest(string? Code);
}
