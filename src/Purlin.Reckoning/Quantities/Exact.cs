namespace Purlin.Reckoning.Quantities;

/// <summary>What arithmetic in binary leaves over: 21.6 - 18.6 is a little more than 3.</summary>
internal static class Exact
{
    /// <summary>Limits are held with this much to spare, so that a reading that is exactly at its limit is at it in every unit.</summary>
    internal const double Doubt = 1e-9;
}
