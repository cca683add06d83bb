namespace Purlin.Book.Looking;

/// <summary>Conditions that only a thing of a certain material or kind can show: a vinyl wall has no worn mortar.</summary>
public sealed record Fit
{
    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>Name of the fact that tells, <c>material</c> or <c>fuel</c>.</summary>
    public required string Fact { get; init; }

    /// <summary>The fact holds one of these words.</summary>
    public required IReadOnlyList<string> Words { get; init; }

    /// <summary>The conditions.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>Whether a fact with this text lets the conditions be.</summary>
    public bool Holds(string text) => Words.Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
