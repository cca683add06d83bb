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
        Title = "Electrical service: calculated load",
        Purpose = "The load of a dwelling by the code's standard, optional or existing-dwelling method, and the service it needs.",
        Inputs =
        [
            new Input.Choice("method", "Way of reckoning", ["standard", "optional", "existing"]) { Required = true },
            new Input.Whole("edition", "Edition of the NEC: 2014, 2017, 2020, 2023 or 2026", 2014, 2026) { Required = true },
            new Input.Quantity("floor_area", "Floor area to the outside, without open porches, garages and space that cannot be finished", "ft²", 1, 50_000) { Required = true },
            new Input.Whole("small_appliance_circuits", "20 A kitchen circuits", 0, 20),
            new Input.Whole("laundry_circuits", "Laundry circuits", 0, 10),
            new Input.List("ranges", "Ranges, ovens and cooktops, each", [new Input.Quantity("", "Rating of one", "kW", 0.1, 27)], 0, 40),
            new Input.List("dryers", "Clothes dryers, each", [new Input.Quantity("", "Rating of one", "W", 1, 30_000)], 0, 4),
            new Input.List("fixed_appliances", "Fixed appliances", FixedApplianceInputs, 0, 100),
            new Input.Quantity("cooling", "Cooling, nameplate", "VA", 0, MostLoad),
            new Input.Quantity("heating", "Electric heating, nameplate; for a heat pump its compressor", "VA", 0, MostLoad),
            new Input.Choice("heating_kind", "Kind of electric heating", ["central", "separate", "heat pump", "storage"]),
            new Input.Whole("heating_units", "Separately controlled heaters", 1, 100),
            new Input.Quantity("supplement", "Supplemental heat of a heat pump", "VA", 0, MostLoad),
            new Input.Flag("supplement_locks_out", "Compressor and supplement cannot run together"),
            new Input.Quantity("vehicle_charger", "Electric vehicle supply, nameplate", "VA", 0, MostLoad),
            new Input.Quantity("largest_motor", "Largest motor, where it is not among the fixed appliances", "VA", 0, MostLoad),
            new Input.Flag("adds_heating_or_cooling", "For the existing method: heating or cooling is new"),
            new Input.Choice("cooking_columns", "Which columns of the cooking table", ["smaller", "column C"]),
            new Input.Quantity("volts", "Voltage between the lines", "V", 100, 600),
            new Input.Quantity("service_rating", "Rating of the service", "A", 15, 1200),
        ],
        Sources = ["NEC (NFPA 70) 2014 to 2023, article 220 part III (standard), 220.82 (optional), 220.83 (existing), 220.61 (neutral), 230.79(C), 240.6(A)", "NEC (NFPA 70) 2026, article 120, where known"],
        Work = Work,
    };

    private static System.Collections.Immutable.ImmutableArray<Input> FixedApplianceInputs =>
    [
        new Input.Text("name", "What it is", 100) { Required = true },
        new Input.Quantity("VA", "Nameplate load", "VA", 0, MostLoad) { Required = true },
        new Input.Flag("motor", "It is a motor"),
        new Input.Flag("comfort", "It is a room heater or cooler"),
        new Input.Quantity("volts", "Its voltage", "V", 100, 600),
        new Input.Choice("line", "The line it hangs on", ["A", "B"]),
    ];

    private static Checked<Working> Work(Given given)
    {
        var edition = given.Whole("edition");
        if (!LoadRules.Editions.Contains(edition)) return new Refusal("edition", $"{edition}", $"one of {string.Join(", ", LoadRules.Editions)}");
        if (given.Has("heating") && !given.Has("heating_kind")) return new Refusal("heating_kind", "missing", "one of central, separate, heat pump, storage, when heating is given");
        if (given.TextOrNone("heating_kind") == "separate" && !given.Has("heating_units")) return new Refusal("heating_units", "missing", "a whole number from 1 to 100, when heating_kind is separate");
        if (given.Has("supplement") && given.TextOrNone("heating_kind") != "heat pump") return new Refusal("supplement", "given without a heat pump", "supplement only with heating_kind heat pump");
        var sheet = new Worksheet(Calculation, given);
        var rules = new LoadRules(edition, sheet);
        sheet.Say($"{Heading(given.Text("method"))}, {edition} edition");
        var house = DwellingLoads.Read(given, sheet);
        var columns = house.RangesKilowatts.IsEmpty ? "smaller" : sheet.WordOr("cooking_columns", "smaller", "Table 220.55 note 3 allows it");
        var total = given.Text("method") switch
        {
            "standard" => StandardMethod.Total(house, columns, rules, sheet),
            "optional" => OptionalMethod.Total(house, rules, sheet),
            _ => ExistingMethod.Total(house, given.Has("adds_heating_or_cooling") ? given.Flag("adds_heating_or_cooling") : null, rules, sheet),
        };
        Cautions(sheet, edition);
        if (total is null) return Unknown(sheet, edition);
        return Finish(given, sheet, rules, house, columns, total.Value);
    }

    private static Checked<Working> Unknown(Worksheet sheet, int edition)
    {
        foreach (var name in new[] { "total", "amps", "next_standard_rating", "minimum_service" }) sheet.NoResult(name);
        return sheet.CannotSay($"The {edition} edition's table for existing dwellings is not known to this program; use the edition that is adopted where the house stands, or the standard method.");
    }

    private static Checked<Working> Finish(Given given, Worksheet sheet, LoadRules rules, DwellingLoads house, string columns, double total)
    {
        sheet.Result("total", sheet.Step("Total", total, "VA"), "VA");
        var amps = sheet.Step($"Total / {house.Volts.Volts:0.#} V", (ApparentPower.FromVoltAmperes(total) / house.Volts).Amperes, "A");
        if (LineCurrents.Of(house, total, rules, sheet) is var (a, b))
        {
            sheet.Result("line_a", a, "A");
            sheet.Result("line_b", b, "A");
            amps = sheet.Step("The heavier line governs", Math.Max(a, b), "A");
        }
        sheet.Result("amps", amps, "A");
        var parts = given.Text("method") == "standard" ? new Worksheet(Calculation, given) : sheet;
        WriteNeutral(sheet, Neutral.Load(house, columns, rules, sheet, parts), house);
        var least = rules.Value("minimum_service_amps");
        sheet.From("NEC (NFPA 70) 240.6(A)");
        if (StandardRatings.AtLeast(amps, rules.Edition) is { } next)
        {
            sheet.Result("next_standard_rating", sheet.Step("Next standard rating", next.Number("amps"), "A"), "A");
            sheet.Result("minimum_service", sheet.Step($"Smallest service: that, but at least {least:0} A for a one-family dwelling", Math.Max(least, next.Number("amps")), "A"), "A");
            if (next.IsFromMemory) sheet.From(next.Source);
        }
        else { sheet.NoResult("next_standard_rating"); sheet.NoResult("minimum_service"); }
        return Judge(given, sheet, amps, least);
    }

    private static void WriteNeutral(Worksheet sheet, double? neutral, DwellingLoads house)
    {
        if (neutral is not { } load) { sheet.NoResult("neutral"); sheet.NoResult("neutral_amps"); return; }
        sheet.Result("neutral", sheet.Step("Neutral load", load, "VA"), "VA");
        sheet.Result("neutral_amps", sheet.Step("Neutral current", load / house.Volts.Volts, "A"), "A");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double amps, double least)
    {
        if (given.NumberOrNone("service_rating") is not { } rating)
            return sheet.CannotSay($"The calculated load is {amps:0} A; the rating of the service was not given, so there is nothing to hold it against.");
        sheet.Result("share_used", sheet.Step("Share of the service used", 100 * amps / rating, "%"), "%");
        if (amps > rating) return sheet.Outside($"The calculated load of {amps:0} A is more than the service's {rating:0} A.");
        return rating < least
            ? sheet.Outside($"The calculated load of {amps:0} A fits, but the service's {rating:0} A is less than the {least:0} A the code asks for at a one-family dwelling.")
            : sheet.Within($"The calculated load of {amps:0} A uses {100 * amps / rating:0} % of the service's {rating:0} A.");
    }

    private static void Cautions(Worksheet sheet, int edition)
    {
        sheet.Caution("A calculated load from nameplates is no measurement; what the house draws on a hot or cold day can differ.");
        sheet.Caution("Which edition applies is decided where the house stands; adoption lags and amendments are common.");
        sheet.Caution("Service equipment is live even with the main off: it is opened and altered only by a licensed electrician.");
        if (edition == 2026) sheet.Caution("No published worked example of the 2026 edition was found; several section numbers and figures are from memory, as the sources say.");
    }

    private static string Heading(string method) => method switch
    {
        "standard" => "Standard method (article 220 part III)",
        "optional" => "Optional method (220.82)",
        _ => "Existing dwelling (220.83)",
    };
}
