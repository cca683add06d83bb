using Microsoft.Extensions.FileProviders;
using Purlin.Office.Door;

namespace Purlin.Office;

/// <summary>The app's files: from the build, from a published output, or from a folder that is named.</summary>
internal static class AppFiles
{
    // What is no file is a screen of the app; what is under the office's own names is no screen.
    private const string Screens = "{*path:nonfile}";

    public static void MapApp(this WebApplication app, OfficeOptions options)
    {
        app.MapFallback("/{area:regex(^(sync|blobs|office)$)}/{*path}", () => Refusals.Json(StatusCodes.Status404NotFound, "There is nothing at this address."));
        if (options.AppFolder is { } folder)
        {
            var files = new PhysicalFileProvider(Path.GetFullPath(folder));
            app.UseStaticFiles(new StaticFileOptions { FileProvider = files, ServeUnknownFileTypes = true, OnPrepareResponse = Fresh });
            app.MapFallback(Screens, async context =>
            {
                context.Response.ContentType = "text/html";
                context.Response.Headers.CacheControl = "no-cache";
                await context.Response.SendFileAsync(files.GetFileInfo("index.html"));
            });
            return;
        }

        // The list of files is made for the program that runs (purlin), not for this library; without it there is an office and no app.
        if (!File.Exists(Path.Combine(AppContext.BaseDirectory, $"{app.Environment.ApplicationName}.staticwebassets.endpoints.json"))) return;
        app.MapStaticAssets();
        app.MapFallbackToFile(Screens, "index.html");
    }

    private static void Fresh(Microsoft.AspNetCore.StaticFiles.StaticFileResponseContext file) => file.Context.Response.Headers.CacheControl = "no-cache";
}
