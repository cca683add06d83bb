using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>Whether a joist, rafter or deck beam reaches further than the published table lets it. It looks up; it does not design.</summary>
public static class JoistSpan
{
    private static readonly Table Spans = Tables.Read("structure/spans.csv");
    private static readonly Table Beams = Tables.Read("structure/deck-beam.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "joist-span",
        Title = "Span of joists, rafters and deck beams",
        Purpose = "Longest span of the published table for a member, and whether the one at hand keeps within it.",
        Inputs =
        [
            new Input.Choice("member", "what spans", [.. Spans.Rows.Select(row => row["member"]).Distinct(), "deck beam"]) { Required = true },
            new Input.Choice("species", "kind of wood", [.. Spans.Rows.Select(row => row["species"]).Distinct(), "not known"]) { Required = true },
            new Input.Choice("grade", "stamp on the wood", ["No. 2", "other", "not known"]) { Required = true },
            new Input.Choice("size", "nominal size", [.. Spans.Rows.Select(row => row["size"]).Distinct(), .. Beams.Rows.Select(row => row["size"]).Distinct()]) { Required = true },
            new Input.Quantity("spacing", "distance from one to the next, on centre", "in", 4, 48),
            new Input.Quantity("span", "clear reach between supports; of a rafter the horizontal one", "ft", 0.5, 60),
            new Input.Quantity("live", "live load or snow", "psf", 0, 200),
            new Input.Quantity("dead", "dead load", "psf", 0, 100),
            new Input.Quantity("joist_span", "span of the joists that a deck beam carries", "ft", 1, 30),
            new Input.Choice("edition", "for southern pine, whose values fell on 1 June 2013", ["before 2013", "from 2013"]),
        ],
        Sources = [.. Spans.Rows.Select(row => row.Source).Distinct(), Beams.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var member = given.Text("member");
        if (member != "deck beam" && !given.Has("spacing")) return new Refusal("spacing", "missing", "the distance on centre");
        if (member == "deck beam" && !given.Has("joist_span")) return new Refusal("joist_span", "missing", "the span of the joists that the beam carries");
        if (given.Text("size").Contains('-', StringComparison.Ordinal) != (member == "deck beam")) return new Refusal("size", given.Text("size"), member == "deck beam" ? "a built-up size such as 2-2x10" : "a single size such as 2x10");
        var sheet = new Worksheet(Calculation, given);
        if (given.Text("grade") != "No. 2" || given.Text("species") == "not known") return Unknown(sheet, "Its species and grade are not known to be in the tables, so its span could not be verified.");
        var row = member == "deck beam" ? Beam(sheet, given) : Member(sheet, given, member);
        if (row is null) return Unknown(sheet, "No published row at hand fits this species, size, spacing and load.");
        sheet.From(row.Source);
        var longest = sheet.Result("allowed", sheet.Step($"Longest span of the table for {given.Text("size")}, {given.Text("species")} No. 2", row.Number("span_in") / 12, "ft"), "ft");
        sheet.Caution("The table is for sound, uncut wood of full depth with proper bearings. Notches, holes, rot and point loads are judged apart.");
        if (given.NumberOrNone("span") is not { } span) return sheet.CannotSay($"No span was given to compare; the table allows {Feet(longest)}.");
        sheet.Result("share", sheet.Step("Share of the longest span that is used", span / longest));
        return span <= longest + 1e-9
            ? sheet.Within($"It spans {Feet(span)}; the table allows {Feet(longest)}.")
            : sheet.Outside($"It spans {Feet(span)}; the table allows only {Feet(longest)}.");
    }

    private static Checked<Working> Unknown(Worksheet sheet, string because)
    {
        sheet.Say("Nothing in the tables to hold it against");
        sheet.Result("allowed", null);
        return sheet.CannotSay(because);
    }

    private static TableRow? Member(Worksheet sheet, Given given, string member)
    {
        var rows = Spans.Rows.Where(row => row["member"] == member && row["species"] == given.Text("species") && row["size"] == given.Text("size")).ToArray();
        if (rows.Any(row => row["edition"] != "any"))
        {
            var edition = sheet.WordOr("edition", "from 2013", "the newer and shorter spans; an older house was built by longer ones");
            rows = [.. rows.Where(row => row["edition"] == edition)];
        }
        if (rows.Length == 0) return null;
        var live = sheet.Or("live", rows.Min(row => row.Number("live_psf")), "psf", "the lightest load of the tables for this member");
        var dead = sheet.Or("dead", rows.Min(row => row.Number("dead_psf")), "psf", "the lightest load of the tables for this member");
        // A heavier table, or the next wider spacing, is on the careful side; nothing is interpolated.
        var spacing = given.Number("spacing");
        var row = rows.Where(row => row.Number("spacing_in") >= spacing - 1e-9 && row.Number("live_psf") >= live - 1e-9 && row.Number("dead_psf") >= dead - 1e-9)
            .OrderBy(row => row.Number("live_psf")).ThenBy(row => row.Number("dead_psf")).ThenBy(row => row.Number("spacing_in")).FirstOrDefault();
        if (row is null) return null;
        if (row.Number("spacing_in") > spacing) sheet.Step("No row for this spacing: the next wider one is taken", row.Number("spacing_in"), "in");
        if (row.Number("live_psf") > live || row.Number("dead_psf") > dead) sheet.Say($"No row for this load: the next heavier one is taken, {row.Number("live_psf"):0} + {row.Number("dead_psf"):0} psf");
        sheet.Say($"Live load {row.Number("live_psf"):0} psf, dead load {row.Number("dead_psf"):0} psf, bend at most 1/{row.Number("deflection"):0}");
        return row;
    }

    private static TableRow? Beam(Worksheet sheet, Given given)
    {
        if (given.Text("species") != "southern pine") return null;
        var row = Beams.Rows.Where(row => row["size"] == given.Text("size") && row.Number("joist_span_most_ft") >= given.Number("joist_span") - 1e-9).MinBy(row => row.Number("joist_span_most_ft"));
        if (row is not null) sheet.Step("Row of the table: joists that span up to", row.Number("joist_span_most_ft"), "ft");
        return row;
    }

    private static string Feet(double feet)
    {
        var inches = (int)Math.Round(feet * 12);
        return inches % 12 == 0 ? $"{inches / 12} ft" : $"{inches / 12} ft {inches % 12} in";
    }
}
