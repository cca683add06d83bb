using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>Water that the fixtures of a house may ask for at once, by fixture units, and the smallest tube that carries it.</summary>
public static class FixtureDemand
{
    // Copper Development Association, Copper Tube Handbook: cold water no faster than 8 ft/s.
    private const double FastestFeetPerSecond = 8;

    private static readonly Table Units = Tables.Read("water/fixture-units.csv");
    private static readonly Table Demand = Tables.Read("water/demand.csv");
    private static readonly Table Tubes = Tables.Read("water/service-tube.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "fixture-demand",
        Title = "Water: demand of the fixtures",
        Purpose = "Fixture units, peak demand and the smallest service for the fixtures of a house.",
        Inputs =
        [
            new Input.List("fixtures", "what draws water", [
                new Input.Choice("kind", "kind of fixture", [.. Units.Rows.Select(row => row["kind"]).Distinct()]) { Required = true },
                new Input.Whole("count", "how many", 1, 100) { Required = true }], 1, 40) { Required = true },
            new Input.Choice("supply", "how the toilets flush", ["tank", "flush valve"]),
            new Input.Choice("service", "size of the service that is there", [.. Tubes.Rows.Select(row => row["size"])]),
            new Input.Choice("curve", "which code's curve of demand", ["IPC", "NSPC"]),
        ],
        Sources = [Units.Source, .. Demand.Rows.Select(row => row.Source).Distinct(), Tubes.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var supply = sheet.WordOr("supply", "tank", "houses have tanks; flush valves are for larger buildings");
        var curve = sheet.WordOr("curve", supply == "tank" ? "IPC" : "NSPC", supply == "tank" ? "the curve that belongs to these fixture units" : "the curve for flush valves that is at hand");
        double cold = 0, hot = 0, total = 0;
        foreach (var fixture in given.List("fixtures"))
        {
            var row = Units.Rows.First(row => row["kind"] == fixture.Text("kind") && (row["supply"].Length == 0 || row["supply"] == supply));
            var count = fixture.Whole("count");
            sheet.From(row.Source);
            (cold, hot) = (cold + count * (row.NumberOrNone("cold") ?? 0), hot + count * (row.NumberOrNone("hot") ?? 0));
            total += sheet.Step($"{count} × {row["kind"]} at {row.Number("total")} units", count * row.Number("total"));
        }
        sheet.Result("fixture_units", sheet.Step("Fixture units in all", total));
        sheet.Result("cold_units", cold);
        sheet.Result("hot_units", hot);
        sheet.Caution("The curves were drawn for older, thirstier fixtures. They size pipes; they do not foretell a water bill.");
        if (curve == "NSPC") sheet.Caution("The two codes count units and demand by curves of their own. Here units of one meet the curve of the other.");
        if (Peak(sheet, curve, supply, total) is not { } peak)
        {
            sheet.Result("demand", null);
            sheet.Result("smallest_service", null);
            return sheet.CannotSay($"The {curve} curve that is at hand does not reach {total:0.#} fixture units for {supply} supply.");
        }
        sheet.Result("demand", peak, "gpm");
        var size = Service(sheet, peak);
        sheet.Result("smallest_service", size);
        if (size is null) return sheet.CannotSay($"Peak demand is {peak:0.#} gpm, more than the largest tube of the table carries at {FastestFeetPerSecond:0} ft/s.");
        var asked = $"{total:0.#} fixture units ask for {peak:0.#} gpm at most, for which {size} tube is the smallest by speed";
        if (given.TextOrNone("service") is not { } service) return sheet.CannotSay($"{asked}; no service was given to compare.");
        var sizes = Tubes.Rows.Select(row => row["size"]).ToList();
        return sizes.IndexOf(service) >= sizes.IndexOf(size) ? sheet.Within($"{asked}; the service is {service}.") : sheet.Outside($"{asked}; the service is only {service}.");
    }

    // Straight lines between the rows of the table, as its users draw them; none outside.
    private static double? Peak(Worksheet sheet, string curve, string supply, double units)
    {
        var rows = Demand.Rows.Where(row => row["curve"] == curve && row["supply"] == supply).OrderBy(row => row.Number("units")).ToArray();
        if (rows.Length == 0 || units < rows[0].Number("units") || units > rows[^1].Number("units")) return null;
        var above = rows.First(row => row.Number("units") >= units);
        var below = rows.Last(row => row.Number("units") <= units);
        foreach (var row in new[] { below, above }.Distinct()) sheet.From(row.Source);
        if (above == below) return sheet.Step($"Peak demand at {units:0.##} units", above.Number("gpm"), "gpm");
        var share = (units - below.Number("units")) / (above.Number("units") - below.Number("units"));
        return sheet.Step($"Peak demand, on a straight line between {below.Number("units"):0} and {above.Number("units"):0} units", below.Number("gpm") + share * (above.Number("gpm") - below.Number("gpm")), "gpm");
    }

    private static string? Service(Worksheet sheet, double gallonsPerMinute)
    {
        foreach (var row in Tubes.Rows)
        {
            // 1 gal = 231 in³: ft/s = gpm·231/(60·12·π/4·d²).
            var speed = gallonsPerMinute * 231 / (60 * 12 * Math.PI / 4 * Math.Pow(row.Number("inside_in"), 2));
            if (speed > FastestFeetPerSecond) continue;
            sheet.From(row.Source);
            sheet.Result("speed", sheet.Step($"Speed in {row["size"]} copper tube, type L", speed, "ft/s"), "ft/s");
            sheet.Caution("By speed alone. Pressure, length and height decide too, and the code's own tables size a service.");
            return row["size"];
        }
        return null;
    }
}
