namespace Purlin.Office.Certificates;

/// <summary>How an office gets a certificate for its public name by itself.</summary>
public sealed record CertificateOptions
{
    /// <summary>The directory of an authority that speaks ACME (RFC 8555) and is trusted by phones.</summary>
    public static readonly Uri PublicDirectory = new("https://acme-v02.api.letsencrypt.org/directory");

    /// <summary>The name the certificate is for.</summary>
    public required string Name { get; init; }

    /// <summary>The authority's directory.</summary>
    public Uri Directory { get; init; } = PublicDirectory;

    /// <summary>Port of plain requests: the authority's question comes there, and everybody else is sent on to the encrypted address.</summary>
    public int HttpPort { get; init; } = 80;

    /// <summary>Port of encrypted requests.</summary>
    public int HttpsPort { get; init; } = 443;

    /// <summary>Makes the connection to the authority, for tests with one of their own.</summary>
    internal Func<HttpMessageHandler> Connect { get; init; } = () => new SocketsHttpHandler();
}
