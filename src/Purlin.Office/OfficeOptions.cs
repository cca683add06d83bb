namespace Purlin.Office;

/// <summary>How an office is started. Everything has a default that keeps it to this machine.</summary>
public sealed record OfficeOptions
{
    /// <summary>Folder of database, photographs and keys; made when absent.</summary>
    public required string Folder { get; init; }

    /// <summary>Where it listens. Loopback unless somebody decides otherwise.</summary>
    public string Address { get; init; } = "http://127.0.0.1:5225";

    /// <summary>Host names it answers to besides those of loopback: what stops a foreign page from reaching it under a name of its own.</summary>
    public IReadOnlyList<string> Hosts { get; init; } = [];

    /// <summary>
    /// The address people open, when something in front of the office ends the encryption (a proxy on this machine): its name is answered to, links name it, and
    /// the proxy is believed when it says for whom it asks.
    /// </summary>
    public Uri? Public { get; init; }

    /// <summary>How the office gets a certificate for its public name by itself; none when something in front of it ends the encryption, or nothing does.</summary>
    public Certificates.CertificateOptions? Certificate { get; init; }

    /// <summary>Whether codes and links may be shown: not where what is shown ends in a log that is kept.</summary>
    public bool ShowCodes { get; init; } = true;

    /// <summary>Archives to take in at start, a demo for instance. What is already here is passed over.</summary>
    public IReadOnlyList<Func<Stream>> Import { get; init; } = [];

    /// <summary>A published app's <c>wwwroot</c> to serve instead of the app this program was built with.</summary>
    public string? AppFolder { get; init; }

    /// <summary>The owner's code, for tests; otherwise one is made at first start and shown once.</summary>
    public string? OwnerCode { get; init; }

    /// <summary>Makes a new owner's code, shown once; the old one and all sessions end.</summary>
    public bool NewOwnerCode { get; init; }

    /// <summary>Told what the person at the console must know: the address, the code.</summary>
    public Action<string> Say { get; init; } = _ => { };

    /// <summary>The clock.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Called at each named step of a write, so that a test can stop the office there.</summary>
    internal Action<string> At { get; init; } = _ => { };
}
