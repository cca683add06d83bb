using System.Text.Json;

namespace Purlin.Office.Sync;

/// <summary>What the office holds of an inspection.</summary>
/// <param name="Heads">Each device's last line up to which nothing is missing.</param>
/// <param name="Now">Office time.</param>
/// <param name="Held">Lines kept that could not be read.</param>
/// <param name="Receipt">The latest receipt as signed; none when nothing is held.</param>
internal sealed record HeadsAnswer(IReadOnlyDictionary<string, int> Heads, string Now, int Held, JsonElement? Receipt);

/// <summary>What became of a delivery: docs/SYNC.md, section 4.</summary>
internal sealed record PushAnswer
{
    public required IReadOnlyDictionary<string, int> Heads { get; init; }

    public required int Taken { get; init; }

    public required IReadOnlyList<HeldAnswer> Held { get; init; }

    /// <summary>Lines that were not kept at all: too long for any line, or more than can be held.</summary>
    public required IReadOnlyList<HeldAnswer> Turned { get; init; }

    public required IReadOnlyList<string> Waiting { get; init; }

    public required bool Torn { get; init; }

    public required string Now { get; init; }

    public required JsonElement? Receipt { get; init; }
}

/// <summary>A line that failed a check.</summary>
internal sealed record HeldAnswer(string? Name, string Hash, string Why);
