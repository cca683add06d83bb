namespace Purlin.Reckoning.Quantities;

/// <summary>Length, depth, width or height.</summary>
public readonly record struct Length
{
    // The inch is 25.4 mm by definition.
    private readonly double inches;

    private Length(double inches) => this.inches = inches;

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Length FromInches(double value) => new(Finite.Any(value, "in"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Length FromFeet(double value) => FromInches(value / (1.0 / 12));

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Length FromMillimetres(double value) => FromInches(value / 25.4);

    /// <summary>In in.</summary>
    public double Inches => inches;

    /// <summary>In ft.</summary>
    public double Feet => inches * (1.0 / 12);

    /// <summary>In mm.</summary>
    public double Millimetres => inches * 25.4;

    /// <summary>Both together.</summary>
    public static Length operator +(Length a, Length b) => FromInches(a.inches + b.inches);

    /// <summary>A share or a multiple.</summary>
    public static Length operator *(double factor, Length a) => FromInches(factor * a.inches);
}
