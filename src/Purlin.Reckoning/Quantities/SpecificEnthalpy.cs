namespace Purlin.Reckoning.Quantities;

/// <summary>Heat content of moist air for each pound of dry air, counted from dry air at 0 °F as the trade's charts do.</summary>
public readonly record struct SpecificEnthalpy
{
    private readonly double btuPerPound;

    private SpecificEnthalpy(double btuPerPound) => this.btuPerPound = btuPerPound;

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static SpecificEnthalpy FromBtuPerPound(double value) => new(Finite.Any(value, "Btu/lb"));

    /// <summary>In Btu/lb.</summary>
    public double BtuPerPound => btuPerPound;
}
