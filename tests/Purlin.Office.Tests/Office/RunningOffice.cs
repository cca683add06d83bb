using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using Purlin.Journal;
using Purlin.Office;

namespace Purlin.Office.Tests.Office;

/// <summary>An office really started, on a free port of loopback and a folder of its own, with a client as the app is one.</summary>
internal sealed class RunningOffice : IAsyncDisposable
{
    public const string Code = "test-code-of-the-owner";

    private RunningOffice(WebApplication app, string folder)
    {
        App = app;
        Folder = folder;
        Address = new Uri(app.Urls.Single());
        Client = NewClient();
    }

    public WebApplication App { get; }

    public string Folder { get; }

    public Uri Address { get; }

    /// <summary>Signed in, and says that it is the app.</summary>
    public HttpClient Client { get; }

    /// <summary>The database, to look at.</summary>
    public Purlin.Office.Storage.OfficeDb Db() => App.Services.GetRequiredService<Purlin.Office.Storage.Sqlite.SqliteFile>().Db(Purlin.Office.Storage.Tenant.Own);

    /// <summary>Where a file of this hash lies, whole or not there.</summary>
    public string FileOf(string sha) => Path.Combine(Folder, "blobs", "own", sha[..2], sha[2..]);

    public static string NewFolder() => Directory.CreateTempSubdirectory("purlin-office-").FullName;

    public static async Task<RunningOffice> Start(string? folder = null, Func<OfficeOptions, OfficeOptions>? with = null)
    {
        folder ??= NewFolder();
        var options = new OfficeOptions { Folder = folder, Address = "http://127.0.0.1:0", OwnerCode = Code };
        var app = OfficeHost.Build(with?.Invoke(options) ?? options);
        await app.StartAsync();
        var office = new RunningOffice(app, folder);
        var signedIn = await office.Client.PostAsJsonAsync("/office/session", new { code = Code });
        Assert.Equal(HttpStatusCode.NoContent, signedIn.StatusCode);
        return office;
    }

    /// <summary>A client without a session.</summary>
    public HttpClient NewClient(bool marked = true)
    {
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = Address };
        if (marked) client.DefaultRequestHeaders.Add("X-Field", "1");
        return client;
    }

    public async Task<JsonNode> Push(string inspection, params IEnumerable<Entry> entries) => await Read(await PushRaw(inspection, Bytes(entries)));

    public Task<HttpResponseMessage> PushRaw(string inspection, byte[] body, string? encoding = null)
    {
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");
        if (encoding is not null) content.Headers.ContentEncoding.Add(encoding);
        return Client.PostAsync($"/sync/{inspection}/entries", content);
    }

    public Task<HttpResponseMessage> Patch(string sha, ReadOnlyMemory<byte> bytes, long offset, long length)
    {
        var content = new ReadOnlyMemoryContent(bytes);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/offset+octet-stream");
        var request = new HttpRequestMessage(HttpMethod.Patch, $"/blobs/{sha}") { Content = content };
        request.Headers.Add("Upload-Offset", $"{offset}");
        request.Headers.Add("Upload-Length", $"{length}");
        return Client.SendAsync(request);
    }

    public async Task<(long Offset, bool Whole)> Head(string sha)
    {
        var answer = await Client.SendAsync(new HttpRequestMessage(HttpMethod.Head, $"/blobs/{sha}"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (long.Parse(answer.Headers.GetValues("Upload-Offset").Single()), answer.Headers.Contains("Purlin-Whole"));
    }

    public async Task<JsonNode> Get(string path) => await Read(await Client.GetAsync(path));

    public async Task<Dictionary<string, int>> Heads(string inspection) => HeadsOf(await Get($"/sync/{inspection}/heads"));

    public static Dictionary<string, int> HeadsOf(JsonNode answer) => answer["heads"]!.AsObject().ToDictionary(head => head.Key, head => (int)head.Value!);

    public static async Task<JsonNode> Read(HttpResponseMessage answer)
    {
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, $"{(int)answer.StatusCode}: {text}");
        return JsonNode.Parse(text)!;
    }

    public static async Task<string> Words(HttpResponseMessage answer) => (string)JsonNode.Parse(await answer.Content.ReadAsStringAsync())!["words"]!;

    public static byte[] Bytes(IEnumerable<Entry> entries) => [.. entries.SelectMany(entry => entry.Line.ToArray().Append((byte)'\n'))];

    public static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await App.DisposeAsync();
    }
}
