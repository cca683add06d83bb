using Purlin.Office.Owner;
using Purlin.Office.Storage;

namespace Purlin.Office;

/// <summary>What every request passes: headers, failures in words, requests from other sites refused, a session for everything of the office's.</summary>
internal static class Doors
{
    private static readonly string[] Prefixes = ["/sync", "/blobs", "/office"];

    // The app compiles WebAssembly, shows photographs from memory and draws with inline styles; it runs no other script and talks to no other host.
    private const string AppPolicy =
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self' blob: data:; media-src 'self' blob:; font-src 'self' data:; "
        + "connect-src 'self' blob: data:; worker-src 'self' blob:; frame-src 'self' blob:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static bool IsOffice(PathString path) => Array.Exists(Prefixes, prefix => path.StartsWithSegments(prefix, StringComparison.OrdinalIgnoreCase));

    public static void UseDoors(this WebApplication app)
    {
        app.Use(Headers);
        app.Use(InWords);
        app.UseRouting();
        app.Use(SameSite);
        app.Use(Session);
    }

    private static Task Headers(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), microphone=(self), geolocation=()";
        headers.ContentSecurityPolicy = AppPolicy;
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
            context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger("Purlin.Office").LogError(failure, "A request failed: {Path}", context.Request.Path);
            if (Disk.IsFull(failure)) await Refusals.Write(context, StatusCodes.Status507InsufficientStorage, "The office's disk is full. Nothing of this request was kept; everything kept before is there. Make room and send again.");
            else await Refusals.Write(context, StatusCodes.Status500InternalServerError, "The office could not do this. Nothing of it was kept; send it again.");
        }
    }

    private static Task SameSite(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (!IsOffice(request.Path)) return HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) ? next(context) : Refusals.Write(context, StatusCodes.Status405MethodNotAllowed, "The app is only read.");
        var changes = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        var from = request.Headers["Sec-Fetch-Site"].ToString();
        var foreign = from is "cross-site" or "same-site";
        var marked = request.Headers["X-Field"] == "1";
        var mustBeMarked = changes || !request.Path.StartsWithSegments("/office", StringComparison.OrdinalIgnoreCase);
        if ((foreign && (changes || from == "cross-site")) || (mustBeMarked && !marked)) return Refusals.Write(context, StatusCodes.Status403Forbidden, "Requests come from the app itself, not from another page.");
        return next(context);
    }

    private static async Task Session(HttpContext context, RequestDelegate next)
    {
        if (IsOffice(context.Request.Path) && context.GetEndpoint()?.Metadata.GetMetadata<OpenToAll>() is null)
        {
            var owner = context.RequestServices.GetRequiredService<OwnerAccount>();
            if (!await owner.IsSignedIn(SessionCookie.Read(context), context.RequestAborted))
            {
                await Refusals.Write(context, StatusCodes.Status401Unauthorized, "Sign in to the office. Nothing on this device is lost meanwhile.");
                return;
            }
        }

        await next(context);
    }
}
