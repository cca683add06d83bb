using Purlin.Journal.Fold;

namespace Purlin.Book.Takings;

/// <summary>
/// One thing that a reckoning still lacks: a reading, a fact of a component or of the property. None of them where no single entry would
/// settle it.
/// </summary>
/// <param name="Reading">Kind of the reading that is missing.</param>
/// <param name="Fact">The fact that is missing, or is there in words that nobody knows.</param>
/// <param name="Property">The fact of the property that is missing.</param>
/// <param name="Component">Whose fact.</param>
public sealed record Lack(string? Reading, string? Fact, string? Property, Component? Component)
{
    /// <summary>The words on record that the reckoning does not know.</summary>
    public string? Given { get; init; }

    /// <summary>Words that it knows.</summary>
    public IReadOnlyList<string> Known { get; init; } = [];

    /// <summary>Whether one entry of the inspector's would settle it.</summary>
    public bool CanBeAsked => Reading is not null || Property is not null || (Fact is not null && Component is not null);

    /// <summary>Something is missing that no single entry would settle.</summary>
    public static Lack Nothing { get; } = new(null, null, null, null);

    /// <summary>These, or <see cref="Nothing"/> when there are none: that something is missing must not get lost.</summary>
    internal static IEnumerable<Lack> OrNothing(IEnumerable<Lack> lacks)
    {
        var all = lacks.ToList();
        return all.Count == 0 ? [Nothing] : all;
    }
}
