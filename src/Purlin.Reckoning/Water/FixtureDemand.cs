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
        Inputs =
        [
            new Input.List("fixtures", "fixture-demand.input.fixtures", [
                new Input.Choice("kind", "fixture-demand.input.fixtures.kind",
                [.. Units.Rows.Select(row => row["kind"]).Distinct()]) { Required = true },
                new Input.Whole("count", "fixture-demand.input.fixtures.count", 1, 100) { Required = true }], 1, 40) { Required = true },
            new Input.Choice("supply", "fixture-demand.input.supply", ["tank", "flush valve"]),
            new Input.Choice("service", "fixture-demand.input.service", [.. Tubes.Rows.Select(row => row["size"])]),
            new Input.Choice("curve", "fixture-demand.input.curve", ["IPC", "NSPC"]),
        ],
        Sources = [Units.Source, .. Demand.Rows.Select(row => row.Source).Distinct(), Tubes.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var supply = sheet.WordOr("supply", "tank", "fixture-demand.why.houses-tanks-flush-valves");
        var curve = sheet.WordOr("curve", supply == "tank" ? "IPC" : "NSPC", supply == "tank"
            ? new Said("fixture-demand.why.curve-belongs-these-fixture") : new Said("fixture-demand.why.curve-flush-valves-hand"));
        double cold = 0, hot = 0, total = 0;
        foreach (var fixture in given.List("fixtures"))
        {
            var row = Units.Rows.First(row => row["kind"] == fixture.Text("kind")
                && (row["supply"].Length == 0 || row["supply"] == supply));
            var count = fixture.Whole("count");
            sheet.From(row.Source);
            (cold, hot) = (cold + count * (row.NumberOrNone("cold") ?? 0), hot + count * (row.NumberOrNone("hot") ?? 0));
            total += sheet.Step("fixture-demand.step.units", count * row.Number("total"), "", ("count", count),
                ("kind", Words.Of(row["kind"])), ("total", row.Number("total")));
        }
        sheet.Result("fixture_units", sheet.Step("fixture-demand.step.fixture-units", total));
        sheet.Result("cold_units", cold);
        sheet.Result("hot_units", hot);
        sheet.Caution("fixture-demand.caution.curves-drawn-older-thirstier");
        if (curve == "NSPC") sheet.Caution("fixture-demand.caution.two-codes-count-units");
        if (Peak(sheet, curve, supply, total) is not { } peak)
        {
            sheet.Result("demand", null);
            sheet.Result("smallest_service", null);
            return sheet.CannotSay("fixture-demand.because.curve-hand-does-not", ("curve", curve), ("total", total),
                ("supply", Words.Of(supply)));
        }
        sheet.Result("demand", peak, "gpm");
        var size = Service(sheet, peak);
        sheet.Result("smallest_service", size);
        if (size is null) return sheet.CannotSay("fixture-demand.because.peak-demand-more-largest", ("peak", peak, "gpm"),
            ("fastest-feet-per-second", FastestFeetPerSecond));
        Said asked = new("fixture-demand.asked", ("units", total), ("peak", peak, "gpm"), ("size", size));
        if (given.TextOrNone("service") is not { } service)
            return sheet.CannotSay("fixture-demand.because.no-service-given-compare", ("asked", asked));
        var sizes = Tubes.Rows.Select(row => row["size"]).ToList();
        return sizes.IndexOf(service) >= sizes.IndexOf(size)
            ? sheet.Within("fixture-demand.because.service", ("asked", asked), ("service", service))
            : sheet.Outside("fixture-demand.because.service-only", ("asked", asked), ("service", service));
    }

    // Straight lines between the rows of the table, as its users draw them; none outside.
    private static double? Peak(Worksheet sheet, string curve, string supply, double units)
    {
        var rows = Demand.Rows.Where(row => row["curve"] == curve && row["supply"] == supply).OrderBy(row => row.Number("units")).ToArray();
        if (rows.Length == 0 || units < rows[0].Number("units") || units > rows[^1].Number("units")) return null;
        var above = rows.First(row => row.Number("units") >= units);
        var below = rows.Last(row => row.Number("units") <= units);
        foreach (var row in new[] { below, above }.Distinct()) sheet.From(row.Source);
        if (above == below) return sheet.Step("fixture-demand.step.peak-demand-units", above.Number("gpm"), "gpm", ("units", units));
        var share = (units - below.Number("units")) / (above.Number("units") - below.Number("units"));
        return sheet.Step("fixture-demand.step.peak-demand-straight-line", below.Number("gpm")
            + share * (above.Number("gpm") - below.Number("gpm")), "gpm", ("units", below.Number("units")), ("to", above.Number("units")));
    }

    private static string? Service(Worksheet sheet, double gallonsPerMinute)
    {
        foreach (var row in Tubes.Rows)
        {
            // 1 gal = 231 in³: ft/s = gpm·231/(60·12·π/4·d²).
            var speed = gallonsPerMinute * 231 / (60 * 12 * Math.PI / 4 * Math.Pow(row.Number("inside_in"), 2));
            if (speed > FastestFeetPerSecond) continue;
            sheet.From(row.Source);
            sheet.Result("speed", sheet.Step("fixture-demand.step.speed-copper-tube-type", speed, "ft/s", ("size", row["size"])), "ft/s");
            sheet.Caution("fixture-demand.caution.speed-alone-pressure-length");
            return row["size"];
        }
        return null;
    }
}
