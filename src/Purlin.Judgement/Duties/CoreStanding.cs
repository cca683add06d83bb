using Purlin.Journal;

namespace Purlin.Judgement.Duties;

/// <summary>How one thing of the common core stands, for one way of closing it.</summary>
internal sealed record CoreStanding(string Core, DutyStanding State, IReadOnlyList<EntryName> Evidence, string Words)
{
    /// <summary>What it is about, to tell the parts of one duty apart.</summary>
    public string Name { get; init; } = "";

    /// <summary>Where it is still to be looked at, when some of it was.</summary>
    public IReadOnlyList<EntryName> Left { get; init; } = [];
}
