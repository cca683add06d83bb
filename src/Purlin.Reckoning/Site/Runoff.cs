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
        Inputs =
        [
            new Input.List("areas", "runoff.input.areas", [
                new Input.Quantity("area", "runoff.input.areas.area", "ft²", 1, 50_000_000) { Required = true },
                new Input.Choice("cover", "runoff.input.areas.cover", [.. Covers.Rows.Select(row => row["cover"])]),
                new Input.Quantity("coefficient", "runoff.input.areas.coefficient", "", 0.01, 1)], 1, 50) { Required = true },
            new Input.Quantity("intensity", "runoff.input.intensity", "in/h", 0.01, 30) { Required = true },
            new Input.Quantity("capacity", "runoff.input.capacity", "gpm", 0.1, 10_000_000),
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
            weighted += sheet.Step("runoff.step.c-a-of", coefficient * area.Number("area"), "ft²",
                ("cover", area.TextOrNone("cover") is { } cover ? Words.Of(cover) : "runoff.an-area"), ("coefficient", coefficient),
                ("area", area.Number("area"), "ft²"));
        }
        if (refusals.Count > 0) return Checked<Working>.Refused(refusals);
        var rain = given.Number("intensity");
        sheet.Result("coefficient", sheet.Step("runoff.step.coefficient", weighted / total));
        var cubic = sheet.Result("flow", sheet.Step("runoff.step.q-c-a", weighted * rain / SquareFeetPerCubicFootSecond, "ft³/s"), "ft³/s");
        var gallons = sheet.Result("flow_gpm", sheet.Step("runoff.step.gallons-minute", cubic * GallonsPerMinute, "gpm"), "gpm");
        sheet.Result("flow_customary", weighted / SquareFeetPerAcre * rain, "ft³/s");
        sheet.Caution("runoff.caution.method-steady-rain-small");
        return given.NumberOrNone("capacity") is not { } capacity
            ? sheet.CannotSay("runoff.because.no-capacity-given-compare", ("gallons", gallons, "gpm"))
            : gallons <= capacity
                ? sheet.Within("runoff.because.run-off-no-more", ("gallons", gallons, "gpm"), ("capacity", capacity, "gpm"))
                : sheet.Outside("runoff.because.run-off-more-can", ("gallons", gallons, "gpm"), ("capacity", capacity, "gpm"));
    }

    private static double? Coefficient(Worksheet sheet, Given area, int at, List<Refusal> refusals)
    {
        if (area.Has("cover") == area.Has("coefficient"))
        {
            refusals.Add(new Refusal($"areas[{at}].cover", area.Has("cover")
                ? new Said("runoff.given.cover-coefficient") : new Said("refused.missing"), "runoff.allowed.cover-coefficient-them"));
            return null;
        }
        if (area.NumberOrNone("coefficient") is { } own) return own;
        var row = Covers.Rows.Single(row => row["cover"] == area.Text("cover"));
        sheet.From(row.Source);
        return sheet.Step("runoff.step.coefficient-published", row.Number("typical"), "", ("cover", Words.Of(row["cover"])),
            ("low", row["low"]), ("high", row["high"]));
    }
}
