using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>Something that stands in the way of issue, each solved in place.</summary>
public abstract record Obstacle
{
    private Obstacle() { }

    /// <summary>A word for programs that tells the kinds apart; it stays the same whatever the kind is called in the code.</summary>
    public abstract string Kind { get; }

    /// <summary>What is the matter and what to do, one plain sentence.</summary>
    public required string Words { get; init; }

    /// <summary>Where it can be solved.</summary>
    public EntryName? Place { get; init; }

    /// <summary>A loose end that its rule does not let pass.</summary>
    /// <param name="LooseEnd">Its id.</param>
    public sealed record LooseEndOpen(LooseEndId LooseEnd) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "LooseEndOpen";
    }

    /// <summary>A duty that nothing closes.</summary>
    /// <param name="Duty">Its id.</param>
    public sealed record DutyOpen(DutyId Duty) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "DutyOpen";
    }

    /// <summary>A duty around the visit that must be closed before issue.</summary>
    /// <param name="Duty">Its id, <c>core:V-01</c>.</param>
    public sealed record VisitOpen(DutyId Duty) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "VisitOpen";
    }

    /// <summary>A photograph nobody has spoken for.</summary>
    /// <param name="Photo">The photograph.</param>
    public sealed record PhotoUnspoken(EntryName Photo) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "PhotoUnspoken";
    }

    /// <summary>A note or sound note of which nobody has said what becomes of it.</summary>
    /// <param name="Note">The note, by the entry that first wrote it, or the sound.</param>
    public sealed record NoteUnspoken(EntryName Note) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "NoteUnspoken";
    }

    /// <summary>A limitation without cause or next step.</summary>
    /// <param name="Limitation">The limitation.</param>
    /// <param name="Missing"><c>cause</c>, <c>next</c> or <c>cause and next</c>.</param>
    public sealed record LimitationIncomplete(EntryName Limitation, string Missing) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "LimitationIncomplete";
    }

    /// <summary>Something two devices or a clock left unsettled.</summary>
    /// <param name="Entries">The entries concerned.</param>
    public sealed record Unsettled(IReadOnlyList<EntryName> Entries) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "Unsettled";
    }

    /// <summary>A place from which nothing is on record: neither a look nor why there was none.</summary>
    public sealed record PlaceUnvisited : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "PlaceUnvisited";
    }

    /// <summary>Something on record that was not understood, so that what it says may be lost.</summary>
    /// <param name="Again">Its id.</param>
    public sealed record NotUnderstood(string Again) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "NotUnderstood";
    }

    /// <summary>Entries that a newer program wrote.</summary>
    /// <param name="Count">How many.</param>
    public sealed record UnknownEntries(int Count) : Obstacle
    {
        /// <inheritdoc/>
        public override string Kind => "UnknownEntries";
    }
}
