using System.Collections.Concurrent;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.Logging;

namespace Purlin.Field.Tests.App;

/// <summary>Serves the published files on loopback and nothing else: no office stands behind it. It can be stopped, and files can be put over others.</summary>
public sealed class TinyHost : IAsyncDisposable
{
    private static readonly FileExtensionContentTypeProvider Types = new();
    private readonly ConcurrentDictionary<string, byte[]?> over = new(StringComparer.Ordinal);
    private WebApplication? app;

    public string Address { get; private set; } = "";

    public Uri Url(string path) => new(Address + path);

    public static async Task<TinyHost> StartAsync()
    {
        var host = new TinyHost();
        await host.RunAsync(0);
        return host;
    }

    /// <summary>Puts bytes in place of a file; none stands for a file that is missing.</summary>
    public void Put(string path, byte[]? bytes) => over[path] = bytes;

    public byte[] Read(string path) => over.TryGetValue(path, out var bytes) ? bytes ?? [] : File.ReadAllBytes(Path.Combine(PublishedApp.Folder, path.TrimStart('/')));

    public async Task StopAsync()
    {
        if (app is null) return;
        await app.StopAsync(TestContext.Current.CancellationToken);
        await app.DisposeAsync();
        app = null;
    }

    public Task StartAgainAsync() => RunAsync(new Uri(Address).Port);

    private async Task RunAsync(int port)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, port));
        app = builder.Build();
        Types.Mappings[".webmanifest"] = "application/manifest+json";
        app.Run(AnswerAsync);
        await app.StartAsync();
        Address = app.Urls.First();
    }

    private async Task AnswerAsync(HttpContext context)
    {
        var path = context.Request.Path.Value ?? "/";
        if (path.StartsWith("/sync/", StringComparison.Ordinal) || path.StartsWith("/blobs/", StringComparison.Ordinal) || path.StartsWith("/office/", StringComparison.Ordinal))
        {
            context.Response.StatusCode = 404;
            return;
        }

        var file = Path.HasExtension(path) && !path.StartsWith("/visit/", StringComparison.Ordinal) ? path : "/index.html";
        if (over.TryGetValue(file, out var bytes) ? bytes is null : !File.Exists(Path.Combine(PublishedApp.Folder, file.TrimStart('/'))))
        {
            context.Response.StatusCode = 404;
            return;
        }

        context.Response.ContentType = Types.TryGetContentType(file, out var type) ? type : "application/octet-stream";
        context.Response.Headers.CacheControl = "no-cache";
        await context.Response.Body.WriteAsync(Read(file));
    }

    public async ValueTask DisposeAsync() => await StopAsync();
}
