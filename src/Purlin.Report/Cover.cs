namespace Purlin.Report;

/// <summary>Whose house, for whom, by whom, when.</summary>
public sealed record Cover
{
    /// <summary>Street and place.</summary>
    public required string Address { get; init; }

    /// <summary>What is known of the house in one line: built, stories, area, foundation.</summary>
    public required string House { get; init; }

    /// <summary>Client, inspector, day, weather, who was there, edition, contact, license.</summary>
    public required IReadOnlyList<CoverCell> Cells { get; init; }

    /// <summary>Said on every page: that data is invented, that this is a working copy; empty otherwise.</summary>
    public required IReadOnlyList<string> Marks { get; init; }

    /// <summary>The root of the record in groups; empty for a working copy.</summary>
    public string Seal { get; init; } = "";

    /// <summary>When the last line of the record was written, or the edition sealed.</summary>
    public required string Made { get; init; }

    /// <summary>What a cell says; empty when it was not recorded.</summary>
    public string Say(CellKind kind) => Cells.FirstOrDefault(cell => cell.Kind == kind)?.Text ?? "";
}

/// <summary>One cell of the title block.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Label">The same in words.</param>
/// <param name="Text">What is said.</param>
public sealed record CoverCell(CellKind Kind, string Label, string Text);

/// <summary>What a cell of the title block is about.</summary>
public enum CellKind
{
    /// <summary>For whom.</summary>
    Client,

    /// <summary>By whom, with the license.</summary>
    Inspector,

    /// <summary>How the inspector is reached.</summary>
    Contact,

    /// <summary>Day and hours of the visit.</summary>
    Day,

    /// <summary>Weather.</summary>
    Weather,

    /// <summary>Who was there.</summary>
    Present,

    /// <summary>Working copy or edition.</summary>
    Issue,
}
