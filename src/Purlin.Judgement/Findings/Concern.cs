using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>All looks for one condition (on one component, where those are told apart), before it is weighed and written.</summary>
internal sealed record Concern
{
    /// <summary>Name of the finding it becomes.</summary>
    public required FindingId Id { get; init; }

    public required Condition Condition { get; init; }

    /// <summary>Every look, seen or clear or not visible.</summary>
    public required IReadOnlyList<Sighting> Looks { get; init; }

    public IReadOnlyList<Sighting> Seen => field ??= [.. Looks.Where(look => look.IsSeen)];

    public Spread Spread => Spreading.Of(Looks);

    /// <summary>Distinct places where it was seen, in the order of the evidence.</summary>
    public IReadOnlyList<EntryName> Places => field ??= [.. Seen.Where(look => look.Place is not null).Select(look => look.Place!.Value).Distinct()];

    public IReadOnlyList<EntryName> Entries => field ??= [.. Seen.SelectMany(look => look.Entries).Distinct()];
}
