using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>A state of moist air: temperature, humidity ratio and pressure fix all the rest.</summary>
public sealed record MoistAir
{
    // Nothing in a house is drier than this; below it the solvers leave the range of the equations.
    private const double DriestDewPointFahrenheit = -100;

    private MoistAir(Temperature dryBulb, HumidityRatio ratio, Pressure pressure)
    {
        DryBulb = dryBulb;
        Ratio = ratio;
        Pressure = pressure;
    }

    /// <summary>Dry-bulb temperature.</summary>
    public Temperature DryBulb { get; }

    /// <summary>Water carried.</summary>
    public HumidityRatio Ratio { get; }

    /// <summary>Absolute pressure of the air.</summary>
    public Pressure Pressure { get; }

    /// <summary>From two thermometers; refused when the wet one is warmer, or so cold that the air would hold less than no water.</summary>
    public static Checked<MoistAir> FromWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure, string input = "wet_bulb")
    {
        if (wetBulb > dryBulb) return AboveDryBulb(input, wetBulb, dryBulb);
        var driest = Psychrometrics.SaturationRatio(Temperature.FromFahrenheit(DriestDewPointFahrenheit), pressure).PoundsPerPound;
        var ratio = Psychrometrics.RatioFromWetBulb(dryBulb, wetBulb, pressure);
        if (ratio >= driest) return new MoistAir(dryBulb, HumidityRatio.FromPoundsPerPound(ratio), pressure);
        var least = Psychrometrics.WetBulb(dryBulb, HumidityRatio.FromPoundsPerPound(driest), pressure);
        return new Refusal(input, new("refused.given.hundredth", ("given", wetBulb.Fahrenheit, "°F")),
            new("moist-air.allowed.least-dry-bulb-below", ("least", least.Fahrenheit, "°F"), ("dry-bulb", dryBulb.Fahrenheit, "°F")));
    }

    /// <summary>From a hygrometer.</summary>
    public static Checked<MoistAir> FromRelativeHumidity(Temperature dryBulb, RelativeHumidity humidity, Pressure pressure,
        string input = "relative_humidity") =>
        FromVapour(dryBulb, Pressure.FromPsi(humidity.Share * Psychrometrics.SaturationPressure(dryBulb).Psi), pressure, input,
        new("refused.given.hundredth", ("given", humidity.Percent, "%")));

    /// <summary>From the temperature at which dew forms; refused when that is above the dry bulb.</summary>
    public static Checked<MoistAir> FromDewPoint(Temperature dryBulb, Temperature dewPoint, Pressure pressure,
        string input = "dew_point") =>
        dewPoint > dryBulb ? AboveDryBulb(input, dewPoint, dryBulb)
        : FromVapour(dryBulb, Psychrometrics.SaturationPressure(dewPoint), pressure, input,
        new("refused.given.hundredth", ("given", dewPoint.Fahrenheit, "°F")));

    /// <summary>The vapour's own pressure.</summary>
    public Pressure VapourPressure => Psychrometrics.VapourPressure(Ratio, Pressure);

    /// <summary>Relative humidity.</summary>
    public RelativeHumidity RelativeHumidity =>
        RelativeHumidity.FromPercent(Math.Min(100, 100 * VapourPressure.Psi / Psychrometrics.SaturationPressure(DryBulb).Psi));

    /// <summary>The temperature at which dew forms.</summary>
    public Temperature DewPoint => Psychrometrics.DewPoint(VapourPressure);

    /// <summary>The temperature a wet wick takes.</summary>
    public Temperature WetBulb => Psychrometrics.WetBulb(DryBulb, Ratio, Pressure);

    /// <summary>Heat content.</summary>
    public SpecificEnthalpy Enthalpy => Psychrometrics.Enthalpy(DryBulb, Ratio);

    /// <summary>Volume for each pound of dry air.</summary>
    public SpecificVolume Volume => Psychrometrics.Volume(DryBulb, Ratio, Pressure);

    /// <summary>Mass of the moist air in a cubic foot, lb/ft³ (equation 11).</summary>
    public double DensityPoundsPerCubicFoot => (1 + Ratio.PoundsPerPound) / Volume.CubicFeetPerPound;

    private static Checked<MoistAir> FromVapour(Temperature dryBulb, Pressure vapour, Pressure pressure, string input, Said given) =>
        vapour.Psi < pressure.Psi / 2
            ? new MoistAir(dryBulb, Psychrometrics.HumidityRatio(vapour, pressure), pressure)
            : new Refusal(input, given,
                new("moist-air.allowed.vapor-pressure-below-half", ("pressure", pressure.Psi, "psi"),
                ("dry-bulb", dryBulb.Fahrenheit, "°F")));

    private static Refusal AboveDryBulb(string input, Temperature given, Temperature dryBulb) =>
        new(input, new("refused.given.hundredth", ("given", given.Fahrenheit, "°F")),
        new("moist-air.allowed.most-dry-bulb", ("dry-bulb", dryBulb.Fahrenheit, "°F")));
}
