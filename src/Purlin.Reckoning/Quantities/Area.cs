namespace Purlin.Reckoning.Quantities;

/// <summary>Plane area.</summary>
public readonly record struct Area
{
    private readonly double squareFeet;

    private Area(double squareFeet) => this.squareFeet = squareFeet;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Area FromSquareFeet(double value) => new(Finite.AtLeast(0, value, "ft²"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Area FromSquareInches(double value) => FromSquareFeet(value / 144);

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Area FromSquareMetres(double value) => FromSquareFeet(value / (0.3048 * 0.3048));

    /// <summary>In ft².</summary>
    public double SquareFeet => squareFeet;

    /// <summary>In in².</summary>
    public double SquareInches => squareFeet * 144;

    /// <summary>In m².</summary>
    public double SquareMetres => squareFeet * (0.3048 * 0.3048);

    /// <summary>Both together.</summary>
    public static Area operator +(Area a, Area b) => FromSquareFeet(a.squareFeet + b.squareFeet);

    /// <summary>A share or a multiple.</summary>
    public static Area operator *(double factor, Area a) => FromSquareFeet(factor * a.squareFeet);
}
