using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Http.Json;
using Purlin.Office.Issue;
using Purlin.Office.Owner;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;
using Purlin.Office.Sync;

namespace Purlin.Office;

/// <summary>Puts an office together: the app, sync, storage, reports, one owner.</summary>
public static class OfficeHost
{
    /// <summary>Builds the office; starting and stopping it is the caller's. Folder, database, owner and imports are ready when this returns.</summary>
    public static WebApplication Build(OfficeOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Directory.CreateDirectory(options.Folder);
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseUrls(options.Address);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 40 * 1024 * 1024;
            kestrel.Limits.MaxConcurrentConnections = 500;
        });
        // Without a launch profile the environment is Production, and then the app's files are only found when asked for.
        builder.WebHost.UseStaticWebAssets();
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        AddParts(builder.Services, options);
        var app = builder.Build();
        app.UseHostFiltering();
        app.UseDoors();
        app.MapSession();
        app.MapSync();
        app.MapBlobs();
        app.MapInspections();
        app.MapIssue();
        app.MapApp(options);
        Prepare(app, options).GetAwaiter().GetResult();
        return app;
    }

    private static void AddParts(IServiceCollection services, OfficeOptions options)
    {
        services.AddSingleton(options);
        services.AddSingleton(new ReceiptChain(options.Folder));
        services.AddSingleton<OfficeStore>();
        services.AddSingleton<BlobFolder>();
        services.AddSingleton<Scrub>();
        services.AddHostedService(parts => parts.GetRequiredService<Scrub>());
        services.AddSingleton<OwnerAccount>();
        services.AddSingleton<PictureViews>();
        services.AddSingleton<UploadTurns>();
        services.AddSingleton<Issuing>();
        services.AddSingleton<Editions>();
        services.AddSingleton<Imports>();
        services.AddSingleton<Archiving>();
        services.AddSingleton<InspectionList>();
        services.Configure<HostFilteringOptions>(hosts => hosts.AllowedHosts = ["localhost", "127.0.0.1", "[::1]", .. options.Hosts]);
        services.Configure<JsonOptions>(json => json.SerializerOptions.MaxDepth = 16);
    }

    private static async Task Prepare(WebApplication app, OfficeOptions options)
    {
        await using (var db = app.Services.GetRequiredService<OfficeStore>().Db()) db.Prepare();
        var owner = app.Services.GetRequiredService<OwnerAccount>();
        if (await owner.Prepare(CancellationToken.None) is { } code && options.OwnerCode is null)
            options.Say($"Owner's code, shown only now; keep it: {code}");
        foreach (var open in options.Import) await app.Services.GetRequiredService<Imports>().Take(open, options.Say, CancellationToken.None);
    }
}
