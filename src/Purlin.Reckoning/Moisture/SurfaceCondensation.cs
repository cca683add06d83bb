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
        Title = "Moisture: cold surface",
        Purpose = "Whether a cold spot can be dew, water or only missing insulation, and what to do next.",
        Inputs =
        [
            .. AirInputs.State,
            .. AirInputs.Place,
            new Input.Quantity("surface", "Temperature of the surface", "°F", -40, 200) { Required = true },
            new Input.Choice("meter", "What a moisture meter says at the spot, against a dry place of the same material", ["wet", "dry", "not taken"]),
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
        sheet.Result("dew_point", sheet.Step("Dew point of the air", air.DewPoint.Fahrenheit, "°F"), "°F");
        var margin = sheet.Result("margin", sheet.Step("Surface above the dew point", (surface - air.DewPoint).Fahrenheit, "°F"), "°F");
        var humidity = 100 * air.VapourPressure.Psi / Psychrometrics.SaturationPressure(surface).Psi;
        sheet.Result("surface_humidity", sheet.Step("Relative humidity of the air at the surface, at most 100", Math.Min(100, humidity), "%"), "%");
        sheet.From(Psychrometrics.Source);
        var near = new RuleTable("moisture/condensation.csv", "", sheet).Value("near_dew_point");
        var meter = sheet.WordOr("meter", "not taken", "no reading was given");
        sheet.Caution("A camera shows surface temperature only; evaporation, ducts, studs, drafts and missing insulation look alike in it.");
        sheet.Caution("It holds for the air of this moment; at night, in winter or with more people the same spot can be wet.");
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
        if (meter == "wet") return sheet.Outside(dew ? "The spot is wet, and the surface is at or below the dew point: dew alone can explain it." : "The spot is wet, and the surface is above the dew point: dew does not explain it.");
        if (dew) return sheet.Outside($"The surface is {-margin:0.0} °F below the dew point or at it: water can condense on it now.");
        if (meter == "dry")
            return margin < near
                ? sheet.Within($"No moisture now, but the surface is only {margin:0.0} °F above the dew point; a little more humidity brings dew.")
                : sheet.Within($"No moisture, and the surface is {margin:0.0} °F above the dew point: a cold spot of another cause.");
        return sheet.CannotSay($"The surface is {margin:0.0} °F above the dew point, so it is not dew; without a meter it can be water or only missing insulation.");
    }
}
