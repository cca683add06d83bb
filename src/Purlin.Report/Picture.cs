using Purlin.Journal;

namespace Purlin.Report;

/// <summary>A photograph as the report shows it.</summary>
public sealed record Picture
{
    /// <summary>The entry that took it.</summary>
    public required EntryName Id { get; init; }

    /// <summary>Number in the report, in order of appearance.</summary>
    public required int Number { get; init; }

    /// <summary>Hash of its bytes.</summary>
    public required string Sha { get; init; }

    /// <summary>What to look at.</summary>
    public required string Caption { get; init; }

    /// <summary>What it shows, for those who do not see it.</summary>
    public required string Alt { get; init; }
}
