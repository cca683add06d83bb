using Purlin.Journal;
using Purlin.Reckoning.Air;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Moisture;

/// <summary>A cold spot: dew, water, or only missing insulation.</summary>
internal static class SurfaceCondensation
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "surface-condensation",
        Inputs =
        [
            .. AirInputs.State,
            .. AirInputs.Place,
            new Input.Quantity("surface", "surface-condensation.input.surface", "°F", -40, 200) { Required = true },
            new Input.Choice("meter", "surface-condensation.input.meter", ["wet", "dry", "not taken"]),
        ],
        Sources = [Psychrometrics.Source, "Coating practice: a surface is kept at least 5 °F above the dew point (dew point calculation chart)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        return AirInputs.Pressure(given, sheet).Match(
            pressure => AirInputs.Read(given, pressure).Match(air => Write(given, sheet, air), refusals => Checked<Working>.Refused(refusals)),
            refusals => Checked<Working>.Refused(refusals));
    }

    private static Checked<Working> Write(Given given, Worksheet sheet, MoistAir air)
    {
        var surface = Temperature.FromFahrenheit(given.Number("surface"));
        sheet.Result("dew_point", sheet.Step("surface-condensation.step.dew-point-air", air.DewPoint.Fahrenheit, "°F"), "°F");
        var margin = sheet.Result("margin", sheet.Step("surface-condensation.step.surface-above-dew-point", (surface - air.DewPoint).Fahrenheit, "°F"), "°F");
        var humidity = 100 * air.VapourPressure.Psi / Psychrometrics.SaturationPressure(surface).Psi;
        sheet.Result("surface_humidity", sheet.Step("surface-condensation.step.relative-humidity-air-surface", Math.Min(100, humidity), "%"), "%");
        sheet.From(Psychrometrics.Source);
        var near = new RuleTable("moisture/condensation.csv", "", sheet).Value("near_dew_point");
        var meter = sheet.WordOr("meter", "not taken", "surface-condensation.why.no-reading-given");
        sheet.Caution("surface-condensation.caution.camera-shows-surface-temperature");
        sheet.Caution("surface-condensation.caution.holds-air-moment-night");
        return Judge(sheet, margin, near, meter);
    }

    private static Checked<Working> Judge(Worksheet sheet, double margin, double near, string meter)
    {
        var dew = margin <= 0;
        var (could, next) = (dew, meter) switch
        {
            (true, "dry") => ("condensation", "The surface is at or below the dew point, so dew can form though the meter finds none yet: warm the surface or dry the air, and look again in cold weather."),
            (true, "wet") => ("condensation or wetting", "The spot is wet and cold enough for dew: raise the surface above the dew point and measure again; if it stays wet, look for water from elsewhere."),
            (true, _) => ("condensation, wetting or missing insulation", "Take a moisture meter to the spot and to a dry place of the same material."),
            (false, "wet") => ("wetting", "The spot is wet and too warm for dew: look for the water's way above and behind it."),
            (false, "dry") => ("missing insulation or air leakage", "No moisture found: look for missing insulation, an air leak, a stud or a duct behind it."),
            _ => ("wetting or missing insulation", "Take a moisture meter to the spot and to a dry place of the same material."),
        };
        sheet.Result("could_be", could);
        sheet.Result("next", next);
        sheet.Say(next);
        if (meter == "wet") return sheet.Outside(dew ? new Said("surface-condensation.because.spot-wet-surface-below") : new Said("surface-condensation.because.spot-wet-surface-above"));
        if (dew) return sheet.Outside("surface-condensation.because.surface-below-dew-point", ("margin", -margin, "°F"));
        if (meter == "dry")
            return margin < near
                ? sheet.Within("surface-condensation.because.no-moisture-now-surface", ("margin", margin, "°F"))
                : sheet.Within("surface-condensation.because.no-moisture-surface-above", ("margin", margin, "°F"));
        return sheet.CannotSay("surface-condensation.because.surface-above-dew-point", ("margin", margin, "°F"));
    }
}
