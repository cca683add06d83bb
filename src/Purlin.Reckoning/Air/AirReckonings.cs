using System.Collections.Immutable;

namespace Purlin.Reckoning.Air;

/// <summary>The reckonings of this family.</summary>
public static class AirReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } =
        [AirState.Calculation, TemperatureSplit.Calculation, DeliveredCapacity.Calculation, TemperatureRise.Calculation,
        CombustionAir.Calculation, GasPipe.Calculation, EquipmentMatch.Calculation, Nameplate.Calculation];
}
