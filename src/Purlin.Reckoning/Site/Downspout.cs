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
        Title = "Gutters and downspouts",
        Purpose = "Load of rain on a gutter, the gutter that carries it and the number of downspouts.",
        Inputs =
        [
            new Input.Quantity("area", "roof that drains into this gutter, seen from above", "ft²", 1, 100_000) { Required = true },
            new Input.Quantity("pitch", "rise of the roof in 12 in", "in/ft", 0, 24),
            new Input.Quantity("intensity", "heaviest five minutes of rain of the place", "in/h", 0.1, 30) { Required = true },
            new Input.Choice("gutter", "what is there", [.. Gutters.Rows.Select(row => row["gutter"])]),
            new Input.Choice("downspout", "size of the downspouts", [.. Spouts.Rows.Select(row => row["size"])]),
            new Input.Whole("count", "how many downspouts there are", 1, 50),
        ],
        Sources = [Pitches.Source, Gutters.Source, Spouts.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        foreach (var source in Calculation.Sources) sheet.From(source);
        var pitch = sheet.Or("pitch", 12, "in/ft", "the steepest usual roof, on the careful side");
        var row = Pitches.Rows.First(row => pitch <= row.Number("pitch_most") + 1e-9);
        var adjusted = sheet.Step($"Area for rain driven on the slope = area × {row.Number("factor")}", given.Number("area") * row.Number("factor"), "ft²");
        var load = sheet.Result("load", sheet.Step("Load = that area × intensity, in ft² at 1 in/h", adjusted * given.Number("intensity"), "ft²"), "ft²");
        sheet.Result("smallest_gutter", Gutters.Rows.Where(gutter => gutter.Number("capacity") >= load).MinBy(gutter => gutter.Number("capacity"))?["gutter"]);
        var open = sheet.Result("outlet", sheet.Step("Open area of downspouts = load / 1200", load / AreaPerSquareInch, "in²"), "in²");
        int? needed = null;
        if (given.TextOrNone("downspout") is { } size)
        {
            var each = Spouts.Rows.Single(spout => spout["size"] == size).Number("area_in2");
            needed = (int)Math.Ceiling(sheet.Step($"Downspouts of {size} = open area / {each:0.##} in²", open / each) - 1e-9);
        }
        sheet.Result("needed", needed);
        sheet.Caution("Downspouts should end 5 ft or more from the wall on ground that falls away, or in a pipe to 10 ft or more.");
        return Judge(sheet, given, load, needed);
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, double load, int? needed)
    {
        if (given.TextOrNone("gutter") is { } gutter)
        {
            var capacity = sheet.Result("gutter_capacity", sheet.Step($"Capacity of {gutter}", Gutters.Rows.Single(row => row["gutter"] == gutter).Number("capacity"), "ft²"), "ft²");
            if (load > capacity) return sheet.Outside($"The load of {load:0} is more than the {capacity:0} of a {gutter} gutter.");
        }
        if (given.WholeOrNone("count") is { } count && needed is { } number && count < number) return sheet.Outside($"There are {count} downspouts; {number} of this size are needed.");
        if (given.Has("gutter") && given.Has("count") && needed is not null) return sheet.Within("Gutter and downspouts carry the load.");
        if (given.Has("gutter")) return sheet.Within("The gutter carries the load; downspouts were not given.");
        return sheet.CannotSay($"No gutter was given to compare with the load of {load:0}.");
    }
}
