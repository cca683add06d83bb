namespace Purlin.Reckoning.Quantities;

/// <summary>Pounds of water vapour carried by a pound of dry air.</summary>
public readonly record struct HumidityRatio
{
    // A pound is 7,000 grains by definition.
    private readonly double poundsPerPound;

    private HumidityRatio(double poundsPerPound) => this.poundsPerPound = poundsPerPound;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static HumidityRatio FromPoundsPerPound(double value) => new(Finite.AtLeast(0, value, "lb/lb"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static HumidityRatio FromGrainsPerPound(double value) => FromPoundsPerPound(value / 7000);

    /// <summary>In lb/lb.</summary>
    public double PoundsPerPound => poundsPerPound;

    /// <summary>In gr/lb.</summary>
    public double GrainsPerPound => poundsPerPound * 7000;
}
