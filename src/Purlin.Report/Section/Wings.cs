using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>
/// What stands beside the house in its cut, as far as there is room: the deck to the left, garage and pool to the right. The rest is
/// drawn under it.
/// </summary>
/// <param name="Deck">The deck or porch that is cut.</param>
/// <param name="Garage">The garage that is cut.</param>
/// <param name="Pool">The pool that is cut.</param>
/// <param name="Left">Where the walls begin.</param>
/// <param name="Room">How wide the house may be.</param>
/// <param name="Beside">What found no room.</param>
internal sealed record Wings(Place? Deck, Place? Garage, Place? Pool, double Left, double Room, IReadOnlyList<Place> Beside)
{
    private const double Overhang = 11;

    public static Wings Of(PlacesInCut sorted, SectionMeasures measures, IReadOnlyList<Stack> stacks)
    {
        // The house itself goes first: what crowds it into a tower stands below instead.
        foreach (var (deck, garage, pool) in ((bool, bool, bool)[])[(true, true, true), (true, true, false), (false, true, false),
            (false, false, false)])
        {
            var wings = Of(sorted, measures, deck ? First(sorted.Decks) : null, garage ? First(sorted.Garages) : null,
                pool ? First(sorted.Pools) : null);
            if (StackWidths.Fit(stacks, wings.Room, measures) || (!deck && !garage && !pool)) return wings;
        }
        throw new System.Diagnostics.UnreachableException();
    }

    private static Place? First(IReadOnlyList<Place> places) => places is [var first, ..] ? first : null;

    private static Wings Of(PlacesInCut sorted, SectionMeasures measures, Place? deck, Place? garage, Place? pool)
    {
        var left = measures.Left + Math.Max(deck is null ? 0 : measures.DeckWing, Overhang);
        var right = (garage is null ? 0 : measures.GarageWing) + (pool is null ? 0 : measures.PoolWing);
        Place?[] shown = [deck, garage, pool];
        return new Wings(deck, garage, pool, left, measures.Width - measures.Right - Math.Max(right, Overhang) - left,
            [.. sorted.Garages.Concat(sorted.Decks).Concat(sorted.Pools).Where(place => !shown.Contains(place))]);
    }
}
