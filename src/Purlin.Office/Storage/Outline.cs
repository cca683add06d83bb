using System.Globalization;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>What lists and heads say of a journal, worked out once when it changes.</summary>
public sealed record Outline
{
    /// <summary>Address of the property.</summary>
    public required string Address { get; init; }

    /// <summary>Day of the visit, 2026-11-25; empty while unknown.</summary>
    public required string Date { get; init; }

    /// <summary>An invented inspection.</summary>
    public required bool Demo { get; init; }

    /// <summary>Hashes of the photographs that stand, each once.</summary>
    public required IReadOnlyList<string> Photos { get; init; }

    /// <summary>Sealed editions.</summary>
    public required int Editions { get; init; }

    /// <summary>Entries.</summary>
    public required int Entries { get; init; }

    /// <summary>Lines that could not be read.</summary>
    public required int Held { get; init; }

    /// <summary>Each device's last line up to which nothing is missing.</summary>
    public required IReadOnlyDictionary<string, int> Heads { get; init; }

    /// <summary>Merkle root over the hashes of all lines.</summary>
    public required string Root { get; init; }

    /// <summary>The outline of these lines, folded to this state.</summary>
    public static Outline Of(EntrySet lines, Inspection state)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(state);
        return new Outline
        {
            Address = state.Opening?.Body.Property.Address ?? "",
            Date = state.Opening?.Body.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            Demo = state.Opening?.Body.Demo ?? false,
            Photos = [.. state.Photos.Select(photo => photo.Body.Sha).Distinct(StringComparer.Ordinal)],
            Editions = state.Editions.Count,
            Entries = lines.Count,
            Held = lines.Held.Count,
            Heads = lines.Heads(),
            Root = lines.Count + lines.Held.Count == 0 ? "" : Merkle.Root([.. lines.Entries.Select(entry => entry.Hash), .. lines.Held.Select(line => line.Hash)]),
        };
    }
}
