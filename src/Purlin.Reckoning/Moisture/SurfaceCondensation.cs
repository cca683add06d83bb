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
        Sources = [Psychrometrics.Source,
            "Coating practice: a surface is kept at least 5 °F above the dew point (dew point calculation chart)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        return AirInputs.Pressure(given, sheet).Match(
            pressure => AirInputs.Read(given, pressure)
            .Match(air => Write(given, sheet, air), refusals => Checked<Working>.Refused(refusals)),
            refusals => Checked<Working>.Refused(refusals));
    }

    private static Checked<Working> Write(Given given, Worksheet sheet, MoistAir air)
    {
        var surface = Temperature.FromFahrenheit(given.Number("surface"));
        sheet.Result("dew_point", sheet.Step("surface-condensation.step.dew-point-air", air.DewPoint.Fahrenheit, "°F"), "°F");
        var margin = sheet.Result("margin",
            sheet.Step("surface-condensation.step.surface-above-dew-point", (surface - air.DewPoint).Fahrenheit, "°F"), "°F");
        var humidity = 100 * air.VapourPressure.Psi / Psychrometrics.SaturationPressure(surface).Psi;
        sheet.Result("surface_humidity",
            sheet.Step("surface-condensation.step.relative-humidity-air-surface", Math.Min(100, humidity), "%"), "%");
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
            (true, "dry") => ("condensation", "surface-condensation.next.dew-dry"),
            (true, "wet") => ("condensation or wetting", "surface-condensation.next.dew-wet"),
            (true, _) => ("condensation, wetting or missing insulation", "surface-condensation.next.meter"),
            (false, "wet") => ("wetting", "surface-condensation.next.wet"),
            (false, "dry") => ("missing insulation or air leakage", "surface-condensation.next.dry"),
            _ => ("wetting or missing insulation", "surface-condensation.next.meter"),
        };
        sheet.Sentence("could_be", Words.Of(could));
        sheet.Sentence("next", next);
        sheet.Say(next);
        if (meter == "wet") return sheet.Outside(dew ? new Said("surface-condensation.because.spot-wet-surface-below")
            : new Said("surface-condensation.because.spot-wet-surface-above"));
        if (dew) return sheet.Outside("surface-condensation.because.surface-below-dew-point", ("margin", -margin, "°F"));
        if (meter == "dry")
            return margin < near
                ? sheet.Within("surface-condensation.because.no-moisture-now-surface", ("margin", margin, "°F"))
                : sheet.Within("surface-condensation.because.no-moisture-surface-above", ("margin", margin, "°F"));
        return sheet.CannotSay("surface-condensation.because.surface-above-dew-point", ("margin", margin, "°F"));
    }
}
