using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>
/// The office's own chain: what it held, and when, signed with a key that signs nothing else. A receipt's bytes are stored as signed and never written
/// again; the next one names their hash.
/// </summary>
public sealed class ReceiptChain : IDisposable
{
    private readonly ECDsa key;

    public ReceiptChain(string folder)
    {
        var file = Path.Combine(folder, "receipts.key.pem");
        key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        if (File.Exists(file))
        {
            key.ImportFromPem(File.ReadAllText(file));
            return;
        }

        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var stream = new FileStream(file, options);
        stream.Write(Encoding.ASCII.GetBytes(key.ExportPkcs8PrivateKeyPem()));
        Disk.Force(stream);
        Disk.ForceFolder(folder);
    }

    /// <summary>The public key, PEM.</summary>
    public string PublicKey => key.ExportSubjectPublicKeyInfoPem() + "\n";

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

    /// <summary>The row of the receipt to follow the last one in this database.</summary>
    internal ReceiptRow Next(OfficeDb db, EntrySet held, DateTimeOffset now)
    {
        var last = db.Receipts.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant).OrderByDescending(row => row.N).FirstOrDefault();
        var receipt = new JsonObject
        {
            ["n"] = (last?.N ?? 0) + 1,
            ["insp"] = held.Inspection,
            ["heads"] = new JsonObject(held.Heads().Select(head => KeyValuePair.Create(head.Key, (JsonNode?)head.Value))),
            ["root"] = Merkle.Root([.. held.Entries.Select(entry => entry.Hash), .. held.Held.Select(line => line.Hash)]),
            ["at"] = now.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'"),
            ["prev"] = last is null ? "" : Sha.Of(last.Raw),
        };
        var signed = JsonSerializer.SerializeToUtf8Bytes(receipt);
        var signature = Convert.ToBase64String(key.SignData(signed, HashAlgorithmName.SHA256));
        byte[] raw = [.. signed.AsSpan(0, signed.Length - 1), .. Encoding.ASCII.GetBytes($",\"signature\":\"{signature}\"}}")];
        return new ReceiptRow { N = (last?.N ?? 0) + 1, Insp = held.Inspection, Raw = raw };
    }

    /// <summary>The latest receipt of an inspection.</summary>
    internal static async Task<byte[]?> Last(OfficeDb db, string inspection) =>
        await db.Receipts.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).OrderByDescending(row => row.N).Select(row => row.Raw).FirstOrDefaultAsync();

    public void Dispose() => key.Dispose();
}
