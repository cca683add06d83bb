using System.Collections.Immutable;

namespace Purlin.Reckoning.Structure;

/// <summary>The reckonings of this family.</summary>
public static class StructureReckonings
{
    /// <summary>In the order of the documents.</summary>
    public static ImmutableArray<Calculation> All { get; } = [Floor.FloorSurvey.Calculation, Crack.Calculation, Stairs.Calculation, Guard.Calculation, JoistSpan.Calculation, DeckLedger.Calculation, EscapeOpening.Calculation];
}
