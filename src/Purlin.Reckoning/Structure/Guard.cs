using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>A guard against today's limits and against those of its year, which in some years differed from place to place.</summary>
public static class Guard
{
    private const double Slack = 1e-9;

    private static readonly Table Limits = Tables.Read("structure/guard.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "guard",
        Inputs =
        [
            new Input.Quantity("drop", "guard.input.drop", "in", 0, 2400),
            new Input.Flag("present", "guard.input.present"),
            new Input.Quantity("height", "guard.input.height", "in", 1, 120),
            new Input.Quantity("opening", "guard.input.opening", "in", 0, 96),
            new Input.Flag("stair", "guard.input.stair"),
            new Input.Whole("year_built", "guard.input.year-built", 1600, 2100),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        if (!given.Has("drop") && !given.Has("height") && !given.Has("opening") && !given.Has("present"))
            return new Refusal("drop", "refused.missing", "guard.allowed.drop-height-opening-guard");
        var (drop, stair) = (given.NumberOrNone("drop"), given.Flag("stair"));
        if (drop is null) sheet.Say("guard.step.drop-not-given-guard");
        if (given.Has("present") && !given.Flag("present") && (given.Has("height") || given.Has("opening")))
            return new Refusal("present", "guard.given.false", "guard.allowed.true-where-height-opening");
        var now = Judge(sheet, given, drop, stair, null);
        sheet.Result("needed_now", drop is { } down ? down > Row("drop", null).Number("strict") + Slack : null);
        sheet.Result("now", now.ToJson());
        sheet.Sentence("now.words", now.Words);
        Said sentence = new("guard.because.today", ("now", now.Words));
        if (given.WholeOrNone("year_built") is { } year)
        {
            var then = Judge(sheet, given, drop, stair, year);
            sheet.Result("then", then.ToJson());
            sheet.Sentence("then.words", then.Words);
            sentence = new("guard.because.then", ("now", now.Words), ("year", year), ("then", then.Words));
        }
        else sheet.Result("then", null);
        sheet.Caution("guard.caution.children-slip-get-stuck");
        return now.Verdict switch
        {
            "within" => sheet.Within(sentence),
            "outside" => sheet.Outside(sentence),
            _ => sheet.CannotSay(sentence),
        };
    }

    private static Judged Judge(Worksheet sheet, Given given, double? drop, bool stair, int? year)
    {
        Said when = year is { } built ? new Said("guard.when.year", ("year", built)) : "guard.when.today";
        var needed = Row("drop", year);
        sheet.From(needed.Source);
        if (drop is { } down) sheet.Step("guard.step.drop-guard-needed-above", down, "in", ("when", when),
            ("strict", needed.Number("strict"), "in"));
        if (drop <= needed.Number("strict") + Slack)
        {
            return new Judged("within", null, null, new("guard.words.no-need", ("drop", drop ?? 0, "in")));
        }
        if (given.Has("present") && !given.Flag("present"))
        {
            return needed.NumberOrNone("loose") is null
                ? new Judged("cannot say", null, null, "guard.words.unread")
                : new Judged("outside", "outside", "outside", "guard.words.none");
        }
        var height = Hold(sheet, "guard.height", given.NumberOrNone("height"), Row(stair ? "stair-height" : "height", year), when,
            (found, limit) => found >= limit - Slack);
        // A ball of exactly the size must not pass: 4 in fails where less than 4 in is asked.
        var opening = Hold(sheet, "guard.opening", given.NumberOrNone("opening"), Row(stair ? "stair-opening" : "opening", year), when,
            (found, limit) => found < limit - Slack);
        var verdict = height == "outside" || opening == "outside"
            ? "outside" : height == "within" && opening == "within" ? "within" : "cannot say";
        return new Judged(verdict, height, opening, new("guard.words.held", ("height", height), ("opening", opening)));
    }

    private static string Hold(Worksheet sheet, Said name, double? found, TableRow row, Said when, Func<double, double, bool> holds)
    {
        sheet.From(row.Source);
        // Where the codes of a year were not read, what keeps to a later limit kept to them too, and of the rest nothing is known.
        var (strict, loose) = (row.Number("strict"), row.NumberOrNone("loose"));
        Said limit = loose is not { } other ? new("guard.limit.most", ("limit", strict))
            : strict == other ? new("guard.limit.one", ("limit", strict)) : new("guard.limit.span", ("strict", strict), ("loose", other));
        if (found is not { } value)
        {
            sheet.Say("guard.step.not-measured-limit", ("name", name), ("when", when), ("limit", limit));
            return "cannot say";
        }
        sheet.Step("guard.step.limit", value, "in", ("name", name), ("when", when), ("limit", limit));
        var (first, second) = (holds(value, strict), loose is not { } known || holds(value, known));
        return first && second ? "within" : first || second ? "cannot say" : "outside";
    }

    // The row of a year; the newest where none is given.
    private static TableRow Row(string limit, int? year) => Limits.Rows.First(row => row["limit"] == limit
        && (year is not { } built || (row.NumberOrNone("from_year") is not { } from || built >= from)
        && (row.NumberOrNone("to_year") is not { } to || built <= to)));

    private sealed record Judged(string Verdict, string? Height, string? Opening, Said Words)
    {
        public JsonObject ToJson() => new() { ["verdict"] = Verdict, ["height"] = Height, ["opening"] = Opening, ["words"] = null };
    }
}
