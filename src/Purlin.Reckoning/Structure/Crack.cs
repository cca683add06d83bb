using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>What a crack is likely to mean, from what it is in, how it runs and how wide it is. A crack alone seldom decides.</summary>
public static class Crack
{
    private const double MillimetresPerInch = 25.4;

    private static readonly Table Meanings = Tables.Read("structure/cracks.csv");
    private static readonly Table Classes = Tables.Read("structure/crack-classes.csv");
    private static readonly Table Limits = Tables.Read("structure/crack-limits.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "crack",
        Inputs =
        [
            new Input.Choice("material", "crack.input.material",
            ["poured wall", "block wall", "brick veneer", "slab", "drywall", "plaster", "stucco", "chimney", "pier"]) { Required = true },
            new Input.Quantity("width", "crack.input.width", "in", 0, 24) { Required = true },
            new Input.Quantity("offset", "crack.input.offset", "in", 0, 12),
            new Input.Choice("direction", "crack.input.direction", ["vertical", "horizontal", "diagonal", "stair-step"]),
            new Input.Choice("pattern", "crack.input.pattern",
                ["wider at one end", "matching pair", "ends and middle", "single", "corner of opening", "ceiling joint", "near a corner",
                "at a lintel", "separation", "map"]),
            new Input.Choice("active", "crack.input.active", ["yes", "no", "not known"]),
        ],
        Sources = [Classes.Source, .. Meanings.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var (width, material) = (given.Number("width"), given.Text("material"));
        var category = Class(sheet, material, width);
        var active = sheet.WordOr("active", "not known", "crack.why.visit-seldom-shows-whether");
        var row = Meanings.Rows.Where(row => Fits(row, given, width)).OrderByDescending(Closeness).FirstOrDefault();
        Write(sheet, "likely_meaning", row?.Words("meaning"));
        sheet.Result("structural", row?["structural"]);
        Write(sheet, "look_for", row?.Words("look_for"));
        Write(sheet, "recommendation", row?.Words("recommendation"));
        sheet.Caution("crack.caution.likely-meaning-no-diagnosis");
        if (row is not null)
        {
            sheet.From(row.Source);
            sheet.Say("crack.step.such-crack-likely-look", ("material", Words.Of(material)), ("meaning", row.Words("meaning")),
                ("look-for", row.Words("look_for")));
        }
        return Judge(sheet, given, row, category, active);
    }

    private static int Class(Worksheet sheet, string material, double width)
    {
        var millimetres = sheet.Step("crack.step.width", width * MillimetresPerInch, "mm");
        sheet.Result("width", width, "in");
        // The digest classes damage to walls; a slab or a pier has no such class.
        if (material is "slab" or "pier")
        {
            sheet.Result("class", null);
            return 0;
        }
        var row = Classes.Rows.First(row => row.NumberOrNone("millimetres_most") is not { } most || millimetres <= most + 1e-9);
        sheet.From(row.Source);
        sheet.Result("class", (int)row.Number("category"));
        sheet.Sentence("class_words", row.Words("words"));
        sheet.Step("crack.step.class-width", row.Number("category"), "", ("words", row.Words("words")));
        return (int)row.Number("category");
    }

    private static bool Fits(TableRow row, Given given, double width) =>
        Match(row["material"], given.Text("material")) && Match(row["direction"], given.TextOrNone("direction"))
        && Match(row["pattern"], given.TextOrNone("pattern"))
        && (row.NumberOrNone("width_most_in") is not { } most || width <= most)
            && (row.NumberOrNone("width_over_in") is not { } over || width > over);

    private static bool Match(string cell, string? given) => cell.Length == 0 || cell == given;

    // A pattern tells more than a direction, a direction more than a width.
    private static int Closeness(TableRow row) =>
        (row["pattern"].Length > 0 ? 4 : 0) + (row["direction"].Length > 0 ? 2 : 0)
        + (row["width_most_in"].Length + row["width_over_in"].Length > 0 ? 1 : 0);

    private static Checked<Working> Judge(Worksheet sheet, Given given, TableRow? row, int category, string active)
    {
        if (category >= Limit(sheet, "engineer-category"))
            return sheet.Outside("crack.because.wide-enough-class-structural", ("category", category));
        if (given.Text("material") != "slab" && given.Number("width") > Limit(sheet, "engineer-width"))
            return sheet.Outside("crack.because.wider-structural-engineer-should", ("widest", Limit(sheet, "engineer-width"), "in"));
        var step = Limit(sheet, given.Text("material") == "slab" ? "slab-step" : "wall-step");
        if (given.NumberOrNone("offset") is { } offset && offset > step)
            return sheet.Outside("crack.because.two-sides-stand-apart", ("offset", offset, "in"), ("step", step, "in"));
        if (row is null) return sheet.CannotSay("crack.because.no-published-meaning-fits");
        if (row["structural"] == "yes")
            return sheet.Outside("crack.because.likely-cause", ("meaning", row.Words("meaning")),
                ("recommendation", row.Words("recommendation")));
        if (active == "yes") return sheet.Outside("crack.because.moves-structural-engineer-should");
        return row["structural"] == "no"
            ? sheet.Within("crack.because.likely-cause-seldom-structural", ("meaning", row.Words("meaning")),
            ("recommendation", row.Words("recommendation")))
            : sheet.CannotSay("crack.because.likely-cause-crack-alone", ("meaning", row.Words("meaning")),
                ("recommendation", row.Words("recommendation")));
    }

    private static double Limit(Worksheet sheet, string name)
    {
        var row = Limits.Rows.Single(row => row["limit"] == name);
        sheet.From(row.Source);
        return row.Number("value");
    }

    private static void Write(Worksheet sheet, string name, Said? said)
    {
        if (said is null) sheet.NoResult(name);
        else sheet.Sentence(name, said);
    }
}
