namespace Purlin.Office.Certificates;

/// <summary>The authority did not give a certificate: a sentence for the person who runs the office.</summary>
public sealed class AcmeRefusal : Exception
{
    internal AcmeRefusal(string words, TimeSpan? wait = null)
        : base(words) => Wait = wait;

    /// <summary>How long the authority itself asks to wait.</summary>
    public TimeSpan? Wait { get; }

    /// <summary>An authority's problem document (RFC 8555, section 6.7) in words.</summary>
    internal static AcmeRefusal Of(string name, string? type, string? detail, TimeSpan? wait) => new(
        type?.Split(':')[^1] switch
        {
            "rateLimited" => $"The certificate authority has given enough certificates for {name} for now ({detail}).",
            "dns" => $"The certificate authority does not find {name}: point the name at this machine's address first ({detail}).",
            "connection" or "unauthorized" or "incorrectResponse" => $"The certificate authority could not reach this machine at http://{name}: ports 80 and 443 must be open to it ({detail}).",
            "caa" => $"The name {name} forbids this certificate authority by a CAA record ({detail}).",
            "rejectedIdentifier" => $"The certificate authority gives no certificates for {name} ({detail}).",
            _ => $"The certificate authority refused: {detail ?? type ?? "no reason given"}.",
        },
        wait);
}
