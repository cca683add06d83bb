namespace Purlin.Reckoning.Quantities;

/// <summary>How much warmer one thing is than another; negative when it is colder. It has no zero point to shift.</summary>
public readonly record struct TemperatureDifference
{
    private readonly double fahrenheit;

    private TemperatureDifference(double fahrenheit) => this.fahrenheit = fahrenheit;

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static TemperatureDifference FromFahrenheit(double value) => new(Finite.Any(value, "°F"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static TemperatureDifference FromCelsius(double value) => FromFahrenheit(value * 1.8);

    /// <summary>In °F.</summary>
    public double Fahrenheit => fahrenheit;

    /// <summary>In °C.</summary>
    public double Celsius => fahrenheit / 1.8;
}
