namespace Purlin.Reckoning.Quantities;

/// <summary>Room taken by the moist air that holds one pound of dry air.</summary>
public readonly record struct SpecificVolume
{
    private readonly double cubicFeetPerPound;

    private SpecificVolume(double cubicFeetPerPound) => this.cubicFeetPerPound = cubicFeetPerPound;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static SpecificVolume FromCubicFeetPerPound(double value) => new(Finite.AtLeast(0, value, "ft³/lb"));

    /// <summary>In ft³/lb.</summary>
    public double CubicFeetPerPound => cubicFeetPerPound;
}
