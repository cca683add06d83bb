using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>Whether a joist, rafter or deck beam reaches further than the published table lets it. It looks up; it does not design.</summary>
public static class JoistSpan
{
    private const string SouthernPine = "southern pine";

    private static readonly Table Spans = Tables.Read("structure/spans.csv");
    private static readonly Table Beams = Tables.Read("structure/deck-beam.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "joist-span",
        Inputs =
        [
            new Input.Choice("member", "joist-span.input.member", [.. Spans.Rows.Select(row => row["member"]).Distinct(), "deck beam"]) { Required = true },
            new Input.Choice("species", "joist-span.input.species", [.. Spans.Rows.Select(row => row["species"]).Distinct(), "not known"]) { Required = true },
            new Input.Choice("grade", "joist-span.input.grade", ["No. 2", "other", "not known"]) { Required = true },
            new Input.Choice("size", "joist-span.input.size", [.. Spans.Rows.Select(row => row["size"]).Distinct(), .. Beams.Rows.Select(row => row["size"]).Distinct()]) { Required = true },
            new Input.Quantity("spacing", "joist-span.input.spacing", "in", 4, 48),
            new Input.Quantity("span", "joist-span.input.span", "ft", 0.5, 60),
            new Input.Quantity("live", "joist-span.input.live", "psf", 0, 200),
            new Input.Quantity("dead", "joist-span.input.dead", "psf", 0, 100),
            new Input.Quantity("joist_span", "joist-span.input.joist-span", "ft", 1, 30),
            new Input.Choice("edition", "joist-span.input.edition", ["before 2013", "from 2013"]),
        ],
        Sources = [.. Spans.Rows.Concat(Beams.Rows).Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var member = given.Text("member");
        if (member != "deck beam" && !given.Has("spacing")) return new Refusal("spacing", "refused.missing", "joist-span.allowed.distance-center");
        if (member == "deck beam" && !given.Has("joist_span")) return new Refusal("joist_span", "refused.missing", "joist-span.allowed.span-joists-beam-carries");
        if (given.Text("size").Contains('-', StringComparison.Ordinal) != (member == "deck beam")) return new Refusal("size", Said.Verbatim(given.Text("size")), member == "deck beam" ? new Said("joist-span.allowed.built-up-size-such") : new Said("joist-span.allowed.single-size-such"));
        var sheet = new Worksheet(Calculation, given);
        if (given.Text("grade") != "No. 2" || given.Text("species") == "not known") return Unknown(sheet, "joist-span.because.not-in-tables");
        var found = member == "deck beam" ? new Found(Beam(sheet, given), false, false, null) : Member(sheet, given, member);
        if (found.Row is not { } row) return Unknown(sheet, "joist-span.because.no-row");
        sheet.From(row.Source);
        var longest = sheet.Result("allowed", sheet.Step("joist-span.step.longest-span-table-no", row.Number("span_in") / 12, "ft", ("size", given.Text("size")), ("species", Words.Of(given.Text("species")))), "ft");
        sheet.Caution("joist-span.caution.table-sound-uncut-wood");
        if (given.NumberOrNone("span") is not { } span) return sheet.CannotSay("joist-span.because.no-span-given-compare", ("longest", Feet(longest)));
        sheet.Result("share", sheet.Step("joist-span.step.share-longest-span-used", span / longest));
        return Judge(sheet, found, span, longest);
    }

    /// <summary>What stands in for a row that is not there speaks one way only: the lightest load cannot clear, a heavier row cannot condemn.</summary>
    private static Checked<Working> Judge(Worksheet sheet, Found found, double span, double longest)
    {
        if (span <= longest + 1e-9)
        {
            return found.Lightest
                ? sheet.CannotSay("joist-span.because.lightest-load-clears-nothing", ("span", Feet(span)), ("longest", Feet(longest)))
                : sheet.Within("joist-span.because.spans-table-allows", ("span", Feet(span)), ("longest", Feet(longest)));
        }
        if (!found.Heavier) return sheet.Outside("joist-span.because.spans-table-allows-only", ("span", Feet(span)), ("longest", Feet(longest)));
        return found.Light?.Number("span_in") / 12 is { } most && span > most + 1e-9
            ? sheet.Outside("joist-span.because.more-than-lightest-load", ("span", Feet(span)), ("longest", Feet(most)))
            : sheet.CannotSay("joist-span.because.heavier-row-condemns-nothing", ("span", Feet(span)), ("longest", Feet(longest)));
    }

    /// <summary>The row to hold it against.</summary>
    /// <param name="Row">None where no table has it.</param>
    /// <param name="Lightest">The load is not known, and this is the lightest.</param>
    /// <param name="Heavier">The row is for a heavier load or a wider spacing than the one at hand.</param>
    /// <param name="Light">The row of the lightest load that it can have, where that is known.</param>
    private sealed record Found(TableRow? Row, bool Lightest, bool Heavier, TableRow? Light);

    private static Checked<Working> Unknown(Worksheet sheet, string because)
    {
        sheet.Say("joist-span.step.nothing-tables-hold-against");
        sheet.Result("allowed", null);
        return sheet.CannotSay(because);
    }

    private static Found Member(Worksheet sheet, Given given, string member)
    {
        var rows = Spans.Rows.Where(row => row["member"] == member && row["species"] == given.Text("species") && row["size"] == given.Text("size")).ToArray();
        if (rows.Any(row => row["edition"] != "any"))
        {
            var edition = sheet.WordOr("edition", "from 2013", "joist-span.why.newer-shorter-spans-older");
            rows = [.. rows.Where(row => row["edition"] == edition)];
        }
        if (rows.Length == 0) return new Found(null, false, false, null);
        var (live, open) = Live(sheet, given, member, rows);
        TableRow[] under = [.. rows.Where(row => row.Number("live_psf") >= live - 1e-9)];
        if (under.Length == 0) return new Found(null, false, false, null);
        var nearest = under.Min(row => row.Number("live_psf"));
        under = [.. under.Where(row => row.Number("live_psf") <= nearest + 1e-9)];
        var openDead = !given.Has("dead") && under.Select(row => row.Number("dead_psf")).Distinct().Skip(1).Any();
        var dead = sheet.Or("dead", under.Min(row => row.Number("dead_psf")), "psf", "joist-span.why.lightest-load-tables-member");
        // A heavier table, or the next wider spacing, is on the careful side; nothing is interpolated.
        var spacing = given.Number("spacing");
        var row = under.Where(row => row.Number("spacing_in") >= spacing - 1e-9 && row.Number("dead_psf") >= dead - 1e-9)
            .OrderBy(row => row.Number("dead_psf")).ThenBy(row => row.Number("spacing_in")).FirstOrDefault();
        if (row is null) return new Found(null, false, false, null);
        WriteRow(sheet, row, spacing, live, dead);
        var heaviest = open && member != "rafter";
        var heavier = heaviest || row.Number("spacing_in") > spacing + 1e-9 || row.Number("live_psf") > live + 1e-9 || row.Number("dead_psf") > dead + 1e-9;
        var light = heaviest ? rows.Where(other => Math.Abs(other.Number("spacing_in") - spacing) < 1e-9).MaxBy(other => other.Number("span_in")) : null;
        return new Found(row, (open && !heaviest) || openDead, heavier, light);
    }

    private static void WriteRow(Worksheet sheet, TableRow row, double spacing, double live, double dead)
    {
        if (row.Number("spacing_in") > spacing) sheet.Step("joist-span.step.no-row-spacing-next", row.Number("spacing_in"), "in");
        if (row.Number("live_psf") > live || row.Number("dead_psf") > dead) sheet.Say("joist-span.step.no-row-load-next", ("live-psf", row.Number("live_psf")), ("dead-psf", row.Number("dead_psf"), "psf"));
        sheet.Say("joist-span.step.live-load-dead-load", ("live-psf", row.Number("live_psf"), "psf"), ("dead-psf", row.Number("dead_psf"), "psf"), ("deflection", row.Number("deflection")));
    }

    /// <summary>The load: as given; of floors and ceilings else the heaviest that their tables know, of rafters the lightest, since snow has no upper end.</summary>
    private static (double Live, bool Open) Live(Worksheet sheet, Given given, string member, TableRow[] rows)
    {
        double[] loads = [.. rows.Select(row => row.Number("live_psf")).Distinct()];
        if (given.NumberOrNone("live") is { } known)
        {
            if (member != "rafter" || known >= loads.Min()) return (known, false);
            return (sheet.Step("joist-span.step.roof-made-for-least", loads.Min(), "psf"), false);
        }
        var live = member == "rafter"
            ? sheet.Or("live", loads.Min(), "psf", "joist-span.why.lightest-load-tables-member")
            : sheet.Or("live", loads.Max(), "psf", "joist-span.why.heaviest-load-tables-member");
        return (live, loads.Length > 1);
    }

    private static TableRow? Beam(Worksheet sheet, Given given)
    {
        // The table has southern pine by itself and all other species together.
        var species = given.Text("species") == SouthernPine ? SouthernPine : "other";
        var row = Beams.Rows.Where(row => row["species"] == species && row["size"] == given.Text("size") && row.Number("joist_span_most_ft") >= given.Number("joist_span") - 1e-9).MinBy(row => row.Number("joist_span_most_ft"));
        if (row is not null) sheet.Step("joist-span.step.row-table-joists-span", row.Number("joist_span_most_ft"), "ft");
        return row;
    }

    private static Said Feet(double feet)
    {
        var inches = (int)Math.Round(feet * 12);
        return inches % 12 == 0 ? new("length.feet", ("feet", inches / 12)) : new("length.feet-inches", ("feet", inches / 12), ("inches", inches % 12));
    }
}
