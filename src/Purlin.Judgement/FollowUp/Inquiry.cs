using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.FollowUp;

/// <summary>A follow-on question of one matter, with the looks that opened it.</summary>
/// <param name="Id">Condition and question, with the component where those are told apart.</param>
/// <param name="Condition">The condition that asks.</param>
/// <param name="Follow">What it asks.</param>
/// <param name="Openers">The looks that opened it.</param>
/// <param name="Opening">The same for people and for looking up.</param>
internal sealed record Inquiry(LooseEndId Id, Condition Condition, Follow Follow, IReadOnlyList<Sighting> Openers, OpenedBy Opening)
{
    /// <summary>Whether it asks for more of the same, elsewhere.</summary>
    public bool AsksForTheSame => Follow.Answers.Contains(Condition.Id);
}

/// <summary>What opened all questions of one matter.</summary>
/// <param name="Because">In words.</param>
/// <param name="Entries">The entries.</param>
/// <param name="Places">Where.</param>
internal sealed record OpenedBy(string Because, IReadOnlyList<EntryName> Entries, HashSet<EntryName> Places);
