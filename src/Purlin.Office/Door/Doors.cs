using Microsoft.AspNetCore.HttpOverrides;
using Purlin.Office.Certificates;
using Purlin.Office.Owner;
using Purlin.Office.Storage;

namespace Purlin.Office.Door;

/// <summary>What every request passes: headers, failures in words, requests from other sites refused, a session for everything of the office's.</summary>
internal static class Doors
{
    private static readonly string[] Prefixes = ["/sync", "/blobs", "/office"];

    // The app compiles WebAssembly, shows photographs from memory and draws with inline styles; it runs no other script and talks to no other host.
    private const string AppPolicy =
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self' blob: data:; media-src 'self' blob:; "
        + "font-src 'self' data:; connect-src 'self' blob: data:; worker-src 'self' blob:; frame-src 'self' blob:; object-src 'none'; base-uri 'self'; "
        + "form-action 'self'; frame-ancestors 'none'";

    public static bool IsOffice(PathString path) => Array.Exists(Prefixes, prefix => path.StartsWithSegments(prefix, StringComparison.OrdinalIgnoreCase));

    public static void UseDoors(this WebApplication app)
    {
        var options = app.Services.GetRequiredService<OfficeOptions>();
        app.Use(app.Services.GetRequiredService<Callers>().Answer);
        // An office that ends the encryption itself has nobody in front of it who could say for whom it asks.
        if (options.Public is not null && options.Certificate is null) app.UseForwardedHeaders(BehindProxy());
        app.Use((context, next) => Headers(context, next, options));
        app.Use(StatusWords.Say);
        app.Use(InWords);
        app.Use(HostNames.Refuse);
        if (options.Certificate is not null) app.Use(app.Services.GetRequiredService<ChallengeAnswers>().Answer);
        app.Use(PlainAddress.Refuse);
        app.UseRouting();
        app.Use(SameSite);
        app.Use(Session);
    }

    /// <summary>A proxy on this machine ends the encryption and says for whom it asks. Nobody else is believed.</summary>
    private static ForwardedHeadersOptions BehindProxy()
    {
        ForwardedHeadersOptions forwarded = new() { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto };
        forwarded.KnownProxies.Clear();
        forwarded.KnownIPNetworks.Clear();
        forwarded.KnownProxies.Add(System.Net.IPAddress.Loopback);
        forwarded.KnownProxies.Add(System.Net.IPAddress.IPv6Loopback);
        return forwarded;
    }

    private static Task Headers(HttpContext context, RequestDelegate next, OfficeOptions options)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), microphone=(self), geolocation=()";
        headers.ContentSecurityPolicy = AppPolicy;
        if (context.Request.IsHttps && options.Public is { Scheme: "https" }) headers.StrictTransportSecurity = "max-age=31536000";
        if (IsOffice(context.Request.Path)) headers.CacheControl = "no-store";
        return next(context);
    }

    /// <summary>A failure of the world in plain words; what exactly failed goes to the log.</summary>
    private static async Task InWords(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The other side went away; whatever was committed stays, and it will ask again.
        }
        catch (BadHttpRequestException wrong) when (!context.Response.HasStarted)
        {
            await Refusals.Write(context, wrong.StatusCode, "The request is not one the office understands.");
        }
        catch (Exception failure) when (!context.Response.HasStarted)
        {
            var log = context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger("Purlin.Office");
            log.LogError(failure, "A request failed: {Path}", context.Request.Path);
            if (Disk.IsFull(failure))
            {
                const string Full = "The office's disk is full. Nothing of this request was kept; everything kept before is there. Make room and send again.";
                await Refusals.Write(context, StatusCodes.Status507InsufficientStorage, Full);
            }
            else await Refusals.Write(context, StatusCodes.Status500InternalServerError, "The office could not do this. Nothing of it was kept; send it again.");
        }
    }

    private static Task SameSite(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        var reads = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        if (!IsOffice(request.Path)) return reads ? next(context) : Refusals.Write(context, StatusCodes.Status405MethodNotAllowed, "The app is only read.");
        var from = request.Headers["Sec-Fetch-Site"].ToString();
        var foreign = from is "cross-site" or "same-site";
        var marked = request.Headers["X-Field"] == "1";
        var mustBeMarked = !reads || !request.Path.StartsWithSegments("/office", StringComparison.OrdinalIgnoreCase);
        if ((foreign && (!reads || from == "cross-site")) || (mustBeMarked && !marked))
            return Refusals.Write(context, StatusCodes.Status403Forbidden, "Requests come from the app itself, not from another page.");
        return next(context);
    }

    private static async Task Session(HttpContext context, RequestDelegate next)
    {
        if (IsOffice(context.Request.Path) && context.GetEndpoint()?.Metadata.GetMetadata<OpenToAll>() is null)
        {
            var sessions = context.RequestServices.GetRequiredService<Sessions>();
            if (await sessions.Who(SessionCookie.Read(context), SessionEndpoints.Device(context), context.RequestAborted) is not { } tenant)
            {
                await Refusals.Write(context, StatusCodes.Status401Unauthorized, "Sign in to the office. Nothing on this device is lost meanwhile.");
                return;
            }

            context.Features.Set(context.RequestServices.GetRequiredService<Desks>().Of(tenant));
        }

        await next(context);
    }
}
