using System.Text;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Cli;

/// <summary>
/// Whether the lines still are what the office signed for: each receipt's signature, and the root of the lines under its heads. A tail that was cut off an
/// otherwise perfect chain shows here and nowhere else.
/// </summary>
internal static class Receipts
{
    public static IEnumerable<string> Amiss(InspectionFile file)
    {
        if (file.Extra(ArchiveNames.Receipts) is not { } lines || file.Extra(ArchiveNames.Key) is not { } key) yield break;
        var set = EntrySet.Of(file.Inspection.Id, file.Entries, file.Held);
        var publicKey = Encoding.ASCII.GetString(key);
        foreach (var line in Encoding.UTF8.GetString(lines).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var raw = Encoding.UTF8.GetBytes(line);
            if (!ReceiptChain.Verifies(raw, publicKey)) yield return "a receipt does not bear the office's signature";
            else if (Amiss(set, JsonNode.Parse(raw)!) is { } words) yield return words;
        }
    }

    private static string? Amiss(EntrySet set, JsonNode receipt)
    {
        var (number, here) = ((int)receipt["n"]!, set.Heads());
        var heads = receipt["heads"]!.AsObject().ToDictionary(head => head.Key, head => (int)head.Value!);
        foreach (var (device, seq) in heads)
        {
            if (here.GetValueOrDefault(device) < seq) return $"receipt {number}: the office held {device} up to line {seq}, here it ends at {here.GetValueOrDefault(device)}";
        }

        // A held line that bears no name cannot be counted to a device, so a root over such lines proves nothing either way.
        if (set.Held.Count > 0) return null;
        return Merkle.Root(set.Under(heads).Select(entry => entry.Hash)) == (string?)receipt["root"] ? null : $"receipt {number}: the lines are not the ones the office signed for";
    }
}
