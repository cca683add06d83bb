namespace Purlin.Reckoning.Quantities;

/// <summary>Room or tank volume.</summary>
public readonly record struct Volume
{
    // The US gallon is 231 in³ by definition.
    private readonly double cubicFeet;

    private Volume(double cubicFeet) => this.cubicFeet = cubicFeet;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Volume FromCubicFeet(double value) => new(Finite.AtLeast(0, value, "ft³"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Volume FromGallons(double value) => FromCubicFeet(value / (1728.0 / 231));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Volume FromCubicMetres(double value) => FromCubicFeet(value / (0.3048 * 0.3048 * 0.3048));

    /// <summary>In ft³.</summary>
    public double CubicFeet => cubicFeet;

    /// <summary>In gal.</summary>
    public double Gallons => cubicFeet * (1728.0 / 231);

    /// <summary>In m³.</summary>
    public double CubicMetres => cubicFeet * (0.3048 * 0.3048 * 0.3048);

    /// <summary>Both together.</summary>
    public static Volume operator +(Volume a, Volume b) => FromCubicFeet(a.cubicFeet + b.cubicFeet);

    /// <summary>A share or a multiple.</summary>
    public static Volume operator *(double factor, Volume a) => FromCubicFeet(factor * a.cubicFeet);
}
