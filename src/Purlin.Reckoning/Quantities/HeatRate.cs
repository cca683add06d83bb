namespace Purlin.Reckoning.Quantities;

/// <summary>Heat moved or released in an hour; negative where heat goes the other way.</summary>
public readonly record struct HeatRate
{
    // A ton of refrigeration is 12,000 Btu/h; Btu(IT) by NIST SP 811, B.8.
    private readonly double btuPerHour;

    private HeatRate(double btuPerHour) => this.btuPerHour = btuPerHour;

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static HeatRate FromBtuPerHour(double value) => new(Finite.Any(value, "Btu/h"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static HeatRate FromTons(double value) => FromBtuPerHour(value / (1.0 / 12_000));

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static HeatRate FromWatts(double value) => FromBtuPerHour(value / (1055.05585262 / 3600));

    /// <summary>In Btu/h.</summary>
    public double BtuPerHour => btuPerHour;

    /// <summary>In tons.</summary>
    public double Tons => btuPerHour * (1.0 / 12_000);

    /// <summary>In W.</summary>
    public double Watts => btuPerHour * (1055.05585262 / 3600);

    /// <summary>Both together.</summary>
    public static HeatRate operator +(HeatRate a, HeatRate b) => FromBtuPerHour(a.btuPerHour + b.btuPerHour);

    /// <summary>A share or a multiple.</summary>
    public static HeatRate operator *(double factor, HeatRate a) => FromBtuPerHour(factor * a.btuPerHour);
}
