using System.Globalization;
using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Office.Storage;

/// <summary>A receipt as it reads, whoever wrote it: docs/SYNC.md, section 4. That it is signed is another question: <see cref="ReceiptChain.Verifies"/>.</summary>
public sealed record SignedReceipt
{
    private static readonly JsonDocumentOptions Options = new() { MaxDepth = Limits.JsonDepth, AllowDuplicateProperties = false };

    /// <summary>Its number in the office's chain.</summary>
    public required int N { get; init; }

    /// <summary>The inspection.</summary>
    public required string Inspection { get; init; }

    /// <summary>What the office held of each device.</summary>
    public required IReadOnlyDictionary<string, int> Heads { get; init; }

    /// <summary>Root over the hashes of all lines held.</summary>
    public required string Root { get; init; }

    /// <summary>Office time.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Hash of the receipt before; empty for the first.</summary>
    public required string Previous { get; init; }

    /// <summary>The later time that the receipt before it bears, when the office's clock had been put back.</summary>
    public string? ClockBehind { get; init; }

    /// <summary>Reads one.</summary>
    public static Checked<SignedReceipt> Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes, Options);
            return Of(document.RootElement);
        }
        catch (Exception wrong) when (wrong is JsonException or InvalidOperationException or FormatException or KeyNotFoundException)
        {
            return new Refusal("receipt", "bytes that are no receipt", "n, insp, heads, root, at, prev, signature, as docs/SYNC.md has them");
        }
    }

    private static Checked<SignedReceipt> Of(JsonElement root)
    {
        Dictionary<string, int> heads = new(StringComparer.Ordinal);
        foreach (var head in root.GetProperty("heads").EnumerateObject())
        {
            var seq = head.Value.GetInt32();
            if (seq is < 0 or > Limits.Sequence + Limits.Entries) return new Refusal("receipt", $"{seq} lines", $"0 to {Limits.Sequence}");
            heads[head.Name] = seq;
        }

        return new SignedReceipt
        {
            N = root.GetProperty("n").GetInt32(),
            Inspection = root.GetProperty("insp").GetString() ?? "",
            Heads = heads,
            Root = root.GetProperty("root").GetString() ?? "",
            At = DateTimeOffset.Parse(root.GetProperty("at").GetString() ?? "", CultureInfo.InvariantCulture),
            Previous = root.GetProperty("prev").GetString() ?? "",
            ClockBehind = root.TryGetProperty("clockBehind", out var behind) ? behind.GetString() : null,
        };
    }
}
