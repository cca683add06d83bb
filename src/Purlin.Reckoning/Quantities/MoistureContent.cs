namespace Purlin.Reckoning.Quantities;

/// <summary>Mass of water in wood as a share of the wood's oven-dry mass; green wood can hold more than 100 %.</summary>
public readonly record struct MoistureContent
{
    private readonly double percent;

    private MoistureContent(double percent) => this.percent = percent;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static MoistureContent FromPercent(double value) => new(Finite.AtLeast(0, value, "%"));

    /// <summary>In % of oven-dry mass.</summary>
    public double Percent => percent;
}
