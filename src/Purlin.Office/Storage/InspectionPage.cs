namespace Purlin.Office.Storage;

/// <summary>Which inspections are asked for.</summary>
/// <param name="Search">Words that must all be in the address, the date or the id; none for all.</param>
/// <param name="Skip">How many to pass over.</param>
/// <param name="Count">At most so many; none for all the rest.</param>
public sealed record ListAsk(string? Search = null, int Skip = 0, int? Count = null);

/// <summary>Some of the inspections.</summary>
/// <param name="Inspections">Newest visit first.</param>
/// <param name="Total">How many the search finds in all.</param>
public sealed record InspectionPage(IReadOnlyList<Listed> Inspections, int Total);

/// <summary>What a list shows of an inspection.</summary>
public sealed record Listed
{
    /// <summary>The inspection.</summary>
    public required string Id { get; init; }

    /// <summary>Address of the property; empty while the opening has not arrived, and after erasure.</summary>
    public required string Address { get; init; }

    /// <summary>Day of the visit, 2026-11-25; empty while unknown.</summary>
    public required string Date { get; init; }

    /// <summary>An invented one.</summary>
    public required bool Demo { get; init; }

    /// <summary>Entries held.</summary>
    public required int Entries { get; init; }

    /// <summary>Lines kept that could not be read.</summary>
    public required int Held { get; init; }

    /// <summary>Photographs that stand, each once.</summary>
    public required int Photos { get; init; }

    /// <summary>Those of them that the office holds.</summary>
    public required int PhotosHere { get; init; }

    /// <summary>Sealed editions.</summary>
    public required int Editions { get; init; }

    /// <summary>When a line last arrived, office time, UTC.</summary>
    public required string LastReceived { get; init; }

    /// <summary>When it was erased after its time; none while it is kept.</summary>
    public string? Erased { get; init; }
}
