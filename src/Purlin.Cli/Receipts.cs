using System.Text;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Cli;

/// <summary>
/// Whether the lines still are what the office signed for: each receipt's signature, and the root of the lines under its heads. A tail that
/// was cut off an otherwise perfect chain shows here and nowhere else. The key that lies in the archive proves nothing by itself: who can
/// rewrite the one can rewrite the other.
/// </summary>
internal static class Receipts
{
    /// <summary>What is amiss, and what a reader may take from it.</summary>
    /// <param name="file">The record.</param>
    /// <param name="trusted">Fingerprint of the office's key, had from elsewhere; none when nothing was named.</param>
    public static Vouched Look(InspectionFile file, string? trusted)
    {
        var lines = file.Extra(ArchiveNames.Receipts);
        var key = file.Extra(ArchiveNames.Key) is { } pem ? Encoding.ASCII.GetString(pem) : null;
        var print = key is null ? null : ReceiptChain.FingerprintOf(key);
        if (trusted is not null && (print is null || lines is null))
            return new Vouched(["it holds no receipt of the office whose key was named"], "Nobody outside this file vouches for it.");
        if (trusted is not null && print != trusted)
            return new Vouched([$"its receipts are of another key, {Grouped(print!)}, and not of the one that was named"],
                "Nobody outside this file vouches for it.");
        if (lines is null || key is null)
            return new Vouched([], "Nobody outside this file vouches for it: it holds no receipt of an office. It says that nothing was damaged, not that nothing was rewritten.");
        var read = Read(lines, key);
        List<string> amiss = [.. read.Where(one => one.Amiss is not null).Select(one => one.Amiss!)];
        var set = EntrySet.Of(file.Inspection.Id, file.Entries, file.Held);
        var good = read.Where(one => one.Receipt is not null).Select(one => one.Receipt!).ToList();
        foreach (var receipt in good) amiss.AddRange(Amiss(set, receipt));
        amiss.AddRange(Clocks(good));
        return new Vouched(amiss, Words(set, good, trusted is not null, print));
    }

    private static List<(SignedReceipt? Receipt, string? Amiss)> Read(byte[] lines, string key)
    {
        List<(SignedReceipt?, string?)> read = [];
        foreach (var line in Encoding.UTF8.GetString(lines).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var raw = Encoding.UTF8.GetBytes(line);
            var receipt = SignedReceipt.Read(raw);
            if (!ReceiptChain.Verifies(raw, key)) read.Add((null, "a receipt does not bear the office's signature"));
            else read.Add(receipt.IsAccepted
                ? (receipt.OrThrow(), null) : (null, $"a signed receipt cannot be read: {string.Join("; ", receipt.Refusals)}"));
        }

        return read;
    }

    private static IEnumerable<string> Amiss(EntrySet set, SignedReceipt receipt)
    {
        var here = set.Heads();
        if (receipt.Inspection != set.Inspection)
        {
            yield return $"receipt {receipt.N}: it is of another inspection";
            yield break;
        }

        foreach (var (device, seq) in receipt.Heads)
        {
            if (here.GetValueOrDefault(device) >= seq) continue;
            yield return $"receipt {receipt.N}: the office held {device} up to line {seq}, here it ends at {here.GetValueOrDefault(device)}";
            yield break;
        }

        // A held line that bears no name cannot be counted to a device, so a root over such lines proves nothing either way.
        if (set.Held.Count == 0 && Merkle.Root(set.Under(receipt.Heads).Select(entry => entry.Hash)) != receipt.Root)
            yield return $"receipt {receipt.N}: the lines are not the ones the office signed for";
    }

    /// <summary>
    /// Receipts of one office follow one another in time; where they do not, its clock was put back, and it says so itself.
    /// </summary>
    private static IEnumerable<string> Clocks(List<SignedReceipt> receipts)
    {
        foreach (var (before, after) in receipts.OrderBy(one => one.N).Zip(receipts.OrderBy(one => one.N).Skip(1)))
        {
            if (after.At < before.At && after.ClockBehind is null) yield return $"receipt {after.N} is dated before receipt {before.N}";
        }
    }

    private static string Words(EntrySet set, List<SignedReceipt> receipts, bool isTrusted, string? print)
    {
        if (receipts.MaxBy(one => one.N) is not { } last)
            return "Nobody outside this file vouches for it: none of its receipts can be read.";
        var beyond = set.Count - set.Under(last.Heads).Count;
        var clock = receipts.Find(one => one.ClockBehind is not null) is { } behind
            ? $" The office's clock had been put back when it gave receipt {behind.N} (dated {Day(behind.At)}, the one before it {behind.ClockBehind}); read its times with care."
            : "";
        var rest = beyond > 0 ? $" {beyond} lines came after it and are vouched for by the file alone." : "";
        return isTrusted
            ? $"The office of the key that was named held these lines on {Day(last.At)} (receipt {last.N}).{rest}{clock}"
            : $"Nobody outside this file vouches for it: the key its receipts are checked with lies in the file itself. Fingerprint {(print is null ? "unreadable" : Grouped(print))}; "
                + $"compare it with the one printed in the report, or give it with --key.{clock}";
    }

    private static string Day(DateTimeOffset at) =>
        at.UtcDateTime.ToString("yyyy-MM-dd HH:mm 'UTC'", System.Globalization.CultureInfo.InvariantCulture);

    private static string Grouped(string print) => Purlin.Report.Edition.Sealing.InGroups(print);
}

/// <summary>What receipts say of a record.</summary>
/// <param name="Amiss">What does not agree with them.</param>
/// <param name="Words">What a reader may take from it, one or two sentences.</param>
internal sealed record Vouched(IReadOnlyList<string> Amiss, string Words);
