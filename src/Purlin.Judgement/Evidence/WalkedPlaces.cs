using Purlin.Journal;

namespace Purlin.Judgement.Evidence;

/// <summary>Places in the order of the walk, and the same to look one up in.</summary>
internal sealed class WalkedPlaces(List<EntryName> inOrder)
{
    public List<EntryName> InOrder { get; } = inOrder;

    public HashSet<EntryName> Set { get; } = [.. inOrder];
}
