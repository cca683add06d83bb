namespace Purlin.Report;

/// <summary>A chapter after the matters.</summary>
/// <param name="Id">Address inside the report.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Lead">One or two sentences that say what it is for.</param>
/// <param name="Blocks">What it holds.</param>
public sealed record Chapter(string Id, string Title, string Lead, IReadOnlyList<Block> Blocks);
