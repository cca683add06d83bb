using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>Where a standard sets how many of many like things are a sample, says in which rooms or on which sides fewer were tried.</summary>
internal static class Sampling
{
    private const string Setting = "sample";
    private static readonly string[] Rooms = [PlaceKind.Kitchen, PlaceKind.Bathroom, PlaceKind.Laundry, PlaceKind.Bedroom, PlaceKind.Room, PlaceKind.Hall];

    /// <summary>The shortfall of one thing of the common core: which size, and where; none where the standard sets none or all was tried.</summary>
    public static (string Size, IReadOnlyList<string> Places)? Fewer(EvidenceIndex evidence, Standard standard, CoreDuty core, IEnumerable<Sighting> looks)
    {
        if (!core.Sample || !standard.Settings.TryGetValue(Setting, out var setting)) return null;
        var size = IsOutside(core) ? "side" : "room";
        if (!setting.Sizes.TryGetValue(size, out var least)) return null;
        var tried = looks.Where(look => look.Looked && look.Place is not null).GroupBy(look => look.Place!.Value).ToDictionary(group => group.Key, group => group.Max(look => look.Sample?.Tried ?? 1));
        List<string> lacking = [.. Kinds(core).SelectMany(evidence.PlacesOf).Where(place => tried.GetValueOrDefault(place.Id) < least).OrderBy(place => evidence.Walk(place.Id)).Select(place => place.Name)];
        return lacking.Count == 0 ? null : (size, lacking);
    }

    private static bool IsOutside(CoreDuty core) => core.Places.Count == 0 && core.System == "exterior";

    private static IEnumerable<string> Kinds(CoreDuty core) => IsOutside(core) ? [PlaceKind.Side] : core.Places.Count == 0 ? Rooms : Rooms.Where(core.Places.Contains);
}
