using System.Collections.Immutable;

namespace Purlin.Reckoning.Water;

/// <summary>The reckonings of this family.</summary>
public static class WaterReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [WaterPressure.Calculation, ExpansionTank.Calculation,
        WaterHeaterSize.Calculation, ScaldTime.Calculation, DrainSlope.Calculation, FixtureDemand.Calculation];
}
