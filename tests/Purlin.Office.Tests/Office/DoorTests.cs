using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Time.Testing;
using Purlin.Office.Owner;

namespace Purlin.Office.Tests.Office;

/// <summary>Who gets in: sessions, requests from other sites, guessing.</summary>
public sealed class DoorTests
{
    private static IEnumerable<(string Method, string Path, RouteEndpoint Endpoint)> Routes(RunningOffice office) =>
        from endpoint in office.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        let path = "/" + endpoint.RoutePattern.RawText!.TrimStart('/').Replace("{insp}", "visit1", StringComparison.Ordinal).Replace("{sha}", new string('a', 64), StringComparison.Ordinal).Replace("{number:int}", "1", StringComparison.Ordinal)
        from method in endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]
        select (method, path, endpoint);

    [Fact]
    public async Task Every_route_of_the_office_needs_a_session_but_those_that_say_otherwise()
    {
        await using var office = await RunningOffice.Start();
        using var stranger = office.NewClient();
        string[] open = ["GET /office/session", "POST /office/session", "GET /office/enter", "GET /office/enter.js"];
        var routes = Routes(office).ToList();
        Assert.True(routes.Count >= 14);
        foreach (var (method, path, endpoint) in routes)
        {
            var isOpen = endpoint.Metadata.GetMetadata<OpenToAll>() is not null;
            Assert.Equal(open.Contains($"{method} {path}"), isOpen);
            if (isOpen) continue;
            Assert.StartsWith("/", path, StringComparison.Ordinal);
            var answer = await stranger.SendAsync(new HttpRequestMessage(new HttpMethod(method), path) { Content = method == "GET" ? null : JsonContent.Create(Array.Empty<string>()) });
            Assert.True(answer.StatusCode == HttpStatusCode.Unauthorized, $"{method} {path}: {(int)answer.StatusCode}");
        }
    }

    [Fact]
    public async Task What_is_no_route_under_the_offices_names_needs_a_session_too()
    {
        await using var office = await RunningOffice.Start();
        using var stranger = office.NewClient();
        foreach (var path in (string[])["/office", "/office/nothing", "/SYNC/x/heads", "/blobs", "/sync"])
            Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.GetAsync(path)).StatusCode);
    }

    [Fact]
    public async Task A_form_a_plain_text_post_and_another_site_are_refused()
    {
        await using var office = await RunningOffice.Start();
        using var unmarked = office.NewClient(marked: false);
        var form = await unmarked.PostAsync("/office/session", new FormUrlEncodedContent([KeyValuePair.Create("code", RunningOffice.Code)]));
        Assert.Equal(HttpStatusCode.Forbidden, form.StatusCode);
        var plain = await office.Client.PostAsync("/sync/visit1/entries", new StringContent("{}", Encoding.UTF8, "text/plain"));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, plain.StatusCode);
        foreach (var from in (string[])["cross-site", "same-site"])
        {
            var request = new HttpRequestMessage(HttpMethod.Post, "/blobs/missing") { Content = JsonContent.Create(Array.Empty<string>()) };
            request.Headers.Add("Sec-Fetch-Site", from);
            Assert.Equal(HttpStatusCode.Forbidden, (await office.Client.SendAsync(request)).StatusCode);
        }
    }

    [Fact]
    public async Task Reading_never_writes_and_the_app_is_only_read()
    {
        await using var office = await RunningOffice.Start();
        var posted = await office.Client.PostAsync("/", new StringContent(""));
        Assert.Equal(HttpStatusCode.MethodNotAllowed, posted.StatusCode);
        await office.Client.GetAsync("/sync/visit1/heads");
        await office.Client.GetAsync("/sync/visit1/entries");
        await using var db = office.App.Services.GetRequiredService<Storage.OfficeStore>().Db();
        Assert.Empty(db.Entries);
        Assert.Empty(db.Receipts);
    }

    [Fact]
    public async Task A_foreign_name_for_this_machine_is_not_answered()
    {
        await using var office = await RunningOffice.Start();
        var request = new HttpRequestMessage(HttpMethod.Get, "/office/session");
        request.Headers.Host = "rebound.example";
        Assert.Equal(HttpStatusCode.BadRequest, (await office.Client.SendAsync(request)).StatusCode);
    }

    [Fact]
    public async Task Five_wrong_codes_and_then_a_minute_of_patience()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        await using var office = await RunningOffice.Start(with: options => options with { Clock = clock });
        using var stranger = office.NewClient();
        for (var guess = 0; guess < 5; guess++) Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.PostAsJsonAsync("/office/session", new { code = $"guess {guess}" })).StatusCode);
        var waiting = await stranger.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code });
        Assert.Equal(HttpStatusCode.TooManyRequests, waiting.StatusCode);
        Assert.Contains("60 seconds", await RunningOffice.Words(waiting), StringComparison.Ordinal);
        clock.Advance(TimeSpan.FromSeconds(61));
        Assert.Equal(HttpStatusCode.NoContent, (await stranger.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code.ToUpperInvariant() })).StatusCode);
    }

    [Fact]
    public async Task The_session_cookie_cannot_be_read_by_scripts_or_sent_from_elsewhere_and_ends_on_signing_out()
    {
        await using var office = await RunningOffice.Start();
        using var other = office.NewClient();
        var answer = await other.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code });
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, (await other.GetAsync("/office/inspections")).StatusCode);
        await other.DeleteAsync("/office/session");
        using var thief = new HttpClient(new SocketsHttpHandler { UseCookies = false }) { BaseAddress = office.Address };
        thief.DefaultRequestHeaders.Add("Cookie", cookie.Split(';')[0]);
        Assert.Equal(HttpStatusCode.Unauthorized, (await thief.GetAsync("/office/inspections")).StatusCode);
    }

    [Fact]
    public async Task The_code_is_made_once_shown_once_and_kept_only_as_a_hash()
    {
        var folder = RunningOffice.NewFolder();
        List<string> said = [];
        await using (OfficeHost.Build(new OfficeOptions { Folder = folder, Address = "http://127.0.0.1:0", Say = said.Add })) { }
        var code = Assert.Single(said, line => line.StartsWith("Owner's code", StringComparison.Ordinal)).Split(": ")[1];
        await using (OfficeHost.Build(new OfficeOptions { Folder = folder, Address = "http://127.0.0.1:0", Say = said.Add })) { }
        Assert.Single(said, line => line.StartsWith("Owner's code", StringComparison.Ordinal));
        Assert.True(code.Replace("-", "", StringComparison.Ordinal).Length == 20);
        foreach (var file in Directory.EnumerateFiles(folder)) Assert.DoesNotContain(code, Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_link_shown_at_start_signs_in_once()
    {
        await using var office = await RunningOffice.Start();
        var code = office.App.Services.GetRequiredService<OwnerAccount>().NewLinkCode();
        using var first = office.NewClient();
        using var second = office.NewClient();
        Assert.Equal(HttpStatusCode.NoContent, (await first.PostAsJsonAsync("/office/session", new { code })).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await second.PostAsJsonAsync("/office/session", new { code })).StatusCode);
        var page = await second.GetAsync("/office/enter");
        Assert.Equal(new MediaTypeHeaderValue("text/html") { CharSet = "utf-8" }, page.Content.Headers.ContentType);
    }
}
