namespace Purlin.Reckoning.Quantities;

/// <summary>Volume of fuel gas used or carried in an hour.</summary>
public readonly record struct GasFlow
{
    private readonly double cubicFeetPerHour;

    private GasFlow(double cubicFeetPerHour) => this.cubicFeetPerHour = cubicFeetPerHour;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static GasFlow FromCubicFeetPerHour(double value) => new(Finite.AtLeast(0, value, "ft³/h"));

    /// <summary>In ft³/h.</summary>
    public double CubicFeetPerHour => cubicFeetPerHour;

    /// <summary>Both together.</summary>
    public static GasFlow operator +(GasFlow a, GasFlow b) => FromCubicFeetPerHour(a.cubicFeetPerHour + b.cubicFeetPerHour);

    /// <summary>A share or a multiple.</summary>
    public static GasFlow operator *(double factor, GasFlow a) => FromCubicFeetPerHour(factor * a.cubicFeetPerHour);
}
