using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>What is in the air of a room or duct, from two readings.</summary>
internal static class AirState
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "air-state",
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
        sheet.Step("air-state.step.saturation-pressure-dry-bulb", Psychrometrics.SaturationPressure(air.DryBulb).Psi, "psi");
        sheet.Step("air-state.step.vapor-pressure-water-air", air.VapourPressure.Psi, "psi");
        sheet.Result("humidity_ratio", sheet.Step("air-state.step.humidity-ratio-vapor-pressure", air.Ratio.PoundsPerPound, "lb/lb"),
            "lb/lb");
        sheet.Result("humidity_ratio_grains", air.Ratio.GrainsPerPound, "gr/lb");
        sheet.Result("relative_humidity", sheet.Step("air-state.step.relative-humidity-vapor-pressure", air.RelativeHumidity.Percent, "%"),
            "%");
        sheet.Result("dew_point", sheet.Step("air-state.step.dew-point-temperature-saturation", air.DewPoint.Fahrenheit, "°F"), "°F");
        sheet.Result("wet_bulb", sheet.Step("air-state.step.wet-bulb-temperature-wet", air.WetBulb.Fahrenheit, "°F"), "°F");
        sheet.Result("enthalpy", sheet.Step("air-state.step.enthalpy-dry-air", air.Enthalpy.BtuPerPound, "Btu/lb"), "Btu/lb");
        sheet.Result("enthalpy_si", Psychrometrics.EnthalpyJoulesPerKilogram(air.DryBulb, air.Ratio) / 1000, "kJ/kg");
        sheet.Result("specific_volume", sheet.Step("air-state.step.specific-volume-pound-dry", air.Volume.CubicFeetPerPound, "ft³/lb"),
            "ft³/lb");
        sheet.Result("density", sheet.Step("air-state.step.density-moist-air", air.DensityPoundsPerCubicFoot, "lb/ft³"), "lb/ft³");
        sheet.Result("pressure", air.Pressure.Psi, "psi");
        sheet.Caution("air-state.caution.computed-readings-alone-hand");
        return sheet.Within("air-state.because.air-relative-humidity-dew", ("dry-bulb", air.DryBulb.Fahrenheit, "°F"),
            ("relative-humidity", air.RelativeHumidity.Percent, "%"), ("dew-point", air.DewPoint.Fahrenheit, "°F"));
    }
}
