#pragma warning disable CA1416 // Rights of files are looked at where the system has them; elsewhere the test is skipped.
using System.Net;
using System.Net.Security;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Purlin.Office.Certificates;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Certificates;

/// <summary>An office that gets its certificate itself, against an authority that asks as RFC 8555 has it.</summary>
public sealed class OwnCertificateTests
{
    private const string Name = "office.test";

    private static async Task<WebApplication> Start(PebbleAuthority authority, int http, int https, string folder, List<string> said)
    {
        CertificateOptions certificate = new() { Name = Name, Directory = authority.Directory, HttpPort = http, HttpsPort = https, Connect = authority.Connect };
        var app = OfficeHost.Build(new OfficeOptions { Folder = folder, Public = new Uri($"https://{Name}"), Certificate = certificate, OwnerCode = RunningOffice.Code, Say = said.Add });
        await app.StartAsync();
        return app;
    }

    /// <summary>A client that believes the authority's root alone, so that a chain with a gap is an error.</summary>
    private static HttpClient Client(X509Certificate2 root, int https)
    {
        X509ChainPolicy policy = new() { TrustMode = X509ChainTrustMode.CustomRootTrust, RevocationMode = X509RevocationMode.NoCheck };
        policy.CustomTrustStore.Add(root);
        return new HttpClient(new SocketsHttpHandler
        {
            ConnectCallback = async (_, cancel) =>
            {
                var socket = new System.Net.Sockets.TcpClient();
                await socket.ConnectAsync(IPAddress.Loopback, https, cancel);
                return socket.GetStream();
            },
            SslOptions = new SslClientAuthenticationOptions { CertificateChainPolicy = policy },
        })
        { BaseAddress = new Uri($"https://{Name}"), DefaultRequestVersion = HttpVersion.Version20 };
    }

    private static async Task<HttpResponseMessage> Get(HttpClient client, string path)
    {
        for (var wait = 0; ; wait++)
        {
            try
            {
                return await client.GetAsync(path);
            }
            catch (HttpRequestException) when (wait < 200)
            {
                await Task.Delay(100);
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public async Task It_is_had_served_whole_kept_and_used_again_without_asking(int badNonces)
    {
        Assert.SkipUnless(PebbleAuthority.IsHere, "pebble is not installed (Debian: apt-get install pebble)");
        var (http, https, folder) = (PebbleAuthority.FreePort(), PebbleAuthority.FreePort(), RunningOffice.NewFolder());
        X509Certificate2 root;
        List<string> said = [];
        await using (var authority = await PebbleAuthority.Start(http, badNonces))
        {
            root = await authority.Root();
            await using var app = await Start(authority, http, https, folder, said);
            using var client = Client(root, https);
            var answer = await Get(client, "/office/session");
            Assert.Equal((HttpStatusCode.OK, HttpVersion.Version20), (answer.StatusCode, answer.Version));
            Assert.Equal("max-age=31536000", answer.Headers.GetValues("Strict-Transport-Security").Single());
            Assert.Contains(said, line => line.StartsWith($"There is a certificate for {Name}", StringComparison.Ordinal));
        }

        // The authority is gone: what was kept is used.
        await using (var authority = await PebbleAuthority.Start(http))
        {
            said.Clear();
            await using var app = await Start(authority, http, https, folder, said);
            using var client = Client(root, https);
            Assert.Equal(HttpStatusCode.OK, (await Get(client, "/office/session")).StatusCode);
            Assert.Empty(said);
        }

        root.Dispose();
        Assert.All(Directory.EnumerateFiles(Path.Combine(folder, "certificate")), file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file)));
    }

    [Fact]
    public async Task Plain_requests_are_sent_on_and_the_code_is_never_taken_there()
    {
        Assert.SkipUnless(PebbleAuthority.IsHere, "pebble is not installed (Debian: apt-get install pebble)");
        var (http, https) = (PebbleAuthority.FreePort(), PebbleAuthority.FreePort());
        await using var authority = await PebbleAuthority.Start(http);
        await using var app = await Start(authority, http, https, RunningOffice.NewFolder(), []);
        using HttpClient client = new(new SocketsHttpHandler { AllowAutoRedirect = false });
        HttpRequestMessage request = new(HttpMethod.Get, $"http://127.0.0.1:{http}/visit/1?x=2");
        request.Headers.Host = Name;
        var answer = await client.SendAsync(request);
        Assert.Equal((HttpStatusCode.PermanentRedirect, $"https://{Name}/visit/1?x=2"), (answer.StatusCode, answer.Headers.Location!.ToString()));
        HttpRequestMessage strange = new(HttpMethod.Get, $"http://127.0.0.1:{http}/.well-known/acme-challenge/unknown");
        strange.Headers.Host = Name;
        Assert.Equal(HttpStatusCode.NotFound, (await client.SendAsync(strange)).StatusCode);
    }

    [Fact]
    public async Task An_authority_that_cannot_reach_the_office_is_told_in_words()
    {
        Assert.SkipUnless(PebbleAuthority.IsHere, "pebble is not installed (Debian: apt-get install pebble)");
        // The authority asks at a port where nobody listens.
        await using var authority = await PebbleAuthority.Start(PebbleAuthority.FreePort());
        await using var app = await Start(authority, PebbleAuthority.FreePort(), PebbleAuthority.FreePort(), RunningOffice.NewFolder(), []);
        var refused = await Assert.ThrowsAsync<AcmeRefusal>(() => app.Services.GetRequiredService<CertificateRenewal>().Once(CancellationToken.None));
        Assert.Contains("could not reach this machine", refused.Message, StringComparison.Ordinal);
        Assert.Contains("ports 80 and 443", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Pauses_grow_from_a_minute_to_a_day_and_heed_the_authority()
    {
        Assert.Equal(TimeSpan.FromMinutes(1), CertificateRenewal.Pause(1, null));
        Assert.Equal(TimeSpan.FromMinutes(8), CertificateRenewal.Pause(4, null));
        Assert.Equal(TimeSpan.FromDays(1), CertificateRenewal.Pause(12, null));
        Assert.Equal(TimeSpan.FromDays(1), CertificateRenewal.Pause(1_000, null));
        Assert.Equal(TimeSpan.FromDays(7), CertificateRenewal.Pause(2, TimeSpan.FromDays(7)));
    }

    [Fact]
    public void A_new_one_is_due_when_two_thirds_of_its_life_are_over()
    {
        DateTimeOffset from = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal(from.AddDays(60), CertificateRenewal.Due((from, from.AddDays(90))));
    }

    [Theory]
    [InlineData("urn:ietf:params:acme:error:rateLimited", "enough certificates")]
    [InlineData("urn:ietf:params:acme:error:dns", "point the name at this machine")]
    [InlineData("urn:ietf:params:acme:error:caa", "CAA record")]
    [InlineData("urn:ietf:params:acme:error:rejectedIdentifier", "gives no certificates")]
    public void What_the_authority_says_is_said_in_words(string type, string words) =>
        Assert.Contains(words, AcmeRefusal.Of(Name, type, "detail", null).Message, StringComparison.Ordinal);
}
