using Purlin.Journal;

namespace Purlin.Judgement.Looking;

/// <summary>What to look at first in one place.</summary>
/// <param name="Id">The place; none for a place that the house is expected to have and that nobody has added yet.</param>
/// <param name="Kind">Kind of place.</param>
/// <param name="Name">Its name.</param>
/// <param name="Looks">The looks, first ones first.</param>
public sealed record PlaceLooks(EntryName? Id, string Kind, string Name, IReadOnlyList<RankedLook> Looks);

/// <summary>One condition to look for, with its place in the order.</summary>
/// <param name="Condition">Id of the condition.</param>
/// <param name="Component">Kind of component.</param>
/// <param name="Rank">1 for the first.</param>
/// <param name="Because">Why it stands there, in words, the strongest reason first.</param>
public sealed record RankedLook(string Condition, string Component, int Rank, IReadOnlyList<string> Because);
