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
        Title = "Guard",
        Purpose = "Whether a guard is needed, high enough and closed enough, then and now.",
        Inputs =
        [
            new Input.Quantity("drop", "how far down it is within 36 in of the edge", "in", 0, 2400),
            new Input.Flag("present", "there is a guard"),
            new Input.Quantity("height", "height of the guard", "in", 1, 120),
            new Input.Quantity("opening", "the largest ball that passes through", "in", 0, 96),
            new Input.Flag("stair", "it stands beside a stair"),
            new Input.Whole("year_built", "year it was built", 1600, 2100),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        if (!given.Has("drop") && !given.Has("height") && !given.Has("opening") && !given.Has("present")) return new Refusal("drop", "missing", "the drop, or the height or opening of a guard that is there");
        var (drop, stair) = (given.NumberOrNone("drop"), given.Flag("stair"));
        if (drop is null) sheet.Say("Drop not given: a guard is taken to be needed");
        if (given.Has("present") && !given.Flag("present") && (given.Has("height") || given.Has("opening"))) return new Refusal("present", "false", "true where a height or an opening was measured");
        var now = Judge(sheet, given, drop, stair, null);
        sheet.Result("needed_now", drop is { } down ? down > Row("drop", null).Number("strict") + Slack : null);
        sheet.Result("now", now.ToJson());
        var sentence = $"Today: {now.Words}";
        if (given.WholeOrNone("year_built") is { } year)
        {
            var then = Judge(sheet, given, drop, stair, year);
            sheet.Result("then", then.ToJson());
            sentence += $". In {year}: {then.Words}";
        }
        else sheet.Result("then", null);
        sheet.Caution("Children slip or get stuck between wide balusters and people lean on weak rails, whatever the code of the day was.");
        return now.Verdict switch
        {
            "within" => sheet.Within(sentence + "."),
            "outside" => sheet.Outside(sentence + "."),
            _ => sheet.CannotSay(sentence + "."),
        };
    }

    private static Judged Judge(Worksheet sheet, Given given, double? drop, bool stair, int? year)
    {
        var when = year is { } built ? $"in {built}" : "today";
        var needed = Row("drop", year);
        sheet.From(needed.Source);
        if (drop is { } down) sheet.Step($"Drop, guard needed {when} above {needed.Number("strict"):0} in", down, "in");
        if (drop <= needed.Number("strict") + Slack)
        {
            return new Judged("within", null, null, $"a drop of {drop:0.##} in needs no guard");
        }
        if (given.Has("present") && !given.Flag("present")) return new Judged("outside", "outside", "outside", "a guard is needed and there is none");
        var height = Hold(sheet, "Height", given.NumberOrNone("height"), Row(stair ? "stair-height" : "height", year), when, (found, limit) => found >= limit - Slack);
        // A ball of exactly the size must not pass: 4 in fails where less than 4 in is asked.
        var opening = Hold(sheet, "Opening", given.NumberOrNone("opening"), Row(stair ? "stair-opening" : "opening", year), when, (found, limit) => found < limit - Slack);
        var verdict = height == "outside" || opening == "outside" ? "outside" : height == "within" && opening == "within" ? "within" : "cannot say";
        return new Judged(verdict, height, opening, $"height {Words(height)}, openings {Words(opening)}");
    }

    private static string Hold(Worksheet sheet, string name, double? found, TableRow row, string when, Func<double, double, bool> holds)
    {
        sheet.From(row.Source);
        var (strict, loose) = (row.Number("strict"), row.Number("loose"));
        var limit = strict == loose ? $"{strict:0.###}" : $"{strict:0.###} to {loose:0.###}, by the code of the place";
        if (found is not { } value)
        {
            sheet.Say($"{name} not measured; limit {when} {limit} in");
            return "cannot say";
        }
        sheet.Step($"{name}, limit {when} {limit} in", value, "in");
        var (first, second) = (holds(value, strict), holds(value, loose));
        return first && second ? "within" : first || second ? "cannot say" : "outside";
    }

    // The row of a year; the newest where none is given.
    private static TableRow Row(string limit, int? year) => Limits.Rows.First(row => row["limit"] == limit
        && (year is not { } built || (row.NumberOrNone("from_year") is not { } from || built >= from) && (row.NumberOrNone("to_year") is not { } to || built <= to)));

    private static string Words(string verdict) => verdict switch { "within" => "inside the limits", "outside" => "outside the limits", _ => "not decided" };

    private sealed record Judged(string Verdict, string? Height, string? Opening, string Words)
    {
        public JsonObject ToJson() => new() { ["verdict"] = Verdict, ["height"] = Height, ["opening"] = Opening, ["words"] = Words };
    }
}
