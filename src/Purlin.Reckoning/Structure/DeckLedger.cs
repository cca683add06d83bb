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
        Inputs =
        [
            new Input.Choice("fastener", "deck-ledger.input.fastener",
            [.. Spacings.Rows.Select(row => row["fastener"]).Distinct(), "nails", "not visible"]) { Required = true },
            new Input.Quantity("joist_span", "deck-ledger.input.joist-span", "ft", 1, 40) { Required = true },
            new Input.Quantity("spacing", "deck-ledger.input.spacing", "in", 1, 120),
            new Input.Quantity("live", "deck-ledger.input.live", "psf", 10, 200),
            new Input.Quantity("sheathing", "deck-ledger.input.sheathing", "in", 0, 4),
            new Input.Flag("veneer", "deck-ledger.input.veneer"),
        ],
        Sources = [.. Spacings.Rows.Select(row => row.Source).Distinct(), "IRC R507.9.1.1: no ledger on masonry veneer",
            "IRC R507.8: no nails in withdrawal; a deck whose fastening cannot be verified stands by itself"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("deck-ledger.caution.keep-people-off-deck");
        var fastener = given.Text("fastener");
        if (given.Flag("veneer"))
            return Plain(sheet, Calculation.Sources[^2], "deck-ledger.step.veneer", (one, because) => one.Outside(because),
                "deck-ledger.because.veneer");
        if (fastener == "nails")
            return Plain(sheet, Calculation.Sources[^1], "deck-ledger.step.nails", (one, because) => one.Outside(because),
                "deck-ledger.because.nails");
        if (fastener == "not visible")
            return Plain(sheet, Calculation.Sources[^1], "deck-ledger.step.not-visible", (one, because) => one.CannotSay(because),
                "deck-ledger.because.not-visible");
        var live = sheet.Or("live", 40, "psf", "deck-ledger.why.irc-table-decks-some");
        var sheathing = sheet.Or("sheathing", 0.5, "in", "deck-ledger.why.thickness-table");
        var span = given.Number("joist_span");
        var row = Spacings.Rows.Where(row => row["fastener"] == fastener && row.Number("live_psf") >= live - 1e-9
            && row.Number("sheathing_most_in") >= sheathing - 1e-9 && row.Number("joist_span_most_ft") >= span - 1e-9)
            .OrderBy(row => row.Number("live_psf")).ThenBy(row => row.Number("sheathing_most_in"))
                .ThenBy(row => row.Number("joist_span_most_ft")).FirstOrDefault();
        if (row is null)
        {
            sheet.Say("deck-ledger.step.no-row-table-holds");
            sheet.Result("allowed", null);
            return sheet.CannotSay("deck-ledger.because.published-table-does-not");
        }
        return Compare(sheet, given, row, live);
    }

    private static Checked<Working> Compare(Worksheet sheet, Given given, TableRow row, double live)
    {
        sheet.From(row.Source);
        sheet.Step("deck-ledger.step.row-table-joists-span", row.Number("joist_span_most_ft"), "ft");
        if (row.Number("live_psf") > live) sheet.Step("deck-ledger.step.no-row-load-next", row.Number("live_psf"), "psf");
        var widest = sheet.Result("allowed",
            sheet.Step("deck-ledger.step.widest-spacing", row.Number("spacing_in"), "in", ("fastener", Words.Of(row["fastener"]))), "in");
        sheet.Caution("deck-ledger.caution.edges-rows-tie-floor");
        if (given.NumberOrNone("spacing") is not { } spacing)
            return sheet.CannotSay("deck-ledger.because.no-spacing-given-compare", ("widest", widest, "in"));
        return spacing <= widest + 1e-9
            ? sheet.Within("deck-ledger.because.fasteners-stand-apart-table", ("spacing", spacing, "in"), ("widest", widest, "in"))
            : sheet.Outside("deck-ledger.because.fasteners-stand-apart-table-2", ("spacing", spacing, "in"), ("widest", widest, "in"));
    }

    private static Checked<Working> Plain(Worksheet sheet, string source, string step, Func<Worksheet, string, Checked<Working>> end,
        string because)
    {
        sheet.From(source);
        sheet.Say(step);
        sheet.Result("allowed", null);
        return end(sheet, because);
    }
}
