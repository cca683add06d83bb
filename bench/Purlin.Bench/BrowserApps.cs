using System.Diagnostics;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace Purlin.Bench;

/// <summary>Publishes apps that run in the browser, and serves their files.</summary>
internal static class BrowserApps
{
    public static WebApplication Serve(string files, string address)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        var app = builder.Build();
        app.Urls.Add(address);
        FileExtensionContentTypeProvider types = new();
        types.Mappings[".dat"] = types.Mappings[".blat"] = "application/octet-stream";
        PhysicalFileProvider folder = new(files);
        app.UseStaticFiles(new StaticFileOptions { FileProvider = folder, ContentTypeProvider = types });
        app.MapFallback(async context =>
        {
            context.Response.ContentType = "text/html";
            await context.Response.SendFileAsync(Path.Combine(files, "index.html"));
        });
        return app;
    }

    public static async Task DotnetAsync(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet",
            arguments)
        { RedirectStandardOutput = true, UseShellExecute = false })!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        if (process.ExitCode != 0) throw new InvalidOperationException(said);
    }
}
