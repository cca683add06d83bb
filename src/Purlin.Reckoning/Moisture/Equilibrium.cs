using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Moisture;

/// <summary>
/// The moisture content that wood takes in still air: Wood Handbook (FPL-GTR-282, 2021), chapter 4, equation 4-5, with the °F
/// polynomials. The table beside it runs from 30 to 270 °F and 5 to 95 % relative humidity; the handbook holds a tenth of a percent
/// not meaningful.
/// </summary>
public static class Equilibrium
{
    /// <summary>Where it comes from, for workings.</summary>
    public const string Source = "Wood Handbook (FPL-GTR-282, 2021), chapter 4, equation 4-5";

    internal const double LeastFahrenheit = 30;
    internal const double MostFahrenheit = 270;
    internal const double LeastPercent = 5;
    internal const double MostPercent = 95;

    /// <summary>The content that wood comes to when it stays in this air.</summary>
    public static MoistureContent Of(Temperature air, RelativeHumidity humidity)
    {
        var (t, h) = (air.Fahrenheit, humidity.Share);
        var w = 330 + 0.452 * t + 0.00415 * t * t;
        var k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
        var k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
        var k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
        var (kh, kkh) = (k * h, k1 * k2 * k * k * h * h);
        return MoistureContent.FromPercent(1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * kkh) / (1 + k1 * kh + kkh)));
    }

    internal static bool IsInTable(Temperature air, RelativeHumidity humidity) =>
        air.Fahrenheit is >= LeastFahrenheit and <= MostFahrenheit && humidity.Percent is >= LeastPercent and <= MostPercent;
}
