using System.Net;
using System.Net.Http.Json;
using System.Text;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Storage;

namespace Purlin.Office.Tests.Office;

/// <summary>Words for every refusal, tenants apart, a second writer beside, limits, what a public name changes.</summary>
public sealed class DeskTests
{
    private const string Visit = "visit1";

    [Theory]
    [InlineData("POST", "/blobs/missing", "application/json", "{not json")]
    [InlineData("POST", "/blobs/missing", "text/plain", "[]")]
    [InlineData("DELETE", "/sync/visit1/heads", null, null)]
    [InlineData("GET", "/office/nothing/of/the/kind", null, null)]
    [InlineData("GET", "/office/inspections/visit1/editions/99999999999999999999/page", null, null)]
    [InlineData("GET", "/sync", null, null)]
    [InlineData("GET", "/blobs/abc/def", null, null)]
    [InlineData("PUT", "/office/inspections/visit1/retention", "application/json", "{\"keepUntil\":\"soon\"}")]
    public async Task Every_refusal_says_what_is_the_matter(string method, string path, string? type, string? body)
    {
        await using var office = await RunningOffice.Start();
        HttpRequestMessage request = new(new HttpMethod(method), path);
        if (body is not null) request.Content = new StringContent(body, Encoding.UTF8, type!);
        var answer = await office.Client.SendAsync(request);
        Assert.InRange((int)answer.StatusCode, 400, 499);
        Assert.EndsWith(".", await RunningOffice.Words(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_foreign_host_is_told_so_with_the_same_headers_as_everybody()
    {
        await using var office = await RunningOffice.Start();
        HttpRequestMessage request = new(HttpMethod.Get, "/office/session");
        request.Headers.Host = "rebound.example";
        var answer = await office.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.EndsWith(".", await RunningOffice.Words(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_is_signed_in_for_one_tenant_sees_nothing_of_another()
    {
        await using var office = await RunningOffice.Start();
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 3));
        var photo = Pictures.Jpeg(64, 48);
        await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
        var token = new string('7', 64);
        await using (var db = office.Db())
        {
            db.Sessions.Add(new SessionRow { Tenant = "other", TokenHash = Sha.Of(Encoding.UTF8.GetBytes(token)), Until = long.MaxValue, Device = "", Since = 0, Seen = 0 });
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        using HttpClient other = new(new SocketsHttpHandler { UseCookies = false }) { BaseAddress = office.Address };
        other.DefaultRequestHeaders.Add("X-Field", "1");
        other.DefaultRequestHeaders.Add("Cookie", $"purlin-session={token}");
        Assert.Equal("[]", await other.GetStringAsync("/office/inspections"));
        Assert.Equal("", await other.GetStringAsync($"/sync/{Visit}/entries"));
        Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/office/inspections/{Visit}/archive")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/blobs/{Sha.Of(photo)}")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/office/pictures/{Sha.Of(photo)}")).StatusCode);
        Assert.Equal(3, (await office.Heads(Visit))["aaa"]);
    }

    [Fact]
    public async Task What_another_process_wrote_into_the_same_store_is_seen_at_the_next_request()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 6);
        await office.Push(Visit, lines[..2]);
        // A second node: its own shelf over the same database.
        var services = office.App.Services;
        JournalShelf elsewhere = new(services.GetRequiredService<Desks>().Of(Tenant.Own).Journals, services.GetRequiredService<ReceiptChain>(), TimeProvider.System);
        await elsewhere.Take(Visit, new Purlin.Journal.Merge.LineBlock { Entries = lines[2..4], Held = [] }, CancellationToken.None);
        Assert.Equal(4, (await office.Heads(Visit))["aaa"]);
        Assert.Equal(2, (int)(await office.Push(Visit, lines))["taken"]!);
        Assert.Equal(6, await elsewhere.With(Visit, journal => journal.Lines.Count, CancellationToken.None));
        using var opened = ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"))).OrThrow();
        Assert.Equal(6, opened.Entries.Count);
    }

    [Fact]
    public async Task Junk_is_kept_up_to_a_limit_shown_in_the_list_and_never_in_the_way_of_an_archive()
    {
        await using var office = await RunningOffice.Start();
        for (var push = 0; push < 3; push++)
            await office.PushRaw("unknown1", Encoding.ASCII.GetBytes(string.Concat(Enumerable.Range(0, 1_500).Select(number => $"junk {push} {number}\n"))));
        var answer = await RunningOffice.Read(await office.PushRaw("unknown1", Encoding.ASCII.GetBytes(new string('x', Limits.LineBytes + 1) + "\none more\n")));
        Assert.Equal((0, 2), (answer["held"]!.AsArray().Count, answer["turned"]!.AsArray().Count));
        var listed = (await office.Get("/office/inspections"))[0]!;
        Assert.Equal(("unknown1", Limits.HeldLines), ((string)listed["id"]!, (int)listed["held"]!));
        Assert.True(ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync("/office/inspections/unknown1/archive"))).IsAccepted);
    }

    [Fact]
    public async Task The_list_says_how_many_there_are_and_gives_some()
    {
        await using var office = await RunningOffice.Start();
        for (var visit = 0; visit < 5; visit++) await office.Push($"visit{visit}", Lines.Notes($"visit{visit}", "aaa", 1));
        var answer = await office.Client.GetAsync("/office/inspections?search=visit&skip=1&count=2");
        Assert.Equal("5", answer.Headers.GetValues("Purlin-Total").Single());
        Assert.Equal(2, (await answer.Content.ReadFromJsonAsync<List<object>>())!.Count);
        Assert.Equal(5, (await office.Get("/office/inspections")).AsArray().Count);
    }

