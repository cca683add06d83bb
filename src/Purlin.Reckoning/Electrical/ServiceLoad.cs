using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>How much current a dwelling calls for by the code's own calculation, and whether its service is large enough.</summary>
internal static class ServiceLoad
{
    // Far beyond any house; a slip of a zero or two is caught here.
    private const double MostLoad = 1_000_000;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "service-load",
        Inputs =
        [
            new Input.Choice("method", "service-load.input.method", ["standard", "optional", "existing"]) { Required = true },
            new Input.Whole("edition", "service-load.input.edition", 2014, 2026) { Required = true },
            new Input.Quantity("floor_area", "service-load.input.floor-area", "ft²", 1, 50_000) { Required = true },
            new Input.Whole("small_appliance_circuits", "service-load.input.small-appliance-circuits", 0, 20),
            new Input.Whole("laundry_circuits", "service-load.input.laundry-circuits", 0, 10),
            new Input.List("ranges", "service-load.input.ranges", [new Input.Quantity("", "service-load.input.ranges.each", "kW", 0.1, 27)],
                0, 40),
            new Input.List("dryers", "service-load.input.dryers",
                [new Input.Quantity("", "service-load.input.dryers.each", "W", 1, 30_000)], 0, 4),
            new Input.List("fixed_appliances", "service-load.input.fixed-appliances", FixedApplianceInputs, 0, 100),
            new Input.Quantity("cooling", "service-load.input.cooling", "VA", 0, MostLoad),
            new Input.Quantity("heating", "service-load.input.heating", "VA", 0, MostLoad),
            new Input.Choice("heating_kind", "service-load.input.heating-kind", ["central", "separate", "heat pump", "storage"]),
            new Input.Whole("heating_units", "service-load.input.heating-units", 1, 100),
            new Input.Quantity("supplement", "service-load.input.supplement", "VA", 0, MostLoad),
            new Input.Flag("supplement_locks_out", "service-load.input.supplement-locks-out"),
            new Input.Quantity("vehicle_charger", "service-load.input.vehicle-charger", "VA", 0, MostLoad),
            new Input.Quantity("largest_motor", "service-load.input.largest-motor", "VA", 0, MostLoad),
            new Input.Flag("adds_heating_or_cooling", "service-load.input.adds-heating-or-cooling"),
            new Input.Choice("cooking_columns", "service-load.input.cooking-columns", ["smaller", "column C"]),
            new Input.Quantity("volts", "service-load.input.volts", "V", 100, 600),
            new Input.Quantity("service_rating", "service-load.input.service-rating", "A", 15, 1200),
        ],
        Sources = ["NEC (NFPA 70) 2014 to 2023, article 220 part III (standard), 220.82 (optional), 220.83 (existing), 220.61 (neutral), 230.79(C), 240.6(A)", "NEC (NFPA 70) 2026, article 120, where known"],
        Work = Work,
    };

    private static System.Collections.Immutable.ImmutableArray<Input> FixedApplianceInputs =>
    [
        new Input.Text("name", "service-load.input.name", 100) { Required = true },
        new Input.Quantity("VA", "service-load.input.va", "VA", 0, MostLoad) { Required = true },
        new Input.Flag("motor", "service-load.input.motor"),
        new Input.Flag("comfort", "service-load.input.comfort"),
        new Input.Quantity("volts", "service-load.input.volts-2", "V", 100, 600),
        new Input.Choice("line", "service-load.input.line", ["A", "B"]),
    ];

    private static Checked<Working> Work(Given given)
    {
        var edition = given.Whole("edition");
        if (!LoadRules.Editions.Contains(edition))
            return new Refusal("edition", new("refused.given", ("given", edition)),
                new("allowed.word", ("words", SaidValue.Of(LoadRules.Editions.Select(known => $"{known}")))));
        if (given.Has("heating") && !given.Has("heating_kind"))
            return new Refusal("heating_kind", "refused.missing", "service-load.allowed.central-separate-heat-pump");
        if (given.TextOrNone("heating_kind") == "separate" && !given.Has("heating_units"))
            return new Refusal("heating_units", "refused.missing", "service-load.allowed.whole-number-when-heating");
        if (given.Has("supplement") && given.TextOrNone("heating_kind") != "heat pump")
            return new Refusal("supplement", "service-load.given.given-without-heat-pump",
                "service-load.allowed.supplement-only-heating-kind");
        var sheet = new Worksheet(Calculation, given);
        var rules = new LoadRules(edition, sheet);
        sheet.Say("service-load.step.edition", ("method", Heading(given.Text("method"))), ("edition", edition));
        var house = DwellingLoads.Read(given, sheet);
        var columns = house.RangesKilowatts.IsEmpty
            ? "smaller" : sheet.WordOr("cooking_columns", "smaller", "service-load.why.table-note-allows");
        var total = given.Text("method") switch
        {
            "standard" => StandardMethod.Total(house, columns, rules, sheet),
            "optional" => OptionalMethod.Total(house, rules, sheet),
            _ => ExistingMethod.Total(house, given.Has("adds_heating_or_cooling")
                ? given.Flag("adds_heating_or_cooling") : null, rules, sheet),
        };
        Cautions(sheet, edition);
        if (total is null) return Unknown(sheet, edition);
        return Finish(given, sheet, rules, house, columns, total.Value);
    }

    private static Checked<Working> Unknown(Worksheet sheet, int edition)
    {
        foreach (var name in new[] { "total", "amps", "next_standard_rating", "minimum_service" }) sheet.NoResult(name);
        return sheet.CannotSay("service-load.because.edition-table-existing-dwellings", ("edition", edition));
    }

    private static Checked<Working> Finish(Given given, Worksheet sheet, LoadRules rules, DwellingLoads house, string columns, double total)
    {
        sheet.Result("total", sheet.Step("service-load.step.total", total, "VA"), "VA");
        var amps = sheet.Step("service-load.step.total-2", (ApparentPower.FromVoltAmperes(total) / house.Volts).Amperes, "A",
            ("house", house.Volts.Volts, "V"));
        if (LineCurrents.Of(house, total, rules, sheet) is var (a, b))
        {
            sheet.Result("line_a", a, "A");
            sheet.Result("line_b", b, "A");
            amps = sheet.Step("service-load.step.heavier-line-governs", Math.Max(a, b), "A");
        }
        sheet.Result("amps", amps, "A");
        var parts = given.Text("method") == "standard" ? new Worksheet(Calculation, given) : sheet;
        WriteNeutral(sheet, Neutral.Load(house, columns, rules, sheet, parts), house);
        var least = rules.Value("minimum_service_amps");
        sheet.From("NEC (NFPA 70) 240.6(A)");
        if (StandardRatings.AtLeast(amps, rules.Edition) is { } next)
        {
            sheet.Result("next_standard_rating", sheet.Step("service-load.step.next-standard-rating", next.Number("amps"), "A"), "A");
            sheet.Result("minimum_service",
                sheet.Step("service-load.step.smallest-service-least-family", Math.Max(least, next.Number("amps")), "A",
                ("least", least, "A")), "A");
            if (next.IsFromMemory) sheet.From(next.Source);
        }
        else { sheet.NoResult("next_standard_rating"); sheet.NoResult("minimum_service"); }
        return Judge(given, sheet, amps, least);
    }

    private static void WriteNeutral(Worksheet sheet, double? neutral, DwellingLoads house)
    {
        if (neutral is not { } load) { sheet.NoResult("neutral"); sheet.NoResult("neutral_amps"); return; }
        sheet.Result("neutral", sheet.Step("service-load.step.neutral-load", load, "VA"), "VA");
        sheet.Result("neutral_amps", sheet.Step("service-load.step.neutral-current", load / house.Volts.Volts, "A"), "A");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double amps, double least)
    {
        if (given.NumberOrNone("service_rating") is not { } rating)
            return sheet.CannotSay("service-load.because.calculated-load-rating-service", ("amps", amps, "A"));
        sheet.Result("share_used", sheet.Step("service-load.step.share-service-used", 100 * amps / rating, "%"), "%");
        if (amps > rating) return sheet.Outside("service-load.because.calculated-load-more-service", ("amps", amps, "A"),
            ("rating", rating, "A"));
        if (rating >= least && given.List("fixed_appliances").IsEmpty)
            return sheet.CannotSay("service-load.because.no-appliance-counted", ("amps", amps, "A"), ("rating", rating, "A"));
        return rating < least
            ? sheet.Outside("service-load.because.calculated-load-fits-service", ("amps", amps, "A"), ("rating", rating, "A"),
            ("least", least, "A"))
            : sheet.Within("service-load.because.calculated-load-uses-service", ("amps", amps, "A"), ("share", 100 * amps / rating, "%"),
                ("rating", rating, "A"));
    }

    private static void Cautions(Worksheet sheet, int edition)
    {
        sheet.Caution("service-load.caution.calculated-load-nameplates-no");
        sheet.Caution("service-load.caution.edition-applies-decided-where");
        sheet.Caution("service-load.caution.service-equipment-live-even");
        if (edition == 2026) sheet.Caution("service-load.caution.no-published-worked-example");
    }

    private static Said Heading(string method) => method switch
    {
        "standard" => "service-load.method.standard",
        "optional" => "service-load.method.optional",
        _ => "service-load.method.existing",
    };
}
