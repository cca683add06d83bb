using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>One flight of stairs against the limits of an edition. Uneven steps make people fall sooner than steep ones.</summary>
public static class Stairs
{
    private static readonly Table Limits = Tables.Read("structure/stairs.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "stairs",
        Title = "Stairs",
        Purpose = "Risers, treads, width, headroom and handrail of a flight against the limits of an edition.",
        Inputs =
        [
            new Input.List("risers", "height of each step, from the bottom", [new Input.Quantity("", "one riser", "in", 0.5, 24)], 1, 60) { Required = true },
            new Input.List("treads", "depth of each step, nosing to nosing", [new Input.Quantity("", "one tread", "in", 2, 60)], 0, 60),
            new Input.Quantity("width", "clear width above the handrail", "in", 10, 300),
            new Input.Quantity("headroom", "clear height above the line of the nosings", "in", 30, 600),
            new Input.Flag("handrail", "there is a handrail"),
            new Input.Quantity("handrail_height", "height of the handrail above the nosings", "in", 6, 80),
            new Input.Flag("open_side", "a side of the flight is open"),
            new Input.Choice("edition", "which code", [.. Limits.Rows.Select(row => row["edition"]).Distinct()]),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var edition = sheet.WordOr("edition", "IRC 2021", "the newest at hand; an older stair was built to the code of its day");
        var (risers, treads) = (given.Numbers("risers"), given.Numbers("treads"));
        var held = new LimitSheet(sheet);
        held.AtMost("highest riser", sheet.Result("riser_most", risers.Max(), "in"), Limit("riser-most", edition));
        held.AtMost("difference of risers", sheet.Result("riser_variation", risers.Max() - risers.Min(), "in"), Limit("variation-most", edition));
        sheet.Result("total_rise", sheet.Step("Total rise = sum of the risers", risers.Sum(), "in"), "in");
        held.AtMost("rise of the flight", risers.Sum(), Limit("flight-most", edition));
        if (!treads.IsEmpty) Treads(sheet, held, treads, edition);
        held.AtLeast("width", given.NumberOrNone("width"), Limit("width-least", edition));
        held.AtLeast("headroom", given.NumberOrNone("headroom"), Limit("headroom-least", edition));
        Handrail(sheet, held, given, risers, edition);
        held.Write();
        sheet.Result("edition", edition);
        if (given.Flag("open_side")) sheet.Caution("An open side needs a guard where the drop is more than 30 in (IRC R312.1.1): reckon it as a guard.");
        if (edition != "older") sheet.Caution("A stair built to an older code is not wrong for that. What makes people fall is told apart from what the code of the day asked.");
        return held.AnyFailed ? sheet.Outside(held.Failed) : sheet.Within($"What was measured is inside the limits of {(edition == "older" ? "the older code" : edition)}.");
    }

    private static void Treads(Worksheet sheet, LimitSheet held, ImmutableArray<double> treads, string edition)
    {
        held.AtLeast("shallowest tread", sheet.Result("tread_least", treads.Min(), "in"), Limit("tread-least", edition));
        held.AtMost("difference of treads", sheet.Result("tread_variation", treads.Max() - treads.Min(), "in"), Limit("variation-most", edition));
    }

    private static void Handrail(Worksheet sheet, LimitSheet held, Given given, ImmutableArray<double> risers, string edition)
    {
        var from = Limit("handrail-risers", edition)!;
        var needed = risers.Length >= from.Number("value");
        sheet.Result("handrail_needed", needed);
        sheet.Say($"{risers.Length} risers: a handrail is {(needed ? "" : "not ")}needed, which is from {from.Number("value"):0} on");
        if (needed) held.There("handrail", given.Has("handrail") ? given.Flag("handrail") : given.Has("handrail_height") ? true : null, from.Source);
        held.AtLeast("handrail height", given.NumberOrNone("handrail_height"), Limit("handrail-least", edition));
        held.AtMost("handrail height", given.NumberOrNone("handrail_height"), Limit("handrail-most", edition));
    }

    private static TableRow? Limit(string limit, string edition) => Limits.Rows.SingleOrDefault(row => row["limit"] == limit && row["edition"] == edition);
}
