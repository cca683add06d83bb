namespace Purlin.Reckoning.Quantities;

/// <summary>Electrical load as the code counts it; kVA counts as kW (NEC 220.54, 220.55).</summary>
public readonly record struct ApparentPower
{
    private readonly double voltAmperes;

    private ApparentPower(double voltAmperes) => this.voltAmperes = voltAmperes;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static ApparentPower FromVoltAmperes(double value) => new(Finite.AtLeast(0, value, "VA"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static ApparentPower FromKilovoltAmperes(double value) => FromVoltAmperes(value / 0.001);

    /// <summary>In VA.</summary>
    public double VoltAmperes => voltAmperes;

    /// <summary>In kVA.</summary>
    public double KilovoltAmperes => voltAmperes * 0.001;

    /// <summary>Both together.</summary>
    public static ApparentPower operator +(ApparentPower a, ApparentPower b) => FromVoltAmperes(a.voltAmperes + b.voltAmperes);

    /// <summary>A share or a multiple.</summary>
    public static ApparentPower operator *(double factor, ApparentPower a) => FromVoltAmperes(factor * a.voltAmperes);

    /// <summary>The current this load draws at a voltage.</summary>
    public static Current operator /(ApparentPower load, Voltage voltage) => Current.FromAmperes(load.voltAmperes / voltage.Volts);
}
