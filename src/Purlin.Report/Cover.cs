namespace Purlin.Report;

/// <summary>What the first page says.</summary>
public sealed record Cover
{
    /// <summary>Street and place.</summary>
    public required string Address { get; init; }

    /// <summary>What is known of the house in one line: built, storeys, area, foundation.</summary>
    public required string House { get; init; }

    /// <summary>The cells of the title block: client, inspector, day, weather, who was there, edition.</summary>
    public required IReadOnlyList<Part> Cells { get; init; }

    /// <summary>Said on every page: that data is invented, that this is a working copy; empty otherwise.</summary>
    public required IReadOnlyList<string> Marks { get; init; }

    /// <summary>The root of the record in groups; empty for a working copy.</summary>
    public string Seal { get; init; } = "";
}
