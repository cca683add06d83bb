namespace Purlin.Reckoning.Water;

/// <summary>
/// Density of water at atmospheric pressure, 0 to 150 °C: G. S. Kell, Journal of Chemical and Engineering Data 20 (1975) 97, equation 16
/// (coefficients as repeated in NIST Journal of Research 97 (1992) 335).
/// </summary>
internal static class WaterDensity
{
    public static double KilogramsPerCubicMetre(double fahrenheit)
    {
        var t = (fahrenheit - 32) / 1.8;
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) / (1
            + 16.879850e-3 * t);
    }
}
