namespace Purlin.Hearing.Matters;

/// <summary>A thing that was named.</summary>
/// <param name="Start">First piece of its name.</param>
/// <param name="End">The piece after the last.</param>
/// <param name="Components">Kinds of component it may be.</param>
/// <param name="IsSpot">Whether it only says where: "behind the water heater".</param>
internal readonly record struct Thing(int Start, int End, int[] Components, bool IsSpot);
