namespace Purlin.Report.Page;

/// <summary>A photograph as the page carries it.</summary>
/// <param name="Source">A data address.</param>
/// <param name="Width">Pixels across, as it is seen.</param>
/// <param name="Height">Pixels down, as it is seen.</param>
public sealed record PageImage(string Source, int Width, int Height);
