using System.Text.Json;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Bench;

/// <summary>
/// Fold of 10,000 entries, and reading them from their lines, beside the least that any reader must do: parse each line as JSON.
/// </summary>
internal static class FoldBench
{
    private const int Entries = 10_000;

    public static void Run(Results results)
    {
        var entries = Histories.Of(Entries);
        var lines = entries.Select(entry => entry.Line).ToList();
        void Parse()
        {
            foreach (var line in lines) using (JsonDocument.Parse(line)) { }
        }
        results.Pair($"fold {Entries} entries", () => Folding.Fold(entries), "parse the same lines as plain JSON", Parse);
        results.Pair($"read, check and fold {Entries} lines", () => Folding.Fold([.. lines.Select(line => EntryLine.Read(line).OrThrow())]),
            "parse the same lines as plain JSON", Parse);
    }
}
