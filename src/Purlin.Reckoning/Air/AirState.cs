using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>What is in the air of a room or duct, from two readings.</summary>
internal static class AirState
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "air-state",
        Title = "Air: state from two readings",
        Purpose = "Dew point, humidity and heat content of air from its temperature and one humidity reading.",
        Inputs = [.. AirInputs.State, .. AirInputs.Place],
        Sources = [Psychrometrics.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        return AirInputs.Pressure(given, sheet).Match(
            pressure => AirInputs.Read(given, pressure).Match(air => Write(sheet, air), refusals => Checked<Working>.Refused(refusals)),
            refusals => Checked<Working>.Refused(refusals));
    }

    private static Checked<Working> Write(Worksheet sheet, MoistAir air)
    {
        sheet.Step("Saturation pressure at the dry bulb", Psychrometrics.SaturationPressure(air.DryBulb).Psi, "psi");
        sheet.Step("Vapour pressure of the water in the air", air.VapourPressure.Psi, "psi");
        sheet.Result("humidity_ratio", sheet.Step("Humidity ratio: 0.621945 × vapour pressure / (air pressure - vapour pressure)", air.Ratio.PoundsPerPound, "lb/lb"), "lb/lb");
        sheet.Result("humidity_ratio_grains", air.Ratio.GrainsPerPound, "gr/lb");
        sheet.Result("relative_humidity", sheet.Step("Relative humidity: vapour pressure / saturation pressure", air.RelativeHumidity.Percent, "%"), "%");
        sheet.Result("dew_point", sheet.Step("Dew point: the temperature with that saturation pressure", air.DewPoint.Fahrenheit, "°F"), "°F");
        sheet.Result("wet_bulb", sheet.Step("Wet bulb: the temperature at which a wet wick gives that humidity ratio", air.WetBulb.Fahrenheit, "°F"), "°F");
        sheet.Result("enthalpy", sheet.Step("Enthalpy, from dry air at 0 °F: 0.240 t + W (1061 + 0.444 t)", air.Enthalpy.BtuPerPound, "Btu/lb"), "Btu/lb");
        sheet.Result("enthalpy_si", Psychrometrics.EnthalpyJoulesPerKilogram(air.DryBulb, air.Ratio) / 1000, "kJ/kg");
        sheet.Result("specific_volume", sheet.Step("Specific volume, for each pound of dry air", air.Volume.CubicFeetPerPound, "ft³/lb"), "ft³/lb");
        sheet.Result("density", sheet.Step("Density of the moist air", air.DensityPoundsPerCubicFoot, "lb/ft³"), "lb/ft³");
        sheet.Result("pressure", air.Pressure.Psi, "psi");
        sheet.Caution("Computed from the readings alone: a hand hygrometer may be 3 to 5 % off, which moves the dew point by 2 to 3 °F (common practice).");
        return sheet.Within($"Air at {air.DryBulb.Fahrenheit:0.#} °F and {air.RelativeHumidity.Percent:0} % relative humidity has its dew point at {air.DewPoint.Fahrenheit:0.#} °F.");
    }
}
