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
        Inputs =
        [
            new Input.List("risers", "stairs.input.risers", [new Input.Quantity("", "stairs.input.risers.each", "in", 0.5, 24)], 1,
            60) { Required = true },
            new Input.List("treads", "stairs.input.treads", [new Input.Quantity("", "stairs.input.treads.each", "in", 2, 60)], 0, 60),
            new Input.Quantity("width", "stairs.input.width", "in", 10, 300),
            new Input.Quantity("headroom", "stairs.input.headroom", "in", 30, 600),
            new Input.Flag("handrail", "stairs.input.handrail"),
            new Input.Quantity("handrail_height", "stairs.input.handrail-height", "in", 6, 80),
            new Input.Flag("open_side", "stairs.input.open-side"),
            new Input.Choice("edition", "stairs.input.edition", [.. Limits.Rows.Select(row => row["edition"]).Distinct()]),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var edition = sheet.WordOr("edition", "IRC 2021", "stairs.why.newest-hand-older-stair");
        var (risers, treads) = (given.Numbers("risers"), given.Numbers("treads"));
        var held = new LimitSheet(sheet);
        held.AtMost("highest riser", sheet.Result("riser_most", risers.Max(), "in"), Limit("riser-most", edition));
        held.AtMost("difference of risers", sheet.Result("riser_variation", risers.Max() - risers.Min(), "in"),
            Limit("variation-most", edition));
        sheet.Result("total_rise", sheet.Step("stairs.step.total-rise-sum-risers", risers.Sum(), "in"), "in");
        held.AtMost("rise of the flight", risers.Sum(), Limit("flight-most", edition));
        if (!treads.IsEmpty) Treads(sheet, held, treads, edition);
        held.AtLeast("width", given.NumberOrNone("width"), Limit("width-least", edition));
        held.AtLeast("headroom", given.NumberOrNone("headroom"), Limit("headroom-least", edition));
        Handrail(sheet, held, given, risers, edition);
        held.Write();
        sheet.Result("edition", edition);
        if (given.Flag("open_side")) sheet.Caution("stairs.caution.open-side-needs-guard");
        if (edition != "older") sheet.Caution("stairs.caution.stair-built-older-code");
        return held.AnyFailed ? sheet.Outside(held.Failed)
            : sheet.Within("stairs.because.what-measured-inside-limits",
            ("edition", edition == "older" ? new Said("stairs.older-code") : Said.Verbatim(edition)));
    }

    private static void Treads(Worksheet sheet, LimitSheet held, ImmutableArray<double> treads, string edition)
    {
        held.AtLeast("shallowest tread", sheet.Result("tread_least", treads.Min(), "in"), Limit("tread-least", edition));
        held.AtMost("difference of treads", sheet.Result("tread_variation", treads.Max() - treads.Min(), "in"),
            Limit("variation-most", edition));
    }

    private static void Handrail(Worksheet sheet, LimitSheet held, Given given, ImmutableArray<double> risers, string edition)
    {
        var from = Limit("handrail-risers", edition)!;
        var needed = risers.Length >= from.Number("value");
        sheet.Result("handrail_needed", needed);
        sheet.Say("stairs.step.risers-handrail-needed", ("count", risers.Length), ("needed", needed ? "yes" : "no"),
            ("value", from.Number("value")));
        if (needed) held.There("handrail", given.Has("handrail")
            ? given.Flag("handrail") : given.Has("handrail_height") ? true : null, from.Source);
        held.AtLeast("handrail height", given.NumberOrNone("handrail_height"), Limit("handrail-least", edition));
        held.AtMost("handrail height", given.NumberOrNone("handrail_height"), Limit("handrail-most", edition));
    }

    private static TableRow? Limit(string limit, string edition) =>
        Limits.Rows.SingleOrDefault(row => row["limit"] == limit && row["edition"] == edition);
}
