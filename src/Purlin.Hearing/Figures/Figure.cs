namespace Purlin.Hearing.Figures;

/// <summary>A number that was said, with its unit where one was said.</summary>
/// <param name="Start">First piece.</param>
/// <param name="End">The piece after the last, the unit's included.</param>
/// <param name="Value">In that unit; a length in inches.</param>
/// <param name="Unit">One of <see cref="SpokenUnits"/>; none for a bare number.</param>
internal readonly record struct Figure(int Start, int End, double Value, string? Unit)
{
    /// <summary>A whole number that may be a year of a house or of a thing in it.</summary>
    public bool MayBeYear => Unit is null && Value is >= 1880 and <= 2060 && Value % 1 == 0;
}
