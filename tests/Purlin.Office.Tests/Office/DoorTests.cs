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
        where !endpoint.RoutePattern.RawText!.Contains("{area", StringComparison.Ordinal)
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
        Assert.True(routes.Count >= 17);
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
        await using var db = office.Db();
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
    public async Task After_five_wrong_codes_a_minute_of_patience_for_wrong_ones_and_none_for_the_right_one()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        await using var office = await RunningOffice.Start(with: options => options with { Clock = clock });
        using var stranger = office.NewClient();
        async Task<HttpResponseMessage> Try(string code) => await stranger.PostAsJsonAsync("/office/session", new { code });
        for (var guess = 0; guess < 5; guess++) Assert.Equal(HttpStatusCode.Unauthorized, (await Try($"guess {guess}")).StatusCode);
        var waiting = await Try("guess 5");
        Assert.Equal(HttpStatusCode.TooManyRequests, waiting.StatusCode);
        Assert.Contains("60 seconds", await RunningOffice.Words(waiting), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NoContent, (await Try(RunningOffice.Code.ToUpperInvariant())).StatusCode);
        var link = office.App.Services.GetRequiredService<OwnerAccount>().NewLinkCode();
        Assert.Equal(HttpStatusCode.NoContent, (await Try(link)).StatusCode);
        clock.Advance(TimeSpan.FromSeconds(61));
        Assert.Equal(HttpStatusCode.Unauthorized, (await Try("guess 6")).StatusCode);
    }

    [Fact]
    public void Wrong_codes_are_counted_by_address_and_a_household_is_one()
    {
        var clock = new FakeTimeProvider();
        SignInLimits limits = new(new OfficeOptions { Folder = "", Clock = clock });
        var here = System.Net.IPAddress.Parse("2001:db8:1:2::3");
        for (var guess = 0; guess < 5; guess++) Assert.Null(limits.Wrong(here));
        Assert.NotNull(limits.Wrong(System.Net.IPAddress.Parse("2001:db8:1:2:ffff::9")));
        Assert.Null(limits.Wrong(System.Net.IPAddress.Parse("2001:db8:1:3::3")));
        Assert.Null(limits.Wrong(System.Net.IPAddress.Parse("192.0.2.7")));
    }

    [Fact]
    public async Task A_thousand_silent_connections_shut_nobody_out()
    {
        await using var office = await RunningOffice.Start();
        List<System.Net.Sockets.TcpClient> silent = [];
        try
        {
            for (var one = 0; one < Purlin.Office.Door.Callers.Most + 100; one++)
            {
                System.Net.Sockets.TcpClient socket = new();
                await socket.ConnectAsync(office.Address.Host, office.Address.Port);
                silent.Add(socket);
            }

            using var owner = office.NewClient();
            Assert.Equal(HttpStatusCode.NoContent, (await owner.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code })).StatusCode);
            Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/office/inspections")).StatusCode);
        }
        finally
        {
            foreach (var socket in silent) socket.Dispose();
        }
    }

    [Fact]
    public async Task What_is_kept_of_an_earlier_version_as_the_owners_code_is_taken_and_kept_anew()
    {
        await using var office = await RunningOffice.Start();
        await using (var db = office.Db())
        {
            var salt = new byte[16];
            var stretched = Convert.ToHexStringLower(System.Security.Cryptography.Rfc2898DeriveBytes.Pbkdf2("oldcode", salt, 100_000, System.Security.Cryptography.HashAlgorithmName.SHA256, 32));
            db.Settings.Single(row => row.Name == "owner code").Value = $"{Convert.ToHexStringLower(salt)}:{stretched}";
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        using var client = office.NewClient();
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code })).StatusCode);
        for (var time = 0; time < 2; time++) Assert.Equal(HttpStatusCode.NoContent, (await client.PostAsJsonAsync("/office/session", new { code = "OLD-code" })).StatusCode);
        await using var after = office.Db();
        Assert.StartsWith("sha256:", after.Settings.Single(row => row.Name == "owner code").Value, StringComparison.Ordinal);
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
        async Task Once()
        {
            await using var office = OfficeHost.Build(new OfficeOptions { Folder = folder, Address = "http://127.0.0.1:0", Say = said.Add });
            await office.StartAsync();
        }

        await Once();
        var code = Assert.Single(said, line => line.StartsWith("Owner's code", StringComparison.Ordinal)).Split(": ")[1];
        await Once();
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
