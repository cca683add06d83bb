using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>
/// Works out how far a condition spreads. Seen wins over clear in the same place: a clear look at one spot does not undo harm at another.
/// Counts lift to several places, never to throughout, so that more evidence of harm never makes a matter smaller.
/// </summary>
internal static class Spreading
{
    private const int PlacesForThroughout = 3;

    public static Spread Of(IEnumerable<Sighting> looks)
    {
        HashSet<EntryName> seen = [];
        HashSet<EntryName> clear = [];
        var failed = 0;
        foreach (var look in looks)
        {
            if (look.IsSeen) failed += look.Sample?.Failed ?? 0;
            if (look.Place is not { } place) continue;
            if (look.IsSeen) seen.Add(place);
            else if (look.Looked) clear.Add(place);
        }
        clear.ExceptWith(seen);
        if (seen.Count >= PlacesForThroughout && clear.Count == 0) return Spread.Throughout;
        return seen.Count > 1 || failed > 1 ? Spread.SeveralPlaces : Spread.OnePlace;
    }
}
