using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Air;

/// <summary>Whether the parts of a split cooling system belong together.</summary>
internal static class EquipmentMatch
{
    private static ImmutableArray<Input> Unit =>
    [
        new Input.Quantity("tons", "equipment-match.input.tons", "tons", 0.5, 50),
        new Input.Text("refrigerant", "equipment-match.input.refrigerant", 20),
        new Input.Whole("year", "equipment-match.input.year", 1950, 2100),
        new Input.Choice("metering", "equipment-match.input.metering", ["piston", "thermostatic valve", "electronic valve", "capillary"]),
        new Input.Quantity("efficiency", "equipment-match.input.efficiency", "", 4, 40),
    ];

    internal static Calculation Calculation { get; } = new()
    {
        Name = "equipment-match",
        Inputs =
        [
            new Input.Group("outdoor", "equipment-match.input.outdoor", Unit) { Required = true },
            new Input.Group("indoor_coil", "equipment-match.input.indoor-coil", Unit),
            new Input.Group("air_mover", "equipment-match.input.air-mover", Unit),
            new Input.Quantity("floor_area", "equipment-match.input.floor-area", "ft²", 50, 50_000),
            new Input.Whole("year_now", "equipment-match.input.year-now", 1990, 2100),
        ],
        Sources = ["Common practice of matching split systems", "40 CFR 82 and 40 CFR 84 subpart B (refrigerants)",
            "10 CFR 430.32(c) (minimum efficiency)"],
        Work = Work,
    };

    // A hundredth of a ton is the rounding of a conversion, no difference between plates.
    private const double Rounding = 0.01;

    private static readonly ImmutableArray<string> Parts = ["outdoor", "indoor_coil", "air_mover"];

    private static Checked<Working> Work(Given given)
    {
        foreach (var part in Parts)
            if (given.Group(part)?.TextOrNone("refrigerant") is { } name && Refrigerants.Find(name) is null)
                return new Refusal($"{part}.refrigerant", Said.Verbatim(name), new("allowed.word", ("words", Refrigerants.Names)));
        if (given.WholeOrNone("year_now") is { } now)
            foreach (var part in Parts)
                if (given.Group(part)?.WholeOrNone("year") > now)
                    return new Refusal($"{part}.year", new("refused.given", ("given", given.Group(part)!.Whole("year"))),
                        new("equipment-match.allowed.most-year-now", ("now", now)));
        var sheet = new Worksheet(Calculation, given);
        var rules = new RuleTable("air/match_rules.csv", "", sheet);
        List<Mismatch> found = [];
        SameRefrigerant(given, sheet, found);
        Capacity(given, sheet, rules, found);
        Metering(given, found);
        Years(given, sheet, rules, found);
        Efficiency(given, sheet, found);
        WriteRest(given, sheet);
        foreach (var mismatch in found) sheet.Say("equipment-match.step.mismatch", ("what", mismatch.What), ("meaning", mismatch.Meaning));
        sheet.Result("mismatches", new JsonArray([.. found.Select(_ => (JsonNode)new JsonObject { ["what"] = null, ["meaning"] = null })]));
        for (var index = 0; index < found.Count; index++)
        {
            sheet.Sentence($"mismatches.{index}.what", found[index].What);
            sheet.Sentence($"mismatches.{index}.meaning", found[index].Meaning);
        }
        sheet.Caution("equipment-match.caution.listed-pair-settled-only");
        sheet.Caution("equipment-match.caution.refrigerant-circuits-opened-only");
        return Judge(given, sheet, found);
    }

    private sealed record Mismatch(string Kind, Said Meaning)
    {
        public Said What => new($"equipment-match.{Kind}");
    }

    private static void SameRefrigerant(Given given, Worksheet sheet, List<Mismatch> found)
    {
        var outdoor = Row(given, "outdoor");
        var coil = Row(given, "indoor_coil");
        if ((outdoor ?? coil) is { } standing)
        {
            sheet.From(standing.Source);
            sheet.Result("refrigerant", new JsonObject { ["name"] = standing["name"], ["standing"] = null });
            sheet.Sentence("refrigerant.standing", standing.Words("standing"));
            sheet.Say("equipment-match.step.refrigerant", ("name", standing["name"]), ("standing", standing.Words("standing")));
        }
        else sheet.NoResult("refrigerant");
        if (outdoor is not null && coil is not null && outdoor["name"] != coil["name"])
            found.Add(new Mismatch("two-refrigerants",
                new("equipment-match.two-refrigerants.meaning", ("outdoor", outdoor["name"]), ("coil", coil["name"]))));
    }

