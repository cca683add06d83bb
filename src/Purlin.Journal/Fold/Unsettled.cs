namespace Purlin.Journal.Fold;

/// <summary>Something a person has to settle; nothing of it is lost meanwhile.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Entries">The entries concerned.</param>
/// <param name="Words">One plain sentence that says what happened and what to do.</param>
public sealed record Unsettled(UnsettledKind Kind, IReadOnlyList<EntryName> Entries, string Words);

/// <summary>Kinds of what a person has to settle.</summary>
public enum UnsettledKind
{
    /// <summary>Several values stand in one slot.</summary>
    Divergence,

    /// <summary>Places were put inside one another; the later edge is ignored.</summary>
    ParentCycle,

    /// <summary>A withdrawal without effect, because something builds on its target.</summary>
    KeepWins,

    /// <summary>Two different lines bear the same name: a copied profile; both are kept.</summary>
    Fork,

    /// <summary>A clock more than a day off; the entries stand where cause puts them.</summary>
    FarClock,

    /// <summary>A line's predecessor hash does not match; the line is kept.</summary>
    BrokenChain,
}
