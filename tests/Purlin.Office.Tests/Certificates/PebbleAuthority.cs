using System.Diagnostics;
using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text.Json.Nodes;

namespace Purlin.Office.Tests.Certificates;

/// <summary>
/// The test authority that the makers of ACME give out (Debian: pebble), on free ports of loopback, with its own name server. It asks its questions really.
/// </summary>
internal sealed class PebbleAuthority : IAsyncDisposable
{
    private readonly List<Process> processes = [];
    private readonly X509Certificate2 own;

    private PebbleAuthority(X509Certificate2 own, int port, int management)
    {
        this.own = own;
        Directory = new Uri($"https://localhost:{port}/dir");
        Management = new Uri($"https://localhost:{management}");
    }

    public static bool IsHere => File.Exists("/usr/bin/pebble") && File.Exists("/usr/bin/pebble-challtestsrv");

    public Uri Directory { get; }

    private Uri Management { get; }

    /// <summary>Believes the authority's own certificate and nothing else.</summary>
    public HttpMessageHandler Connect() => new SocketsHttpHandler
    {
        SslOptions = new SslClientAuthenticationOptions { RemoteCertificateValidationCallback = (_, given, _, _) => given?.GetCertHashString() == own.GetCertHashString() },
    };

    /// <summary>Starts it.</summary>
    /// <param name="httpPort">Where it asks for the answer.</param>
    /// <param name="badNonces">Share of good nonces, in percent, that it refuses.</param>
    public static async Task<PebbleAuthority> Start(int httpPort, int badNonces = 0)
    {
        var folder = System.IO.Directory.CreateTempSubdirectory("purlin-pebble-").FullName;
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=localhost", key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName("localhost");
        request.CertificateExtensions.Add(names.Build());
        var signed = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
        await File.WriteAllTextAsync(Path.Combine(folder, "pebble.pem"), signed.ExportCertificatePem());
        await File.WriteAllTextAsync(Path.Combine(folder, "pebble.key"), key.ExportPkcs8PrivateKeyPem());
        var (port, management, dns, control) = (FreePort(), FreePort(), FreePort(), FreePort());
        JsonObject settings = new()
        {
            ["listenAddress"] = $"127.0.0.1:{port}",
            ["managementListenAddress"] = $"127.0.0.1:{management}",
            ["certificate"] = Path.Combine(folder, "pebble.pem"),
            ["privateKey"] = Path.Combine(folder, "pebble.key"),
            ["httpPort"] = httpPort,
            ["tlsPort"] = httpPort,
            ["ocspResponderURL"] = "",
            ["externalAccountBindingRequired"] = false,
        };
        await File.WriteAllTextAsync(Path.Combine(folder, "pebble.json"), new JsonObject { ["pebble"] = settings }.ToJsonString());
        PebbleAuthority authority = new(signed, port, management);
        // Without an empty IPv6 default the name server answers ::1 as well, where the office of a test does not listen.
        authority.Run("pebble-challtestsrv", ["-defaultIPv6", "", "-defaultIPv4", "127.0.0.1", "-dns01", $"127.0.0.1:{dns}", "-management", $"127.0.0.1:{control}", "-http01", "", "-https01", "", "-tlsalpn01", ""], []);
        authority.Run("pebble", ["-config", Path.Combine(folder, "pebble.json"), "-dnsserver", $"127.0.0.1:{dns}"], [("PEBBLE_VA_NOSLEEP", "1"), ("PEBBLE_WFE_NONCEREJECT", $"{badNonces}"), ("PEBBLE_AUTHZREUSE", "0")]);
        using HttpClient client = new(authority.Connect());
        for (var wait = 0; ; wait++)
        {
            try
            {
                await client.GetStringAsync(authority.Directory);
                return authority;
            }
            catch (HttpRequestException) when (wait < 100)
            {
                await Task.Delay(100);
            }
        }
    }

    /// <summary>The certificate at the top of what it gives.</summary>
    public async Task<X509Certificate2> Root()
    {
        using HttpClient client = new(Connect());
        return X509Certificate2.CreateFromPem(await client.GetStringAsync(new Uri(Management, "/roots/0")));
    }

    public static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var process in processes)
        {
            process.Kill();
            await process.WaitForExitAsync();
            process.Dispose();
        }

        own.Dispose();
    }

    private void Run(string program, string[] arguments, (string Name, string Value)[] environment)
    {
        ProcessStartInfo start = new($"/usr/bin/{program}", arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment) start.Environment[name] = value;
        var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        processes.Add(process);
    }
}