    private static void Capacity(Given given, Worksheet sheet, RuleTable rules, List<Mismatch> found)
    {
        if (Tons(given, "outdoor") is not { } outdoor) return;
        if (Tons(given, "indoor_coil") is { } coil)
        {
            var over = rules.Value("coil_over");
            sheet.Step("equipment-match.step.coil-less-outdoor-unit", coil - outdoor, "tons");
            if (coil < outdoor - Rounding)
                found.Add(new Mismatch("coil-smaller",
                    new("equipment-match.coil-smaller.meaning", ("coil", coil, "tons"), ("outdoor", outdoor))));
            else if (coil > outdoor + over + Rounding)
                found.Add(new Mismatch("coil-larger",
                    new("equipment-match.coil-larger.meaning", ("coil", coil, "tons"), ("outdoor", outdoor))));
        }
        if (Tons(given, "air_mover") is { } mover && mover < outdoor - Rounding)
        {
            sheet.Step("equipment-match.step.air-outdoor-unit-asks", rules.Value("usual_airflow") * outdoor, "cfm");
            found.Add(new Mismatch("mover-smaller",
                new("equipment-match.mover-smaller.meaning", ("mover", mover, "tons"), ("outdoor", outdoor))));
        }
        if (given.NumberOrNone("floor_area") is not { } area) { sheet.NoResult("area_per_ton"); return; }
        sheet.Result("area_per_ton", sheet.Step("equipment-match.step.floor-area-ton", area / outdoor, "ft²"), "ft²");
        sheet.Caution("equipment-match.caution.floor-area-ton-rough");
    }

    private static void Metering(Given given, List<Mismatch> found)
    {
        if (given.Group("outdoor")!.TextOrNone("metering") is { } asked && given.Group("indoor_coil")?.TextOrNone("metering") is { } fitted
            && asked != fitted)
            found.Add(new Mismatch("metering",
                new("equipment-match.metering.meaning", ("asked", Words.Of(asked)), ("there", Words.Of(fitted)))));
    }

    private static void Years(Given given, Worksheet sheet, RuleTable rules, List<Mismatch> found)
    {
        var years = Parts.Select(part => given.Group(part)?.WholeOrNone("year")).ToList();
        var ages = new JsonObject();
        for (var index = 0; index < Parts.Length; index++) ages[Parts[index]] = given.WholeOrNone("year_now") - years[index];
        if (!given.Has("year_now") && years.Exists(year => year is not null)) sheet.Say("equipment-match.step.year-inspection-not-given");
        sheet.Result("ages", ages);
        if (years[0] is { } outdoor && years[1] is { } coil && Math.Abs(outdoor - coil) > rules.Value("years_apart"))
            found.Add(new Mismatch("years", new("equipment-match.years.meaning", ("outdoor", outdoor), ("coil", coil))));
        if (years[0] is { } year && Row(given, "outdoor")?["name"] == "R-22" && year > rules.Value("r22_last_year"))
            found.Add(new Mismatch("r22", new("equipment-match.r22.meaning", ("year", year))));
    }

    private static void Efficiency(Given given, Worksheet sheet, List<Mismatch> found)
    {
        if (given.Group("outdoor")!.NumberOrNone("efficiency") is not { } seer
            || given.Group("outdoor")!.WholeOrNone("year") is not { } year) return;
        // The year of a change is left out: equipment made earlier in it was lawful.
        var row = Tables.Read("air/minimum_efficiency.csv").Rows.LastOrDefault(row => row.Number("from_year") < year);
        if (row is null || seer >= row.Number("seer")) return;
        sheet.From(row["mark"] == "confirmed" ? row.Source : $"{row.Source} ({row["mark"]})");
        found.Add(new Mismatch("efficiency",
            new("equipment-match.efficiency.meaning", ("seer", seer), ("least", row.Number("seer")), ("year", year))));
    }

    private static void WriteRest(Given given, Worksheet sheet)
    {
        if (!given.Has("floor_area") || Tons(given, "outdoor") is null) sheet.NoResult("area_per_ton");
        foreach (var part in Parts)
            if (given.Group(part) is null) sheet.Say("equipment-match.step.nothing-given", ("part", Words.OfInput(part)));
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, List<Mismatch> found)
    {
        if (found.Count > 0) return sheet.Outside("equipment-match.because.mismatch", ("count", found.Count),
            ("found", SaidValue.Of(found.Select(mismatch => new Said("sentence.lower", ("it", mismatch.What))))));
        var compared = Tons(given, "outdoor") is not null && Tons(given, "indoor_coil") is not null && Row(given, "outdoor") is not null
            && Row(given, "indoor_coil") is not null;
        return compared
            ? sheet.Within("equipment-match.because.outdoor-unit-coil-agree")
            : sheet.CannotSay("equipment-match.because.capacity-refrigerant-both-outdoor");
    }

    private static TableRow? Row(Given given, string part) =>
        given.Group(part)?.TextOrNone("refrigerant") is { } name ? Refrigerants.Find(name) : null;

    private static double? Tons(Given given, string part) => given.Group(part)?.NumberOrNone("tons");
}
