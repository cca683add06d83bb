using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>Water that runs off roofs and ground in a rain: the rational method.</summary>
public static class Runoff
{
    // One inch an hour over one square foot is 1/12 ft³ an hour: 1/43 200 ft³/s, exactly. An acre is 43 560 ft², so the customary form with
    // acres and factor 1 is 0.8 % low.
    private const double SquareFeetPerCubicFootSecond = 43_200;
    private const double SquareFeetPerAcre = 43_560;
    private const double GallonsPerMinute = 448.83116883116884;

    private static readonly Table Covers = Tables.Read("site/runoff.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "runoff",
        Title = "Rain that runs off",
        Purpose = "Flow of rain off roofs, paving and lawns by the rational method.",
        Inputs =
        [
            new Input.List("areas", "what the rain falls on", [
                new Input.Quantity("area", "area seen from above", "ft²", 1, 50_000_000) { Required = true },
                new Input.Choice("cover", "what it is", [.. Covers.Rows.Select(row => row["cover"])]),
                new Input.Quantity("coefficient", "runoff coefficient of your own instead", "", 0.01, 1)], 1, 50) { Required = true },
            new Input.Quantity("intensity", "rain of the place, from NOAA Atlas 14", "in/h", 0.01, 30) { Required = true },
            new Input.Quantity("capacity", "flow that a drain or swale can carry", "gpm", 0.1, 10_000_000),
        ],
        Sources = ["rational method Q = C·i·A, 1 in/h on 1 ft² = 1/43 200 ft³/s", Covers.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        List<Refusal> refusals = [];
        var sheet = new Worksheet(Calculation, given);
        sheet.From(Calculation.Sources[0]);
        double weighted = 0, total = 0;
        foreach (var (area, at) in given.List("areas").Select((area, at) => (area, at)))
        {
            if (Coefficient(sheet, area, at, refusals) is not { } coefficient) continue;
            total += area.Number("area");
            weighted += sheet.Step($"C·A of {area.TextOrNone("cover") ?? "an area"}: {coefficient:0.###} × {area.Number("area"):0.##} ft²", coefficient * area.Number("area"), "ft²");
        }
        if (refusals.Count > 0) return Checked<Working>.Refused(refusals);
        var rain = given.Number("intensity");
        sheet.Result("coefficient", sheet.Step("Coefficient of all = Σ C·A / Σ A", weighted / total));
        var cubic = sheet.Result("flow", sheet.Step("Q = Σ C·A × i / 43 200", weighted * rain / SquareFeetPerCubicFootSecond, "ft³/s"), "ft³/s");
        var gallons = sheet.Result("flow_gpm", sheet.Step("In gallons a minute", cubic * GallonsPerMinute, "gpm"), "gpm");
        sheet.Result("flow_customary", weighted / SquareFeetPerAcre * rain, "ft³/s");
        sheet.Caution("The method is for a steady rain on small areas. It says nothing of water that comes from next door.");
        return given.NumberOrNone("capacity") is not { } capacity
            ? sheet.CannotSay($"No capacity was given to compare; {gallons:0.#} gpm run off.")
            : gallons <= capacity
                ? sheet.Within($"{gallons:0.#} gpm run off, no more than the {capacity:0.#} gpm that can be carried.")
                : sheet.Outside($"{gallons:0.#} gpm run off, more than the {capacity:0.#} gpm that can be carried.");
    }

    private static double? Coefficient(Worksheet sheet, Given area, int at, List<Refusal> refusals)
    {
        if (area.Has("cover") == area.Has("coefficient"))
        {
            refusals.Add(new Refusal($"areas[{at}].cover", area.Has("cover") ? "cover and coefficient" : "missing", "a cover or a coefficient, one of them"));
            return null;
        }
        if (area.NumberOrNone("coefficient") is { } own) return own;
        var row = Covers.Rows.Single(row => row["cover"] == area.Text("cover"));
        sheet.From(row.Source);
        return sheet.Step($"Coefficient of {row["cover"]}, published {row["low"]} to {row["high"]}", row.Number("typical"));
    }
}
