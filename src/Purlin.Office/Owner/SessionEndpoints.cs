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
        routes.MapGet("/office/sessions", Devices);
        routes.MapDelete("/office/sessions/{id}", EndOne);
        routes.MapPost("/office/sessions/link", Link);
        routes.MapGet("/office/enter", () => Results.Text(Embedded("enter.html"), "text/html; charset=utf-8")).WithMetadata(OpenToAll.Yes);
        routes.MapGet("/office/enter.js", () => Results.Text(Embedded("enter.js"), "text/javascript; charset=utf-8")).WithMetadata(OpenToAll.Yes);
    }

    /// <summary>The name under which the device that asks writes its lines; empty when it says none.</summary>
    public static string Device(HttpContext context) => context.Request.Headers["X-Device"].ToString() is { Length: > 0 and <= 20 } said && said.All(char.IsAsciiLetterOrDigit) ? said : "";

    private static async Task<IResult> State(HttpContext context, Sessions sessions) =>
        Results.Json(new SessionState(await sessions.Who(SessionCookie.Read(context), Device(context), context.RequestAborted) is not null));

    private static async Task<IResult> Devices(HttpContext context, Sessions sessions, Desk desk) =>
        Results.Json(await sessions.All(desk.Tenant, SessionCookie.Read(context)!, context.RequestAborted));

    private static async Task<IResult> EndOne(HttpContext context, Sessions sessions, Desk desk, string id) =>
        await sessions.EndOther(desk.Tenant, id, context.RequestAborted)
            ? Results.NoContent()
            : Refusals.Json(StatusCodes.Status404NotFound, "No device is signed in under this name. It may have been signed out already.");

    /// <summary>A link for another device, as address and as the path of a code that its camera reads; the one before it no longer works.</summary>
    private static IResult Link(HttpContext context, OwnerAccount owner)
    {
        var address = SignInLink.Address($"{context.Request.Scheme}://{context.Request.Host}", owner.NewLinkCode());
        var (size, path) = SignInLink.Drawing(address);
        return Results.Json(new { address, size, path });
    }

    private static async Task<IResult> SignIn(HttpContext context, OwnerAccount owner, SignInLimits limits, SignInRequest request)
    {
        if (await owner.SignIn(request.Code ?? "", Device(context), context.RequestAborted) is { } token)
        {
            SessionCookie.Write(context, token);
            return Results.NoContent();
        }

        if (limits.Wrong(context.Connection.RemoteIpAddress) is not { } wait) return Refusals.Json(StatusCodes.Status401Unauthorized, WrongCode);
        var seconds = (int)Math.Ceiling(wait.TotalSeconds);
        context.Response.Headers.RetryAfter = $"{seconds}";
        return Refusals.Json(StatusCodes.Status429TooManyRequests, $"Too many wrong codes. Try again in {seconds} seconds; the right one is taken at once.");
    }

    private static async Task<IResult> SignOut(HttpContext context, Sessions sessions, Desk desk)
    {
        await sessions.End(desk.Tenant, SessionCookie.Read(context)!);
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
