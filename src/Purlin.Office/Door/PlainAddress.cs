using System.Net;

namespace Purlin.Office.Door;

/// <summary>
/// A browser keeps nothing for an address that is neither encrypted nor this machine itself: no storage that lasts, no working without a network. The app would
/// open there and lose what is typed, so instead of it stands one sentence.
/// </summary>
public static class PlainAddress
{
    /// <summary>The sentence.</summary>
    public const string Words = "This address is not encrypted, and a phone keeps nothing at such an address. Open the office at its https address.";

    internal static Task Refuse(HttpContext context, RequestDelegate next)
    {
        if (context.Request.IsHttps || IsThisMachine(context.Request.Host.Host)) return next(context);
        var options = context.RequestServices.GetRequiredService<OfficeOptions>();
        if (options.Certificate is { } own) return SendOn(context, own.Name);
        if (Doors.IsOffice(context.Request.Path)) return Refusals.Write(context, StatusCodes.Status403Forbidden, Words);
        var link = options.Public is { Scheme: "https" } open ? $"""<p><a href="{WebUtility.HtmlEncode(open.ToString())}">{WebUtility.HtmlEncode(open.ToString())}</a></p>""" : "";
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync($"""<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Not encrypted</title><p>{Words}</p>{link}""");
    }

    /// <summary>Whether browsers treat this name as the machine itself: https://www.w3.org/TR/secure-contexts/#is-origin-trustworthy.</summary>
    public static bool IsThisMachine(string host) =>
        host is "localhost" || host.EndsWith(".localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    /// <summary>To the encrypted address of the same page; 308, so that nothing is asked again in another way.</summary>
    private static Task SendOn(HttpContext context, string name)
    {
        context.Response.StatusCode = StatusCodes.Status308PermanentRedirect;
        context.Response.Headers.Location = $"https://{name}{context.Request.Path.ToUriComponent()}{context.Request.QueryString}";
        return Task.CompletedTask;
    }
}
