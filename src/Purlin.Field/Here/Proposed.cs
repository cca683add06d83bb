using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Field.Visits;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Places;

namespace Purlin.Field.Here;

/// <summary>A sign that somebody may mean by what they say, and the thing it would go to.</summary>
/// <param name="Condition">The sign.</param>
/// <param name="Component">The thing on record that it goes to; none when it is not on record yet, or when one of several may be
/// meant.</param>
/// <param name="IsNew">Whether taking it puts the thing on record here.</param>
/// <param name="Where">Where it goes, in words.</param>
public sealed record Proposed(Condition Condition, EntryName? Component, bool IsNew, string Where)
{
    /// <summary>A letter or two mean nothing yet.</summary>
    private const int Least = 3;

    /// <summary>The signs that fit what was said, best first; none when nothing is like it.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="book">The rule book.</param>
    /// <param name="place">Where one stands.</param>
    /// <param name="inHand">The thing in hand, on record or only usual; none for nothing.</param>
    /// <param name="said">What was said or typed, perhaps half.</param>
    /// <param name="most">How many at most.</param>
    public static IReadOnlyList<Proposed> To(Inspection inspection, RuleBook book, Place place, PlaceThing? inHand, string said, int most)
    {
        if (said.Trim().Length < Least) return [];
        var from = Standpoint.In(inspection, place.Kind) with { Component = inHand?.Component };
        return [.. Recognised.In(book, from, said, most).Select(condition => At(inspection, place, inHand, condition))];
    }

    /// <summary>What is written when it is taken; the observation stands last.</summary>
    public IReadOnlyList<EntryBody> Taken(EntryName place)
    {
        EntryBody.ObservationMade seen = new() { Place = place, Component = Component, Condition = Condition.Id, Outcome = Outcome.Seen };
        return IsNew ? [new EntryBody.ComponentAdded { Kind = Condition.Component, Place = place },
            seen with { Component = Together.First }] : [seen];
    }

    // The thing in hand before others of its kind; of several one cannot know which is meant.
    private static Proposed At(Inspection inspection, Place place, PlaceThing? inHand, Condition condition)
    {
        if (condition.Component == "house") return new(condition, null, false, "the house");
        if (inHand?.Component == condition.Component)
            return EntryName.TryParse(inHand.Id, out var held) ? new(condition, held, false, inHand.Name)
                : new(condition, null, true, inHand.Name);
        var here = inspection.Components.Where(component => component.Place == place.Id && component.Kind == condition.Component).ToList();
        return here.Count switch
        {
            0 => new(condition, null, true, $"{condition.Component}, new here"),
            1 => new(condition, here[0].Id, false, here[0].Name ?? condition.Component),
            _ => new(condition, null, false, $"{condition.Component}, one of {here.Count}"),
        };
    }
}
