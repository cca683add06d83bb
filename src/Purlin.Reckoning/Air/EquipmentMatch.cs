using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Air;

/// <summary>Whether the parts of a split cooling system belong together.</summary>
internal static class EquipmentMatch
{
    private static ImmutableArray<Input> Unit =>
    [
        new Input.Quantity("tons", "Nominal capacity", "tons", 0.5, 50),
        new Input.Text("refrigerant", "Refrigerant on the plate", 20),
        new Input.Whole("year", "Year of manufacture", 1950, 2100),
        new Input.Choice("metering", "Metering device fitted, or asked for by the outdoor unit", ["piston", "thermostatic valve", "electronic valve", "capillary"]),
        new Input.Quantity("efficiency", "Seasonal efficiency on the plate or label, SEER", "", 4, 40),
    ];

    internal static Calculation Calculation { get; } = new()
    {
        Name = "equipment-match",
        Title = "Cooling: do the parts match",
        Purpose = "Mismatches between outdoor unit, indoor coil and air mover, with what each means, and the standing of the refrigerant.",
        Inputs =
        [
            new Input.Group("outdoor", "Outdoor unit", Unit) { Required = true },
            new Input.Group("indoor_coil", "Indoor coil", Unit),
            new Input.Group("air_mover", "Furnace blower or air handler", Unit),
            new Input.Quantity("floor_area", "Floor area that is cooled", "ft²", 50, 50_000),
            new Input.Whole("year_now", "The year of the inspection", 1990, 2100),
        ],
        Sources = ["Common practice of matching split systems", "40 CFR 82 and 40 CFR 84 subpart B (refrigerants)", "10 CFR 430.32(c) (minimum efficiency)"],
        Work = Work,
    };

    // A hundredth of a ton is the rounding of a conversion, no difference between plates.
    private const double Rounding = 0.01;

    private static readonly ImmutableArray<string> Parts = ["outdoor", "indoor_coil", "air_mover"];

    private static Checked<Working> Work(Given given)
    {
        foreach (var part in Parts)
            if (given.Group(part)?.TextOrNone("refrigerant") is { } name && Refrigerants.Find(name) is null)
                return new Refusal($"{part}.refrigerant", name, $"one of {Refrigerants.Names}");
        if (given.WholeOrNone("year_now") is { } now)
            foreach (var part in Parts)
                if (given.Group(part)?.WholeOrNone("year") > now) return new Refusal($"{part}.year", $"{given.Group(part)!.Whole("year")}", $"at most year_now, {now}");
        var sheet = new Worksheet(Calculation, given);
        var rules = new RuleTable("air/match_rules.csv", "", sheet);
        List<Mismatch> found = [];
        SameRefrigerant(given, sheet, found);
        Capacity(given, sheet, rules, found);
        Metering(given, found);
        Years(given, sheet, rules, found);
        Efficiency(given, sheet, found);
        WriteRest(given, sheet);
        foreach (var mismatch in found) sheet.Say($"{mismatch.What}: {mismatch.Meaning}");
        sheet.Result("mismatches", new JsonArray([.. found.Select(mismatch => (JsonNode)new JsonObject { ["what"] = mismatch.What, ["meaning"] = mismatch.Meaning })]));
        sheet.Caution("A listed pair is settled only in the industry's directory of rated combinations; this compares plates.");
        sheet.Caution("Refrigerant circuits are opened only by a licensed heating and cooling contractor.");
        return Judge(given, sheet, found);
    }

    private sealed record Mismatch(string What, string Meaning);

    private static void SameRefrigerant(Given given, Worksheet sheet, List<Mismatch> found)
    {
        var outdoor = Row(given, "outdoor");
        var coil = Row(given, "indoor_coil");
        if ((outdoor ?? coil) is { } standing)
        {
            sheet.From(standing.Source);
            sheet.Result("refrigerant", new JsonObject { ["name"] = standing["name"], ["standing"] = standing["standing"] });
            sheet.Say($"{standing["name"]}: {standing["standing"]}");
        }
        else sheet.NoResult("refrigerant");
        if (outdoor is not null && coil is not null && outdoor["name"] != coil["name"])
            found.Add(new Mismatch("Two refrigerants", $"the outdoor unit is made for {outdoor["name"]}, the coil for {coil["name"]}; pressures and oils differ, and the pair was not made for each other"));
    }

