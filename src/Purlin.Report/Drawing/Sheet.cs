using System.Collections.Immutable;

namespace Purlin.Report.Drawing;

/// <summary>A drawing as data. Two writers make the same picture of it: one for the screen, one for paper.</summary>
public sealed record Sheet
{
    /// <summary>Width in the sheet's own unit; on a screen one unit is a CSS pixel at the width the sheet was made for.</summary>
    public required double Width { get; init; }

    /// <summary>Height in the same unit.</summary>
    public required double Height { get; init; }

    /// <summary>What it shows, one line, for those who do not see it.</summary>
    public required string Title { get; init; }

    /// <summary>More words on it: what stands where.</summary>
    public string Description { get; init; } = "";

    /// <summary>What is drawn, from back to front.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>What can be tapped, in the order of a walk.</summary>
    public ImmutableArray<Target> Targets { get; init; } = [];
}

/// <summary>A part of a sheet that can be tapped.</summary>
/// <param name="Id">What it stands for; <c>dev.seq</c> of a place.</param>
/// <param name="Box">Where.</param>
/// <param name="Label">What it is and how it stands, for those who do not see it.</param>
public sealed record Target(string Id, Box Box, string Label);
