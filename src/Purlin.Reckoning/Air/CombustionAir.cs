using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Air;

/// <summary>Whether fuel-burning appliances get the air they burn and vent with.</summary>
internal static class CombustionAir
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "combustion-air",
        Title = "Fuel burning: combustion air",
        Purpose = "The room volume or the openings that fuel-burning appliances need for air, against those that are there.",
        Inputs =
        [
            new Input.List("appliances", "Appliances that are not fan-assisted, input of each", [new Input.Quantity("", "Input of one", "Btu/h", 100, 1_000_000)], 0, 20),
            new Input.List("fan_assisted", "Fan-assisted appliances, input of each", [new Input.Quantity("", "Input of one", "Btu/h", 100, 1_000_000)], 0, 20),
            new Input.Quantity("volume", "Room with all rooms that open into it without a door", "ft³", 1, 1_000_000),
            new Input.Choice("method", "Where the air comes from", ["standard", "known infiltration", "indoor openings", "other storey", "outdoor vertical", "outdoor horizontal", "outdoor single"]),
            new Input.Quantity("air_changes", "Air changes an hour by infiltration", "", 0.01, 5),
            new Input.List("openings", "Area of each opening", [new Input.Quantity("", "Area of one", "in²", 0.1, 20_000)], 0, 20),
            new Input.Choice("louver", "Louver of unknown free area over the openings", ["metal", "wood"]),
            new Input.Quantity("vent_area", "Sum of the areas of all vent connectors in the space", "in²", 0.1, 2_000),
        ],
        Sources = ["IFGC 2018, section 304 (IRC G2407)", "NFPA 54, section 9.3"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Numbers("appliances").IsEmpty && given.Numbers("fan_assisted").IsEmpty) return new Refusal("appliances", "none", "at least one input, in appliances or fan_assisted");
        if (given.TextOrNone("method") == "known infiltration" && !given.Has("air_changes")) return new Refusal("air_changes", "missing", "air changes an hour, when method is known infiltration");
        var sheet = new Worksheet(Calculation, given);
        var rules = new RuleTable("air/combustion_air.csv", "", sheet);
        var method = sheet.WordOr("method", "standard", "air from indoors by room volume");
        var input = sheet.Step("All inputs together", given.Numbers("appliances").Sum() + given.Numbers("fan_assisted").Sum(), "Btu/h");
        sheet.Result("input", input, "Btu/h");
        sheet.Caution("Weather-stripping, exhaust fans and a return grille in the room can take air away that the figures count on.");
        sheet.Caution("Without enough air, burning gives off carbon monoxide. Appliances are judged and set only by a licensed contractor.");
        var volume = RequiredVolume(given, sheet, rules, method, input);
        sheet.Result("required_volume", volume, "ft³");
        var (count, each) = Openings(given, sheet, rules, method == "standard" || method == "known infiltration" ? "indoor openings" : method, input);
        sheet.Result("required_openings", new JsonObject { ["count"] = count, ["each"] = Worksheet.Quantity(each, "in²") });
        return Judge(given, sheet, rules, method, volume, count, each);
    }

    private static double RequiredVolume(Given given, Worksheet sheet, RuleTable rules, string method, double input)
    {
        if (method != "known infiltration") return sheet.Step("Room volume for air from indoors: 50 ft³ for each 1,000 Btu/h", rules.Value("volume_per_1000") * input / 1000, "ft³");
        var changes = given.Number("air_changes");
        var most = rules.Value("infiltration_most");
        if (changes > most) changes = sheet.Step("More than 0.60 air changes may not be counted", most);
        var other = rules.Value("infiltration_other") / changes * given.Numbers("appliances").Sum() / 1000;
        var fan = rules.Value("infiltration_fan") / changes * given.Numbers("fan_assisted").Sum() / 1000;
        return sheet.Step($"Room volume at {changes:0.##} air changes an hour: 21 ft³ for each 1,000 Btu/h, 15 where fan-assisted, divided by the air changes", other + fan, "ft³");
    }

    private static (int Count, double Each) Openings(Given given, Worksheet sheet, RuleTable rules, string method, double input) => method switch
    {
        "indoor openings" => (2, sheet.Step("Two openings to rooms on the same storey: 1 in² for each 1,000 Btu/h, not under 100 in²", Math.Max(rules.Value("indoor_least"), rules.Value("indoor_per_1000") * input / 1000), "in²")),
        "other storey" => (1, sheet.Step("Openings to a room on another storey: 2 in² for each 1,000 Btu/h", rules.Value("storeys_per_1000") * input / 1000, "in²")),
        "outdoor vertical" => (2, sheet.Step("Two openings or vertical ducts outdoors: 1 in² for each 4,000 Btu/h", input / rules.Value("outdoor_vertical_btu"), "in²")),
        "outdoor horizontal" => (2, sheet.Step("Two horizontal ducts outdoors: 1 in² for each 2,000 Btu/h", input / rules.Value("outdoor_horizontal_btu"), "in²")),
        _ => (1, Single(given, sheet, rules, input)),
    };

    private static double Single(Given given, Worksheet sheet, RuleTable rules, double input)
    {
        var area = sheet.Step("One opening outdoors: 1 in² for each 3,000 Btu/h", input / rules.Value("outdoor_single_btu"), "in²");
        if (given.NumberOrNone("vent_area") is { } vents) return sheet.Step("but not less than the vent connectors together (from memory)", Math.Max(area, vents), "in²");
        sheet.Caution("The single opening must also be no smaller than all vent connectors together (from memory); their area was not given.");
        return area;
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, RuleTable rules, string method, double volume, int count, double each)
    {
        if (given.NumberOrNone("volume") is { } room && method is "standard" or "known infiltration")
        {
            if (given.Number("volume") >= volume) return sheet.Within($"The room's {given.Number("volume"):#,0} ft³ are at least the {volume:#,0} ft³ needed.");
            if (given.Numbers("openings").IsEmpty) return sheet.Outside($"The room's {given.Number("volume"):#,0} ft³ are less than the {volume:#,0} ft³ needed, and no openings were given.");
        }
        if (given.Numbers("openings").IsEmpty) return sheet.CannotSay("Neither a sufficient room volume nor openings were given, so there is nothing to hold against the need.");
        var share = given.TextOrNone("louver") is { } louver ? rules.Value("louver_" + louver) / 100 : 1;
        if (share < 1) sheet.Step("Free share of a louver of unknown make", 100 * share, "%");
        var free = given.Numbers("openings").Select(opening => opening * share).OrderDescending().Take(count).ToList();
        var least = free.Count < count ? 0 : sheet.Step(count == 1 ? "Free area of the opening" : "Free area of the smaller of the two", free[^1], "in²");
        if (free.Count < count) return sheet.Outside($"{free.Count} opening was given where {count} are needed.");
        return least >= each
            ? sheet.Within($"The openings' {least:0.#} in² each are at least the {each:0.#} in² needed.")
            : sheet.Outside($"The openings' {least:0.#} in² are less than the {each:0.#} in² needed.");
    }
}