    private static void Capacity(Given given, Worksheet sheet, RuleTable rules, List<Mismatch> found)
    {
        if (Tons(given, "outdoor") is not { } outdoor) return;
        if (Tons(given, "indoor_coil") is { } coil)
        {
            var over = rules.Value("coil_over");
            sheet.Step("Coil less outdoor unit", coil - outdoor, "tons");
            if (coil < outdoor - Rounding) found.Add(new Mismatch("Coil smaller than the outdoor unit", $"{coil:0.##} tons against {outdoor:0.##}: capacity and efficiency fall, and the compressor can be harmed"));
            else if (coil > outdoor + over + Rounding) found.Add(new Mismatch("Coil much larger than the outdoor unit", $"{coil:0.##} tons against {outdoor:0.##}: more than the half ton that pairs often allow; the air is dried less"));
        }
        if (Tons(given, "air_mover") is { } mover && mover < outdoor - Rounding)
        {
            sheet.Step("Air the outdoor unit asks for, at 400 cfm a ton", rules.Value("usual_airflow") * outdoor, "cfm");
            found.Add(new Mismatch("Air mover smaller than the outdoor unit", $"{mover:0.##} tons against {outdoor:0.##}: too little air can ice the coil"));
        }
        if (given.NumberOrNone("floor_area") is not { } area) { sheet.NoResult("area_per_ton"); return; }
        sheet.Result("area_per_ton", sheet.Step("Floor area for each ton", area / outdoor, "ft²"), "ft²");
        sheet.Caution("Floor area for each ton is a rough sign only; size follows from a load calculation (ACCA Manual J), not from area.");
    }

    private static void Metering(Given given, List<Mismatch> found)
    {
        if (given.Group("outdoor")!.TextOrNone("metering") is { } asked && given.Group("indoor_coil")?.TextOrNone("metering") is { } fitted && asked != fitted)
            found.Add(new Mismatch("Metering device differs", $"the outdoor unit asks for a {asked}, the coil has a {fitted}; the charge cannot be right for both"));
    }

    private static void Years(Given given, Worksheet sheet, RuleTable rules, List<Mismatch> found)
    {
        var years = Parts.Select(part => given.Group(part)?.WholeOrNone("year")).ToList();
        var ages = new JsonObject();
        for (var index = 0; index < Parts.Length; index++) ages[Parts[index]] = given.WholeOrNone("year_now") - years[index];
        if (!given.Has("year_now") && years.Exists(year => year is not null)) sheet.Say("The year of the inspection was not given: ages are not worked out");
        sheet.Result("ages", ages);
        if (years[0] is { } outdoor && years[1] is { } coil && Math.Abs(outdoor - coil) > rules.Value("years_apart"))
            found.Add(new Mismatch("Outdoor unit and coil of different years", $"{outdoor} and {coil}: one was exchanged without the other; ask for papers and compare refrigerant labels"));
        if (years[0] is { } year && Row(given, "outdoor")?["name"] == "R-22" && year > rules.Value("r22_last_year"))
            found.Add(new Mismatch("R-22 in a unit made after 2010", $"no new equipment was charged with R-22 from 2010, yet this is of {year}: a unit sold dry, another refrigerant, or a year misread"));
    }

    private static void Efficiency(Given given, Worksheet sheet, List<Mismatch> found)
    {
        if (given.Group("outdoor")!.NumberOrNone("efficiency") is not { } seer || given.Group("outdoor")!.WholeOrNone("year") is not { } year) return;
        // The year of a change is left out: equipment made earlier in it was lawful.
        var row = Tables.Read("air/minimum_efficiency.csv").Rows.LastOrDefault(row => row.Number("from_year") < year);
        if (row is null || seer >= row.Number("seer")) return;
        sheet.From(row["mark"] == "confirmed" ? row.Source : $"{row.Source} ({row["mark"]})");
        found.Add(new Mismatch("Efficiency and year do not agree", $"SEER {seer:0.#} is below the {row.Number("seer"):0.#} asked of units made in {year}; one of the two is misread"));
    }

    private static void WriteRest(Given given, Worksheet sheet)
    {
        if (!given.Has("floor_area") || Tons(given, "outdoor") is null) sheet.NoResult("area_per_ton");
        foreach (var part in Parts) if (given.Group(part) is null) sheet.Say($"{part.Replace('_', ' ')}: nothing given");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, List<Mismatch> found)
    {
        if (found.Count > 0) return sheet.Outside($"{found.Count} mismatch{(found.Count == 1 ? "" : "es")}: {string.Join("; ", found.Select(mismatch => char.ToLowerInvariant(mismatch.What[0]) + mismatch.What[1..]))}.");
        var compared = Tons(given, "outdoor") is not null && Tons(given, "indoor_coil") is not null && Row(given, "outdoor") is not null && Row(given, "indoor_coil") is not null;
        return compared
            ? sheet.Within("Outdoor unit and coil agree in capacity and refrigerant.")
            : sheet.CannotSay("Capacity and refrigerant of both outdoor unit and coil are needed to say that they match.");
    }

    private static TableRow? Row(Given given, string part) => given.Group(part)?.TextOrNone("refrigerant") is { } name ? Refrigerants.Find(name) : null;

    private static double? Tons(Given given, string part) => given.Group(part)?.NumberOrNone("tons");
}
