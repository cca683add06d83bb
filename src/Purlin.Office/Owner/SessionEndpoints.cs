using System.Text;

namespace Purlin.Office.Owner;

/// <summary>Signing in and out.</summary>
internal static class SessionEndpoints
{
    private const string WrongCode =
        "This is not the owner's code. It was shown when the office was first started; purlin serve --new-owner-code makes a new one, purlin link a link to sign in with.";

    public static void MapSession(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/office/session", State).WithMetadata(OpenToAll.Yes);
        routes.MapPost("/office/session", SignIn).WithMetadata(OpenToAll.Yes);
        routes.MapDelete("/office/session", SignOut);
        routes.MapGet("/office/enter", () => Results.Text(Embedded("enter.html"), "text/html; charset=utf-8")).WithMetadata(OpenToAll.Yes);
        routes.MapGet("/office/enter.js", () => Results.Text(Embedded("enter.js"), "text/javascript; charset=utf-8")).WithMetadata(OpenToAll.Yes);
    }

    private static async Task<IResult> State(HttpContext context, OwnerAccount owner) =>
        Results.Json(new SessionState(await owner.Who(SessionCookie.Read(context), context.RequestAborted) is not null));

    private static async Task<IResult> SignIn(HttpContext context, OwnerAccount owner, SignInLimits limits, SignInRequest request)
    {
        if (await owner.SignIn(request.Code ?? "", context.RequestAborted) is { } token)
        {
            SessionCookie.Write(context, token);
            return Results.NoContent();
        }

        if (limits.Wrong(context.Connection.RemoteIpAddress) is not { } wait) return Refusals.Json(StatusCodes.Status401Unauthorized, WrongCode);
        var seconds = (int)Math.Ceiling(wait.TotalSeconds);
        context.Response.Headers.RetryAfter = $"{seconds}";
        return Refusals.Json(StatusCodes.Status429TooManyRequests, $"Too many wrong codes. Try again in {seconds} seconds; the right one is taken at once.");
    }

    private static async Task<IResult> SignOut(HttpContext context, OwnerAccount owner, Desk desk)
    {
        await owner.SignOut(desk.Tenant, SessionCookie.Read(context)!);
        SessionCookie.Clear(context);
        return Results.NoContent();
    }

    private static string Embedded(string name)
    {
        using var reader = new StreamReader(typeof(SessionEndpoints).Assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private sealed record SignInRequest(string? Code);

    private sealed record SessionState(bool SignedIn);
}
