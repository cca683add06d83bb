using System.Collections.Immutable;

namespace Purlin.Reckoning.Years;

/// <summary>The reckonings of this family.</summary>
public static class YearsReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [ServiceLife.Calculation, CostHorizon.Calculation, ThenAndNow.Calculation];
}
