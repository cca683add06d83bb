using Microsoft.Extensions.FileProviders;

namespace Purlin.Office;

/// <summary>The app's files: from the build, from a published output, or from a folder that is named.</summary>
internal static class AppFiles
{
    public static void MapApp(this WebApplication app, OfficeOptions options)
    {
        if (options.AppFolder is { } folder)
        {
            var files = new PhysicalFileProvider(Path.GetFullPath(folder));
            app.UseStaticFiles(new StaticFileOptions { FileProvider = files, ServeUnknownFileTypes = true, OnPrepareResponse = Fresh });
            app.MapFallback("{*path:nonfile}", async context =>
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
        app.MapFallbackToFile("{*path:nonfile}", "index.html");
    }

    private static void Fresh(Microsoft.AspNetCore.StaticFiles.StaticFileResponseContext file) => file.Context.Response.Headers.CacheControl = "no-cache";
}
