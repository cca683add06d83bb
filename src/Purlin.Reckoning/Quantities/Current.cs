namespace Purlin.Reckoning.Quantities;

/// <summary>Electric current, or the rating of what carries or breaks it.</summary>
public readonly record struct Current
{
    private readonly double amperes;

    private Current(double amperes) => this.amperes = amperes;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Current FromAmperes(double value) => new(Finite.AtLeast(0, value, "A"));

    /// <summary>In A.</summary>
    public double Amperes => amperes;

    /// <summary>Ohm's law.</summary>
    public static Voltage operator *(Current current, Resistance resistance) => Voltage.FromVolts(current.amperes * resistance.Ohms);
}
