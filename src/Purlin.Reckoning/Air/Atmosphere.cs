using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>
/// The standard atmosphere: pressure and temperature by height (ASHRAE Handbook - Fundamentals 2017, chapter 1, equations 3 and 4).
/// </summary>
public static class Atmosphere
{
    /// <summary>
    /// Pressure at a height above the sea. The metric form of equation 3, because its 101,325 Pa is the definition of the standard
    /// atmosphere; the inch-pound form starts from the rounded 14.696 psi.
    /// </summary>
    public static Pressure Pressure(Length altitude) =>
        Quantities.Pressure.FromPascals(101_325 * Math.Pow(1 - 2.25577e-5 * altitude.Millimetres / 1000, 5.2559));

    /// <summary>Temperature at a height above the sea (equation 4): a mean of the world, no forecast.</summary>
    public static Temperature Temperature(Length altitude) => Quantities.Temperature.FromFahrenheit(59 - 0.00356620 * altitude.Feet);
}
