using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Office.Storage;

/// <summary>
/// The office's own chain: what it held, and when, signed with a key that signs nothing else. A receipt's bytes are stored as signed and never written
/// again; the next one names their hash.
/// </summary>
public sealed class ReceiptChain : IDisposable
{
    /// <summary>The private key's file in the office's folder.</summary>
    public const string KeyFile = "receipts.key.pem";

    private readonly ECDsa key;

    /// <summary>Reads the key of this folder, or makes it.</summary>
    /// <exception cref="OfficeRefused">The key cannot be read.</exception>
    public ReceiptChain(string folder)
    {
        var file = Path.Combine(folder, KeyFile);
        key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        if (!File.Exists(file))
        {
            Keep(file, folder);
            return;
        }

        try
        {
            key.ImportFromPem(File.ReadAllText(file));
        }
        catch (Exception wrong) when (wrong is ArgumentException or CryptographicException)
        {
            throw new OfficeRefused(
                $"{file} is damaged: the key that receipts are signed with cannot be read. Nothing was changed. Put the file back from your last backup "
                + "(purlin restore); only in an office that never gave a receipt may it be deleted.",
                wrong);
        }
    }

    /// <summary>The public key, PEM.</summary>
    public string PublicKey => key.ExportSubjectPublicKeyInfoPem() + "\n";

    /// <summary>The public key's fingerprint: what an edition prints, so that a reader can hold any archive against it.</summary>
    public string Fingerprint => Sha.Of(key.ExportSubjectPublicKeyInfo());

    /// <summary>The fingerprint of a public key in PEM; none when it is no key.</summary>
    public static string? FingerprintOf(string publicKey)
    {
        try
        {
            using var read = ECDsa.Create();
            read.ImportFromPem(publicKey);
            return Sha.Of(read.ExportSubjectPublicKeyInfo());
        }
        catch (Exception wrong) when (wrong is ArgumentException or CryptographicException)
        {
            return null;
        }
    }

    /// <summary>Whether this receipt was signed by that key. Bytes that are no receipt, or no key, were not.</summary>
    public static bool Verifies(ReadOnlySpan<byte> receipt, string publicKey)
    {
        try
        {
            using var checking = ECDsa.Create();
            checking.ImportFromPem(publicKey);
            var at = receipt.LastIndexOf(",\"signature\":\""u8);
            if (at < 0) return false;
            byte[] signed = [.. receipt[..at], (byte)'}'];
            var signature = (string?)JsonNode.Parse(receipt)?["signature"];
            return signature is not null && checking.VerifyData(signed, Convert.FromBase64String(signature), HashAlgorithmName.SHA256);
        }
        catch (Exception wrong) when (wrong is JsonException or FormatException or ArgumentException or CryptographicException or InvalidOperationException)
        {
            return false;
        }
    }

    /// <summary>The receipt that goes on there, for what is now held of an inspection.</summary>
    internal byte[] Sign(ReceiptLink link, string inspection, Outline held, DateTimeOffset now)
    {
        var receipt = new JsonObject
        {
            ["n"] = link.N,
            ["insp"] = inspection,
            ["heads"] = new JsonObject(held.Heads.Select(head => KeyValuePair.Create(head.Key, (JsonNode?)head.Value))),
            ["root"] = held.Root,
            ["at"] = Instant.Milliseconds(now),
            ["prev"] = link.Previous is null ? "" : Sha.Of(link.Previous),
        };
        // A clock that was put back is written down where it cannot be taken out again.
        if (At(link.Previous) is { } before && before > now) receipt["clockBehind"] = Instant.Milliseconds(before);
        var signed = JsonSerializer.SerializeToUtf8Bytes(receipt);
        var signature = Convert.ToBase64String(key.SignData(signed, HashAlgorithmName.SHA256));
        return [.. signed.AsSpan(0, signed.Length - 1), .. Encoding.ASCII.GetBytes($",\"signature\":\"{signature}\"}}")];
    }

    public void Dispose() => key.Dispose();

    private static DateTimeOffset? At(byte[]? receipt) =>
        receipt is not null && DateTimeOffset.TryParse((string?)JsonNode.Parse(receipt)?["at"], CultureInfo.InvariantCulture, out var at) ? at : null;

    /// <summary>Written beside and renamed, so that a power cut leaves a whole key or none.</summary>
    private void Keep(string file, string folder)
    {
        using (var stream = Disk.Write(file + ".new", FileMode.Create))
        {
            stream.Write(Encoding.ASCII.GetBytes(key.ExportPkcs8PrivateKeyPem()));
            Disk.Force(stream);
        }

        File.Move(file + ".new", file);
        Disk.ForceFolder(folder);
    }
}
