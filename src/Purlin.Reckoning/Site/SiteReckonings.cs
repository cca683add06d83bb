using System.Collections.Immutable;

namespace Purlin.Reckoning.Site;

/// <summary>The reckonings of this family.</summary>
public static class SiteReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [Grade.Calculation, Runoff.Calculation, Downspout.Calculation,
        Roof.Calculation, AtticVentilation.Calculation, Insulation.Calculation];
}
