using System.Collections.Immutable;

namespace Purlin.Reckoning.Moisture;

/// <summary>The reckonings of this family.</summary>
public static class MoistureReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [WoodEmc.Calculation, WoodReading.Calculation,
        SurfaceCondensation.Calculation];
}
