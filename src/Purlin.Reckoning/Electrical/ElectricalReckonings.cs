using System.Collections.Immutable;

namespace Purlin.Reckoning.Electrical;

/// <summary>The reckonings of this family.</summary>
public static class ElectricalReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [ServiceLoad.Calculation, Conductor.Calculation, Circuit.Calculation,
        Grounding.Calculation, VoltageDrop.Calculation];
}
