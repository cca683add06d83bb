using System.Net;
using System.Net.Http.Json;
using Microsoft.AspNetCore.Builder;
using Purlin.Office;

namespace Purlin.Field.Tests.App;

/// <summary>A real office in this process, over a folder of its own, serving the published app. It can be stopped and started again.</summary>
public sealed class OfficeAtHand : IAsyncDisposable
{
    public const string Code = "walk-the-house-1968";
    private readonly string folder = Directory.CreateTempSubdirectory("purlin-office-").FullName;
    private WebApplication? app;

    public string Address { get; private set; } = "";

    public static async Task<OfficeAtHand> StartAsync()
    {
        var office = new OfficeAtHand();
        await office.RunAsync("http://127.0.0.1:0");
        return office;
    }

    public Task StartAgainAsync() => RunAsync(Address);

    private async Task RunAsync(string address)
    {
        app = OfficeHost.Build(new OfficeOptions { Folder = folder, Address = address, AppFolder = PublishedApp.Folder, OwnerCode = Code });
        await app.StartAsync();
        Address = app.Urls.First();
    }

    public async Task StopAsync()
    {
        if (app is null) return;
        await app.StopAsync(CancellationToken.None);
        await app.DisposeAsync();
        app = null;
    }

    /// <summary>A client with the owner's session, for looking at what the office holds.</summary>
    public async Task<HttpClient> ClientAsync()
    {
#pragma warning disable CA5400 // Loopback without certificates.
        var client = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(Address) };
#pragma warning restore CA5400
        client.DefaultRequestHeaders.Add("X-Field", "1");
        (await client.PostAsJsonAsync("/office/session", new { code = Code })).EnsureSuccessStatusCode();
        return client;
    }

    /// <summary>Signs a phone in, on the page that is open.</summary>
    public static async Task SignInAsync(Phone phone) =>
        Assert.Equal("", await phone.Page.EvaluateAsync<string>("async code => (await import('/device/send.js')).signIn(code)", Code));

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        Directory.Delete(folder, recursive: true);
    }
}
