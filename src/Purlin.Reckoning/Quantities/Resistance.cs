namespace Purlin.Reckoning.Quantities;

/// <summary>Electrical resistance of a run of conductor.</summary>
public readonly record struct Resistance
{
    private readonly double ohms;

    private Resistance(double ohms) => this.ohms = ohms;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Resistance FromOhms(double value) => new(Finite.AtLeast(0, value, "Ω"));

    /// <summary>In Ω.</summary>
    public double Ohms => ohms;
}
