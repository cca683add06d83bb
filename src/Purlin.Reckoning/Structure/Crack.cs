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
        Title = "Crack",
        Purpose = "Class of a crack by width, what it is likely to mean and who should look at it.",
        Inputs =
        [
            new Input.Choice("material", "what is cracked", ["poured wall", "block wall", "brick veneer", "slab", "drywall", "plaster", "stucco", "chimney", "pier"]) { Required = true },
            new Input.Quantity("width", "width at its widest", "in", 0, 24) { Required = true },
            new Input.Quantity("offset", "step from one side to the other", "in", 0, 12),
            new Input.Choice("direction", "how it runs", ["vertical", "horizontal", "diagonal", "stair-step"]),
            new Input.Choice("pattern", "what marks it", ["wider at one end", "matching pair", "ends and middle", "single", "corner of opening", "ceiling joint", "near a corner", "at a lintel", "separation", "map"]),
            new Input.Choice("active", "whether it moves: fresh edges, a patch that opened again", ["yes", "no", "not known"]),
        ],
        Sources = [Classes.Source, .. Meanings.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var (width, material) = (given.Number("width"), given.Text("material"));
        var category = Class(sheet, material, width);
        var active = sheet.WordOr("active", "not known", "one visit seldom shows whether a crack moves");
        var row = Meanings.Rows.Where(row => Fits(row, given, width)).OrderByDescending(Closeness).FirstOrDefault();
        sheet.Result("likely_meaning", row?["meaning"]);
        sheet.Result("structural", row?["structural"]);
        sheet.Result("look_for", row?["look_for"]);
        sheet.Result("recommendation", row?["recommendation"]);
        sheet.Caution("A likely meaning is no diagnosis. Cause shows in the whole: levels, doors, drainage, soil.");
        if (row is not null)
        {
            sheet.From(row.Source);
            sheet.Say($"{Capital(material)} with such a crack: likely {row["meaning"]}; look for {row["look_for"]}");
        }
        return Judge(sheet, given, row, category, active);
    }

    private static int Class(Worksheet sheet, string material, double width)
    {
        var millimetres = sheet.Step("Width", width * MillimetresPerInch, "mm");
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
        sheet.Result("class_words", row["words"]);
        sheet.Step($"Class by width: {row["words"]}", row.Number("category"));
        return (int)row.Number("category");
    }

    private static bool Fits(TableRow row, Given given, double width) =>
        Match(row["material"], given.Text("material")) && Match(row["direction"], given.TextOrNone("direction")) && Match(row["pattern"], given.TextOrNone("pattern"))
        && (row.NumberOrNone("width_most_in") is not { } most || width <= most) && (row.NumberOrNone("width_over_in") is not { } over || width > over);

    private static bool Match(string cell, string? given) => cell.Length == 0 || cell == given;

    // A pattern tells more than a direction, a direction more than a width.
    private static int Closeness(TableRow row) =>
        (row["pattern"].Length > 0 ? 4 : 0) + (row["direction"].Length > 0 ? 2 : 0) + (row["width_most_in"].Length + row["width_over_in"].Length > 0 ? 1 : 0);

    private static Checked<Working> Judge(Worksheet sheet, Given given, TableRow? row, int category, string active)
    {
        if (category >= Limit(sheet, "engineer-category")) return sheet.Outside($"It is wide enough for class {category}; a structural engineer should look at it.");
        if (given.Text("material") != "slab" && given.Number("width") > Limit(sheet, "engineer-width")) return sheet.Outside($"It is wider than {Limit(sheet, "engineer-width"):0.##} in; a structural engineer should look at it.");
        var step = Limit(sheet, given.Text("material") == "slab" ? "slab-step" : "wall-step");
        if (given.NumberOrNone("offset") is { } offset && offset > step) return sheet.Outside($"Its two sides stand {offset:0.###} in apart, more than {step:0.###} in; one side has moved.");
        if (row is null) return sheet.CannotSay("No published meaning fits this crack; its pattern and its direction would help.");
        if (row["structural"] == "yes") return sheet.Outside($"Likely cause: {row["meaning"]}. {row["recommendation"]}");
        if (active == "yes") return sheet.Outside("It moves; a structural engineer should find out why.");
        return row["structural"] == "no"
            ? sheet.Within($"Likely cause: {row["meaning"]}, which is seldom structural. {row["recommendation"]}")
            : sheet.CannotSay($"Likely cause: {row["meaning"]}; the crack alone does not decide. {row["recommendation"]}");
    }

    private static double Limit(Worksheet sheet, string name)
    {
        var row = Limits.Rows.Single(row => row["limit"] == name);
        sheet.From(row.Source);
        return row.Number("value");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
