using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>Whether gutters and downspouts carry the heaviest minutes of rain. Advice: codes for houses seldom demand gutters.</summary>
public static class Downspout
{
    // SMACNA rule as a roofing page gives it: one square inch of downspout drains 1200 ft² at 1 in/h.
    private const double AreaPerSquareInch = 1200;

    private static readonly Table Pitches = Tables.Read("site/gutter-pitch.csv");
    private static readonly Table Gutters = Tables.Read("site/gutters.csv");
    private static readonly Table Spouts = Tables.Read("site/downspouts.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "downspout",
        Inputs =
        [
            new Input.Quantity("area", "downspout.input.area", "ft²", 1, 100_000) { Required = true },
            new Input.Quantity("pitch", "downspout.input.pitch", "in/ft", 0, 24),
            new Input.Quantity("intensity", "downspout.input.intensity", "in/h", 0.1, 30) { Required = true },
            new Input.Choice("gutter", "downspout.input.gutter", [.. Gutters.Rows.Select(row => row["gutter"])]),
            new Input.Choice("downspout", "downspout.input.downspout", [.. Spouts.Rows.Select(row => row["size"])]),
            new Input.Whole("count", "downspout.input.count", 1, 50),
        ],
        Sources = [Pitches.Source, Gutters.Source, Spouts.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        foreach (var source in Calculation.Sources) sheet.From(source);
        var pitch = sheet.Or("pitch", 12, "in/ft", "downspout.why.steepest-usual-roof-careful");
        var row = Pitches.Rows.First(row => pitch <= row.Number("pitch_most") + 1e-9);
        var adjusted = sheet.Step("downspout.step.area-rain-driven-slope", given.Number("area") * row.Number("factor"), "ft²",
            ("factor", row.Number("factor")));
        var load = sheet.Result("load", sheet.Step("downspout.step.load-area-intensity-ft", adjusted * given.Number("intensity"), "ft²"),
            "ft²");
        sheet.Result("smallest_gutter", Gutters.Rows.Where(gutter => gutter.Number("capacity") >= load)
            .MinBy(gutter => gutter.Number("capacity"))?["gutter"]);
        var open = sheet.Result("outlet", sheet.Step("downspout.step.open-area-downspouts-load", load / AreaPerSquareInch, "in²"), "in²");
        int? needed = null;
        if (given.TextOrNone("downspout") is { } size)
        {
            var each = Spouts.Rows.Single(spout => spout["size"] == size).Number("area_in2");
            needed = (int)Math.Ceiling(sheet.Step("downspout.step.downspouts-open-area", open / each, "", ("size", size),
                ("each", each, "in²")) - 1e-9);
        }
        sheet.Result("needed", needed);
        sheet.Caution("downspout.caution.downspouts-should-end-ft");
        return Judge(sheet, given, load, needed);
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, double load, int? needed)
    {
        if (given.TextOrNone("gutter") is { } gutter)
        {
            var capacity = sheet.Result("gutter_capacity",
                sheet.Step("downspout.step.capacity", Gutters.Rows.Single(row => row["gutter"] == gutter).Number("capacity"), "ft²",
                ("gutter", gutter)), "ft²");
            if (load > capacity) return sheet.Outside("downspout.because.load-more-gutter", ("load", load), ("capacity", capacity),
                ("gutter", gutter));
        }
        if (given.WholeOrNone("count") is { } count && needed is { } number && count < number)
            return sheet.Outside("downspout.because.downspouts-size-needed", ("count", count), ("number", number));
        if (given.Has("gutter") && given.Has("count") && needed is not null)
            return sheet.Within("downspout.because.gutter-downspouts-carry-load");
        if (given.Has("gutter")) return sheet.Within("downspout.because.gutter-carries-load-downspouts");
        return sheet.CannotSay("downspout.because.no-gutter-given-compare", ("load", load));
    }
}
