using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>How close the fasteners of a deck ledger must stand. Decks fall where the ledger tears from the house.</summary>
public static class DeckLedger
{
    private static readonly Table Spacings = Tables.Read("structure/ledger.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "deck-ledger",
        Title = "Deck ledger",
        Purpose = "Widest spacing of the published table for the fasteners of a deck ledger.",
        Inputs =
        [
            new Input.Choice("fastener", "what holds it", [.. Spacings.Rows.Select(row => row["fastener"]).Distinct(), "nails", "not visible"]) { Required = true },
            new Input.Quantity("joist_span", "span of the joists that hang on it", "ft", 1, 40) { Required = true },
            new Input.Quantity("spacing", "distance from one fastener to the next", "in", 1, 120),
            new Input.Quantity("live", "live load of the place", "psf", 10, 200),
            new Input.Quantity("sheathing", "thickness between ledger and band joist", "in", 0, 4),
            new Input.Flag("veneer", "the ledger is fastened to brick or stone veneer"),
        ],
        Sources = [.. Spacings.Rows.Select(row => row.Source).Distinct(), "IRC R507.9.1.1: no ledger on masonry veneer", "IRC R507.8: no nails in withdrawal; a deck whose fastening cannot be verified stands by itself"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("Keep people off a deck whose ledger is in doubt until it has been looked at.");
        var fastener = given.Text("fastener");
        if (given.Flag("veneer")) return Plain(sheet, Calculation.Sources[^2], "Veneer carries no ledger", (one, because) => one.Outside(because), "The ledger is fastened to veneer, which does not carry it.");
        if (fastener == "nails") return Plain(sheet, Calculation.Sources[^1], "Nails pull out under a deck's load", (one, because) => one.Outside(because), "Nails alone hold the ledger; they pull out.");
        if (fastener == "not visible") return Plain(sheet, Calculation.Sources[^1], "A fastening that cannot be verified counts for nothing", (one, because) => one.CannotSay(because), "How the ledger is fastened could not be verified.");
        var live = sheet.Or("live", 40, "psf", "IRC Table R301.5 for decks; some places ask for 60");
        var sheathing = sheet.Or("sheathing", 0.5, "in", "the thickness of the table");
        var span = given.Number("joist_span");
        var row = Spacings.Rows.Where(row => row["fastener"] == fastener && row.Number("live_psf") >= live - 1e-9 && row.Number("sheathing_most_in") >= sheathing - 1e-9 && row.Number("joist_span_most_ft") >= span - 1e-9)
            .OrderBy(row => row.Number("live_psf")).ThenBy(row => row.Number("sheathing_most_in")).ThenBy(row => row.Number("joist_span_most_ft")).FirstOrDefault();
        if (row is null)
        {
            sheet.Say("No row of the table holds this load, thickness and span");
            sheet.Result("allowed", null);
            return sheet.CannotSay("The published table does not reach this load, sheathing and joist span.");
        }
        return Compare(sheet, given, row, live);
    }

    private static Checked<Working> Compare(Worksheet sheet, Given given, TableRow row, double live)
    {
        sheet.From(row.Source);
        sheet.Step("Row of the table: joists that span up to", row.Number("joist_span_most_ft"), "ft");
        if (row.Number("live_psf") > live) sheet.Step("No row for this load: the next heavier one is taken", row.Number("live_psf"), "psf");
        var widest = sheet.Result("allowed", sheet.Step($"Widest spacing of {row["fastener"]}s", row.Number("spacing_in"), "in"), "in");
        sheet.Caution("Edges, rows and the tie to the floor count too: 2 in from the top edge, 3/4 in from the bottom, rows apart and staggered (IRC Table R507.9.1.3(2), from memory).");
        if (given.NumberOrNone("spacing") is not { } spacing) return sheet.CannotSay($"No spacing was given to compare; the table allows {widest:0} in.");
        return spacing <= widest + 1e-9
            ? sheet.Within($"The fasteners stand {spacing:0.#} in apart; the table allows {widest:0} in.")
            : sheet.Outside($"The fasteners stand {spacing:0.#} in apart; the table allows only {widest:0} in.");
    }

    private static Checked<Working> Plain(Worksheet sheet, string source, string step, Func<Worksheet, string, Checked<Working>> end, string because)
    {
        sheet.From(source);
        sheet.Say(step);
        sheet.Result("allowed", null);
        return end(sheet, because);
    }
}
