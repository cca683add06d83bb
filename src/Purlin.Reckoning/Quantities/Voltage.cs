namespace Purlin.Reckoning.Quantities;

/// <summary>Electric potential difference.</summary>
public readonly record struct Voltage
{
    private readonly double volts;

    private Voltage(double volts) => this.volts = volts;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Voltage FromVolts(double value) => new(Finite.AtLeast(0, value, "V"));

    /// <summary>In V.</summary>
    public double Volts => volts;
}
