using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>
/// Moist air by the equations of ASHRAE Handbook - Fundamentals 2017, chapter 1, in inch-pound form. The forms and constants were read
/// in the open psychrometric library PsychroLib 2.5.0 (commit 3066345), which carries the equation numbers.
/// Valid from -148 to 392 °F.
/// </summary>
public static class Psychrometrics
{
    /// <summary>Where it comes from, for workings.</summary>
    public const string Source = "ASHRAE Handbook - Fundamentals 2017, chapter 1, equations 3 to 35 (as carried by PsychroLib 2.5.0)";

    // Range of equations 5 and 6.
    private const double ColdestFahrenheit = -148;
    private const double WarmestFahrenheit = 392;

    // Molar mass of water over that of dry air, equation 20.
    private const double MassRatio = 0.621945;

    // Triple point of water, where equation 5 (over ice) hands over to equation 6 (over water).
    private const double TripleFahrenheit = 32.018;

    // Halvings of an interval of 540 °F until neighbouring doubles remain: a solver that cannot fail.
    private const int Halvings = 64;

    /// <summary>Saturation pressure over ice or water (equations 5 and 6).</summary>
    public static Pressure SaturationPressure(Temperature at)
    {
        var t = at.Rankine;
        var logarithm = at.Fahrenheit <= TripleFahrenheit
            ? -1.0214165e4 / t - 4.8932428 - 5.3765794e-3 * t + 1.9202377e-7 * t * t
            + 3.5575832e-10 * t * t * t - 9.0344688e-14 * t * t * t * t + 4.1635019 * Math.Log(t)
            : -1.0440397e4 / t - 1.1294650e1 - 2.7022355e-2 * t + 1.2890360e-5 * t * t - 2.4780681e-9 * t * t * t + 6.5459673 * Math.Log(t);
        return Pressure.FromPsi(Math.Exp(logarithm));
    }

    /// <summary>Humidity ratio from the vapour's own pressure (equation 20).</summary>
    public static HumidityRatio HumidityRatio(Pressure vapour, Pressure air) =>
        Quantities.HumidityRatio.FromPoundsPerPound(MassRatio * vapour.Psi / (air.Psi - vapour.Psi));

    /// <summary>The vapour's own pressure (equation 20, turned round).</summary>
    public static Pressure VapourPressure(HumidityRatio ratio, Pressure air) =>
        Pressure.FromPsi(air.Psi * ratio.PoundsPerPound / (MassRatio + ratio.PoundsPerPound));

    /// <summary>Humidity ratio of air that can hold no more.</summary>
    public static HumidityRatio SaturationRatio(Temperature at, Pressure air) => HumidityRatio(SaturationPressure(at), air);

    /// <summary>
    /// Humidity ratio in lb/lb from dry and wet bulb (equations 33 and 35); a bare number, because readings that cannot both be right
    /// give one below zero and the caller has to see that.
    /// </summary>
    public static double RatioFromWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure air)
    {
        var (dry, wet) = (dryBulb.Fahrenheit, wetBulb.Fahrenheit);
        var saturated = SaturationRatio(wetBulb, air).PoundsPerPound;
        return wet >= 32
            ? ((1093 - 0.556 * wet) * saturated - 0.240 * (dry - wet)) / (1093 + 0.444 * dry - wet)
            : ((1220 - 0.04 * wet) * saturated - 0.240 * (dry - wet)) / (1220 + 0.444 * dry - 0.48 * wet);
    }

    /// <summary>
    /// Dew point from the vapour's own pressure, by halving: exact where the handbook's short fits (equations 37, 38) are not.
    /// </summary>
    public static Temperature DewPoint(Pressure vapour)
    {
        var (low, high) = (ColdestFahrenheit, WarmestFahrenheit);
        for (var turn = 0; turn < Halvings; turn++)
        {
            var middle = (low + high) / 2;
            if (SaturationPressure(Temperature.FromFahrenheit(middle)).Psi < vapour.Psi) low = middle;
            else high = middle;
        }
        return Temperature.FromFahrenheit((low + high) / 2);
    }

    /// <summary>Wet bulb from humidity ratio: between dew point and dry bulb, by halving.</summary>
    public static Temperature WetBulb(Temperature dryBulb, HumidityRatio ratio, Pressure air)
    {
        var dew = DewPoint(VapourPressure(ratio, air));
        if (!(dew < dryBulb)) return dryBulb;
        var (low, high) = (dew.Fahrenheit, dryBulb.Fahrenheit);
        for (var turn = 0; turn < Halvings; turn++)
        {
            var middle = (low + high) / 2;
            if (RatioFromWetBulb(dryBulb, Temperature.FromFahrenheit(middle), air) < ratio.PoundsPerPound) low = middle;
            else high = middle;
        }
        return Temperature.FromFahrenheit((low + high) / 2);
    }

    /// <summary>Heat content (equation 30).</summary>
    public static SpecificEnthalpy Enthalpy(Temperature dryBulb, HumidityRatio ratio) =>
        SpecificEnthalpy.FromBtuPerPound(0.240 * dryBulb.Fahrenheit + ratio.PoundsPerPound * (1061 + 0.444 * dryBulb.Fahrenheit));

    /// <summary>
    /// Heat content in J/kg by the metric form of equation 30, whose zero is dry air at 0 °C: no mere conversion of the other.
    /// </summary>
    public static double EnthalpyJoulesPerKilogram(Temperature dryBulb, HumidityRatio ratio) =>
        1006 * dryBulb.Celsius + ratio.PoundsPerPound * (2_501_000 + 1860 * dryBulb.Celsius);

    /// <summary>The dry bulb of air with this heat content (equation 30, turned round).</summary>
    public static Temperature DryBulb(SpecificEnthalpy enthalpy, HumidityRatio ratio) =>
        Temperature.FromFahrenheit((enthalpy.BtuPerPound - 1061 * ratio.PoundsPerPound) / (0.240 + 0.444 * ratio.PoundsPerPound));

    /// <summary>Volume for each pound of dry air (equation 26).</summary>
    public static SpecificVolume Volume(Temperature dryBulb, HumidityRatio ratio, Pressure air) =>
        SpecificVolume.FromCubicFeetPerPound(53.350 * dryBulb.Rankine * (1 + 1.607858 * ratio.PoundsPerPound) / (144 * air.Psi));
}
