using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.House;

/// <summary>What an inspection has little room left for: told at the share of a limit that the journal names, long before it refuses.</summary>
public static class NearLimits
{
    /// <summary>In words; none while there is room.</summary>
    public static IReadOnlyList<string> Of(Inspection inspection, int entries)
    {
        List<string> near = [];
        if (Limits.IsNear(inspection.Photos.Count, Limits.Photos)) near.Add($"{inspection.Photos.Count} of {Limits.Photos} photographs: room for {Math.Max(0, Limits.Photos - inspection.Photos.Count)} more in this inspection.");
        if (Limits.IsNear(entries, Limits.Entries)) near.Add($"{entries} of {Limits.Entries} entries: room for {Math.Max(0, Limits.Entries - entries)} more in this inspection.");
        return near;
    }
}
