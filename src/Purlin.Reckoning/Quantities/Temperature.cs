namespace Purlin.Reckoning.Quantities;

/// <summary>How warm something is. Not a difference: see <see cref="TemperatureDifference"/>.</summary>
public readonly record struct Temperature
{
    // Absolute zero in °F; 0 K by NIST SP 811 (2008) B.8.
    private const double AbsoluteZero = -459.67;
    private readonly double fahrenheit;

    private Temperature(double fahrenheit) => this.fahrenheit = fahrenheit;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or below absolute zero.</exception>
    public static Temperature FromFahrenheit(double value) => new(Finite.AtLeast(AbsoluteZero, value, "°F"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or below absolute zero.</exception>
    public static Temperature FromCelsius(double value) => FromFahrenheit(value * 1.8 + 32);

    /// <summary>In °F.</summary>
    public double Fahrenheit => fahrenheit;

    /// <summary>In °C.</summary>
    public double Celsius => (fahrenheit - 32) / 1.8;

    /// <summary>Absolute, in °R.</summary>
    public double Rankine => fahrenheit - AbsoluteZero;

    /// <summary>How much warmer the first is.</summary>
    public static TemperatureDifference operator -(Temperature a, Temperature b) =>
        TemperatureDifference.FromFahrenheit(a.fahrenheit - b.fahrenheit);

    /// <summary>Whether the first is warmer.</summary>
    public static bool operator >(Temperature a, Temperature b) => a.fahrenheit > b.fahrenheit;

    /// <summary>Whether the first is colder.</summary>
    public static bool operator <(Temperature a, Temperature b) => a.fahrenheit < b.fahrenheit;
}
