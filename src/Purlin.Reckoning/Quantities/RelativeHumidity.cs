namespace Purlin.Reckoning.Quantities;

/// <summary>Vapour pressure of the air as a share of the saturation pressure at its temperature.</summary>
public readonly record struct RelativeHumidity
{
    private readonly double percent;

    private RelativeHumidity(double percent) => this.percent = percent;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or outside 0 to 100 %.</exception>
    public static RelativeHumidity FromPercent(double value) => new(Finite.Between(0, 100, value, "%"));

    /// <summary>In %.</summary>
    public double Percent => percent;

    /// <summary>As a share, 0 to 1.</summary>
    public double Share => percent / 100;
}