    [Fact]
    public async Task Erased_after_its_time_it_is_not_taken_again_and_says_so()
    {
        await using var office = await RunningOffice.Start();
        var photo = Pictures.Jpeg(64, 48);
        var pen = new Pen(Visit, "aaa");
        Entry[] lines = [pen.Write(new EntryBody.PhotoTaken { Sha = Sha.Of(photo), Size = photo.Length, MediaType = "image/jpeg" }, DateTimeOffset.UnixEpoch)];
        await office.Push(Visit, lines);
        await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
        await office.Client.GetAsync($"/office/pictures/{Sha.Of(photo)}");
        var early = await office.Client.DeleteAsync($"/office/inspections/{Visit}");
        Assert.Equal(HttpStatusCode.Conflict, early.StatusCode);
        Assert.Contains("until when", await RunningOffice.Words(early), StringComparison.Ordinal);
        await office.Client.PutAsJsonAsync($"/office/inspections/{Visit}/retention", new { keepUntil = "2020-01-01" });
        Assert.Equal(HttpStatusCode.NoContent, (await office.Client.DeleteAsync($"/office/inspections/{Visit}")).StatusCode);
        var again = await office.PushRaw(Visit, RunningOffice.Bytes(lines));
        Assert.Equal(HttpStatusCode.Gone, again.StatusCode);
        Assert.Contains("erased at the office", await RunningOffice.Words(again), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await office.Client.GetAsync($"/blobs/{Sha.Of(photo)}")).StatusCode);
        Assert.DoesNotContain(Directory.EnumerateFiles(office.Folder, "*.jpg", SearchOption.AllDirectories), _ => true);
        Assert.Empty(await Purlin.Office.Copies.Verify.Run(office.Folder, CancellationToken.None));
    }

    [Fact]
    public async Task Pictures_stay_in_no_cache()
    {
        await using var office = await RunningOffice.Start();
        var photo = Pictures.Jpeg(64, 48);
        await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
        Assert.Equal("no-store", (await office.Client.GetAsync($"/office/pictures/{Sha.Of(photo)}")).Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task Behind_a_proxy_the_cookie_is_bound_to_the_encrypted_name()
    {
        await using var office = await RunningOffice.Start(with: options => options with { Public = new Uri("https://office.example") });
        HttpRequestMessage request = new(HttpMethod.Post, "/office/session") { Content = JsonContent.Create(new { code = RunningOffice.Code }) };
        request.Headers.Host = "office.example";
        request.Headers.Add("X-Field", "1");
        request.Headers.Add("X-Forwarded-Proto", "https");
        var answer = await office.NewClient(marked: false).SendAsync(request);
        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.StartsWith("__Host-purlin-session=", cookie, StringComparison.Ordinal);
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("max-age=31536000", answer.Headers.GetValues("Strict-Transport-Security").Single());
    }

    [Fact]
    public async Task Without_a_public_name_nobody_is_believed_to_come_encrypted()
    {
        await using var office = await RunningOffice.Start(with: options => options with { Hosts = ["office.example"] });
        HttpRequestMessage request = new(HttpMethod.Get, "/office/session");
        request.Headers.Host = "office.example";
        request.Headers.Add("X-Forwarded-Proto", "https");
        var answer = await office.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("This address is not encrypted, and a phone keeps nothing at such an address.", await RunningOffice.Words(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task At_an_address_without_encryption_stands_one_sentence_instead_of_the_app()
    {
        await using var office = await RunningOffice.Start(with: options => options with { Public = new Uri("https://office.example") });
        HttpRequestMessage request = new(HttpMethod.Get, "/");
        request.Headers.Host = "office.example";
        var answer = await office.Client.SendAsync(request);
        Assert.Equal((HttpStatusCode.Forbidden, "text/html"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains("a phone keeps nothing at such an address", page, StringComparison.Ordinal);
        Assert.Contains("https://office.example/", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_a_service_no_code_is_shown_and_a_link_is_given_when_asked()
    {
        List<string> said = [];
        var folder = RunningOffice.NewFolder();
        await using var app = OfficeHost.Build(new OfficeOptions { Folder = folder, Address = "http://127.0.0.1:0", ShowCodes = false, Say = said.Add });
        await app.StartAsync();
        Assert.Empty(said);
        await app.Services.GetRequiredService<OfficeSettings>().Keep(Tenant.Own, OfficeSettings.Address, "https://office.example");
        var (status, output, _) = await Cli.Typed.RunAsync(["link", "--data", folder]);
        Assert.Equal(0, status);
        Assert.Contains("https://office.example/office/enter#", output, StringComparison.Ordinal);
        Assert.Contains("█", output, StringComparison.Ordinal);
        var code = output.Split('#')[1].Split('\n')[0].Trim();
        using HttpClient client = new() { BaseAddress = new Uri(app.Urls.Single()) };
        client.DefaultRequestHeaders.Add("X-Field", "1");
        Assert.Equal(HttpStatusCode.NoContent, (await client.PostAsJsonAsync("/office/session", new { code })).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.PostAsJsonAsync("/office/session", new { code })).StatusCode);
    }

    [Fact]
    public void Every_kind_of_obstacle_has_a_word_of_its_own()
    {
        var kinds = typeof(Purlin.Judgement.Obstacle).GetNestedTypes();
        var words = kinds.Select(kind => ((Purlin.Judgement.Obstacle)System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(kind)).Kind).ToList();
        Assert.True(words.Count >= 7);
        Assert.Equal(words.Count, words.Distinct().Count());
    }
}
