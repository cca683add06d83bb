namespace Purlin.Journal;

/// <summary>
/// A number and its unit exactly as they were written. The Journal converts nothing: evidence is never rounded by us,
/// and dimension and conversion belong to Reckoning.
/// </summary>
/// <param name="Value">Finite.</param>
/// <param name="Unit">As the trade writes it: °F, psi, in, V, A, %, cfm. Empty for a count.</param>
public readonly record struct Amount(double Value, string Unit)
{
    /// <inheritdoc/>
    public override string ToString() => Unit.Length == 0 ? $"{Value:0.####}" : $"{Value:0.####} {Unit}";
}
