using System.Net.Security;
using System.Security.Authentication;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Purlin.Office.Storage;

namespace Purlin.Office.Certificates;

/// <summary>The certificate as it is kept in the office's folder, and as connections use it: with those above it, so that phones that lack them can follow.</summary>
internal sealed class KeptCertificate(string folder, string name) : IDisposable
{
    private volatile SslStreamCertificateContext? context;

    /// <summary>From when and until when the certificate is good; none before the first.</summary>
    public (DateTimeOffset From, DateTimeOffset Until)? Life { get; private set; }

    private string Chain => Path.Combine(folder, $"{name}.pem");

    private string Key => Path.Combine(folder, $"{name}.key.pem");

    /// <summary>What an encrypted connection is offered.</summary>
    /// <exception cref="AuthenticationException">There is no certificate yet.</exception>
    public SslServerAuthenticationOptions Offer() => new()
    {
        ServerCertificateContext = context ?? throw new AuthenticationException("there is no certificate yet"),
        ApplicationProtocols = [SslApplicationProtocol.Http2, SslApplicationProtocol.Http11],
    };

    /// <summary>Reads what was kept; nothing when it is not there or cannot be read, which a new one mends.</summary>
    public void Load()
    {
        if (!File.Exists(Chain) || !File.Exists(Key)) return;
        try
        {
            Use(File.ReadAllText(Chain), File.ReadAllText(Key));
        }
        catch (Exception damaged) when (damaged is CryptographicException or ArgumentException)
        {
            Life = null;
        }
    }

    /// <summary>Keeps a new one and uses it from the next connection on.</summary>
    public void Keep(string chain, ECDsa key)
    {
        var pem = key.ExportPkcs8PrivateKeyPem();
        Use(chain, pem);
        Write(Key, pem);
        Write(Chain, chain);
    }

    /// <summary>The key by which the authority knows this office; made when absent.</summary>
    public ECDsa AccountKey()
    {
        var file = Path.Combine(folder, "account.key.pem");
        var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        if (File.Exists(file)) key.ImportFromPem(File.ReadAllText(file));
        else Write(file, key.ExportPkcs8PrivateKeyPem());
        return key;
    }

    public void Dispose() => context?.TargetCertificate.Dispose();

    private void Use(string chain, string key)
    {
        using var fromPem = X509Certificate2.CreateFromPem(chain, key);
        // A key that lives only in memory of this process is not taken by every system's TLS; through PKCS#12 it is.
        var leaf = X509CertificateLoader.LoadPkcs12(fromPem.Export(X509ContentType.Pkcs12), null);
        X509Certificate2Collection all = [];
        all.ImportFromPem(chain);
        // Offline: who made the chain is the authority's word, and nobody else is asked at each start.
        context = SslStreamCertificateContext.Create(leaf, all, offline: true);
        Life = (new DateTimeOffset(leaf.NotBefore), new DateTimeOffset(leaf.NotAfter));
    }

    private void Write(string file, string pem)
    {
        Disk.MakePrivateFolder(folder);
        using (var stream = Disk.Write(file + ".new", FileMode.Create))
        {
            stream.Write(Encoding.ASCII.GetBytes(pem));
            Disk.Force(stream);
        }

        File.Move(file + ".new", file, overwrite: true);
        Disk.ForceFolder(folder);
    }
}
