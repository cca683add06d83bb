using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;
using Purlin.Office.Certificates;
using Purlin.Office.Door;
using Purlin.Office.Issue;
using Purlin.Office.Owner;
using Purlin.Office.Storage;
using Purlin.Office.Sync;

namespace Purlin.Office;

/// <summary>Puts an office together: the app, sync, storage, reports, one owner.</summary>
public static class OfficeHost
{
    /// <summary>Builds the office; starting and stopping it is the caller's. Folder and database are ready when this returns, the owner when it has started.</summary>
    /// <exception cref="OfficeRefused">The folder cannot be used as it is: one sentence, and nothing was changed.</exception>
    public static WebApplication Build(OfficeOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var folder = OfficeFolder.Open(options.Folder);
        try
        {
            return Build(options, folder);
        }
        catch
        {
            folder.Dispose();
            throw;
        }
    }

    private static WebApplication Build(OfficeOptions options, OfficeFolder folder)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        Callers callers = new(options.Clock);
        var certificate = options.Certificate is { } own ? new KeptCertificate(Path.Combine(options.Folder, "certificate"), own.Name) : null;
        certificate?.Load();
        if (certificate is null) builder.WebHost.UseUrls(options.Address);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 40 * 1024 * 1024;
            // How many may be connected is decided by who says nothing: see Callers.
            kestrel.Limits.MaxConcurrentConnections = null;
            kestrel.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(60);
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
            kestrel.ConfigureEndpointDefaults(listen => listen.Use(callers.Welcome));
            if (certificate is not null) Listen(kestrel, options.Certificate!, certificate);
        });
        // Without a launch profile the environment is Production, and then the app's files are only found when asked for.
        builder.WebHost.UseStaticWebAssets();
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // That an address is taken is said in a sentence by whoever starts the office.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        AddParts(builder.Services, options, folder, callers);
        if (certificate is not null) AddCertificate(builder.Services, certificate);
        var app = builder.Build();
        // Made here, so that closing the office lets go of them.
        app.Services.GetRequiredService<OfficeFolder>();
        app.UseDoors();
        app.MapSession();
        app.MapSync();
        app.MapBlobs();
        app.MapInspections();
        app.MapIssue();
        app.MapApp(options);
        return app;
    }

    private static void Listen(KestrelServerOptions kestrel, CertificateOptions own, KeptCertificate certificate)
    {
        kestrel.ListenAnyIP(own.HttpPort);
        // Asked at each connection, so that a renewed certificate is used without a restart, and sent with those above it.
        kestrel.ListenAnyIP(own.HttpsPort, listen => listen.UseHttps(new TlsHandshakeCallbackOptions { OnConnection = _ => ValueTask.FromResult(certificate.Offer()) }));
    }

    private static void AddCertificate(IServiceCollection services, KeptCertificate certificate)
    {
        services.AddSingleton(_ => certificate);
        services.AddSingleton<ChallengeAnswers>();
        services.AddSingleton<CertificateRenewal>();
        services.AddHostedService(parts => parts.GetRequiredService<CertificateRenewal>());
    }

    private static void AddParts(IServiceCollection services, OfficeOptions options, OfficeFolder folder, Callers callers)
    {
        services.AddSingleton(options);
        services.AddSingleton(_ => folder);
        services.AddSingleton(parts => parts.GetRequiredService<OfficeFolder>().File);
        services.AddSingleton(parts => parts.GetRequiredService<OfficeFolder>().Receipts);
        services.AddSingleton(callers);
        services.AddSingleton<OfficeSettings>();
        services.AddSingleton<Desks>();
        services.AddSingleton<SignInLimits>();
        services.AddSingleton<Sessions>();
        services.AddSingleton<OwnerAccount>();
        services.AddHostedService<OfficeOpening>();
        services.AddSingleton<Scrub>();
        services.AddHostedService(parts => parts.GetRequiredService<Scrub>());
        services.Configure<JsonOptions>(json => json.SerializerOptions.MaxDepth = 16);
    }
}
