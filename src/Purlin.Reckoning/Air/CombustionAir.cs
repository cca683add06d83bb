using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Air;

/// <summary>Whether fuel-burning appliances get the air they burn and vent with.</summary>
internal static class CombustionAir
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "combustion-air",
        Inputs =
        [
            new Input.List("appliances", "combustion-air.input.appliances",
            [new Input.Quantity("", "combustion-air.input.appliances.each", "Btu/h", 100, 1_000_000)], 0, 20),
            new Input.List("fan_assisted", "combustion-air.input.fan-assisted",
                [new Input.Quantity("", "combustion-air.input.fan-assisted.each", "Btu/h", 100, 1_000_000)], 0, 20),
            new Input.Quantity("volume", "combustion-air.input.volume", "ft³", 1, 1_000_000),
            new Input.Choice("method", "combustion-air.input.method",
                ["standard", "known infiltration", "indoor openings", "other storey", "outdoor vertical", "outdoor horizontal",
                "outdoor single"]),
            new Input.Quantity("air_changes", "combustion-air.input.air-changes", "", 0.01, 5),
            new Input.List("openings", "combustion-air.input.openings",
                [new Input.Quantity("", "combustion-air.input.openings.each", "in²", 0.1, 20_000)], 0, 20),
            new Input.Choice("louver", "combustion-air.input.louver", ["metal", "wood"]),
            new Input.Quantity("vent_area", "combustion-air.input.vent-area", "in²", 0.1, 2_000),
        ],
        Sources = ["IFGC 2018, section 304 (IRC G2407)", "NFPA 54, section 9.3"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Numbers("appliances").IsEmpty && given.Numbers("fan_assisted").IsEmpty)
            return new Refusal("appliances", "combustion-air.given.none", "combustion-air.allowed.least-input-appliances-fan");
        if (given.TextOrNone("method") == "known infiltration" && !given.Has("air_changes"))
            return new Refusal("air_changes", "refused.missing", "combustion-air.allowed.air-changes-hour-when");
        var sheet = new Worksheet(Calculation, given);
        var rules = new RuleTable("air/combustion_air.csv", "", sheet);
        var method = sheet.WordOr("method", "standard", "combustion-air.why.air-indoors-room-volume");
        var input = sheet.Step("combustion-air.step.inputs-together", given.Numbers("appliances").Sum()
            + given.Numbers("fan_assisted").Sum(), "Btu/h");
        sheet.Result("input", input, "Btu/h");
        sheet.Caution("combustion-air.caution.weather-stripping-exhaust-fans");
        sheet.Caution("combustion-air.caution.without-enough-air-burning");
        var volume = RequiredVolume(given, sheet, rules, method, input);
        sheet.Result("required_volume", volume, "ft³");
        var (count, each) = Openings(given, sheet, rules, method == "standard" || method == "known infiltration"
            ? "indoor openings" : method, input);
        sheet.Result("required_openings", new JsonObject { ["count"] = count, ["each"] = Worksheet.Quantity(each, "in²") });
        return Judge(given, sheet, rules, method, volume, count, each);
    }

    private static double RequiredVolume(Given given, Worksheet sheet, RuleTable rules, string method, double input)
    {
        if (method != "known infiltration")
            return sheet.Step("combustion-air.step.room-volume-air-indoors", rules.Value("volume_per_1000") * input / 1000, "ft³");
        var changes = given.Number("air_changes");
        var most = rules.Value("infiltration_most");
        if (changes > most) changes = sheet.Step("combustion-air.step.more-air-changes-may", most);
        var other = rules.Value("infiltration_other") / changes * given.Numbers("appliances").Sum() / 1000;
        var fan = rules.Value("infiltration_fan") / changes * given.Numbers("fan_assisted").Sum() / 1000;
        return sheet.Step("combustion-air.step.room-volume-air-changes", other + fan, "ft³", ("changes", changes));
    }

    private static (int Count, double Each) Openings(Given given, Worksheet sheet, RuleTable rules, string method, double input) =>
        method switch
        {
            "indoor openings" => (2,
                sheet.Step("combustion-air.step.two-openings-rooms-same",
                Math.Max(rules.Value("indoor_least"), rules.Value("indoor_per_1000") * input / 1000), "in²")),
            "other storey" => (1, sheet.Step("combustion-air.step.openings-room-another-story", rules.Value("storeys_per_1000") * input / 1000,
                "in²")),
            "outdoor vertical" => (2,
                sheet.Step("combustion-air.step.two-openings-vertical-ducts", input / rules.Value("outdoor_vertical_btu"), "in²")),
            "outdoor horizontal" =>
                (2, sheet.Step("combustion-air.step.two-horizontal-ducts-outdoors", input / rules.Value("outdoor_horizontal_btu"), "in²")),
            _ => (1, Single(given, sheet, rules, input)),
        };

    private static double Single(Given given, Worksheet sheet, RuleTable rules, double input)
    {
        var area = sheet.Step("combustion-air.step.opening-outdoors-btu", input / rules.Value("outdoor_single_btu"), "in²");
        if (given.NumberOrNone("vent_area") is { } vents)
            return sheet.Step("combustion-air.step.not-less-vent-connectors", Math.Max(area, vents), "in²");
        sheet.Caution("combustion-air.caution.single-opening-must-also");
        return area;
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, RuleTable rules, string method, double volume, int count,
        double each)
    {
        if (given.NumberOrNone("volume") is { } room && method is "standard" or "known infiltration")
        {
            if (given.Number("volume") >= volume)
                return sheet.Within("combustion-air.because.room-least-needed", ("volume", given.Number("volume"), "ft³"),
                    ("needed", volume, "ft³"));
            if (given.Numbers("openings").IsEmpty)
                return sheet.Outside("combustion-air.because.room-less-needed-no", ("volume", given.Number("volume"), "ft³"),
                    ("needed", volume, "ft³"));
        }
        if (given.Numbers("openings").IsEmpty) return sheet.CannotSay("combustion-air.because.neither-sufficient-room-volume");
        var share = given.TextOrNone("louver") is { } louver ? rules.Value("louver_" + louver) / 100 : 1;
        if (share < 1) sheet.Step("combustion-air.step.free-share-louver-unknown", 100 * share, "%");
        var free = given.Numbers("openings").Select(opening => opening * share).OrderDescending().Take(count).ToList();
        var least = free.Count < count ? 0
            : sheet.Step(count == 1
            ? new Said("combustion-air.step.free-area-opening") : new Said("combustion-air.step.free-area-smaller-two"), free[^1], "in²");
        if (free.Count < count)
            return sheet.Outside("combustion-air.because.opening-given-where-needed", ("found", free.Count), ("needed", count));
        return least >= each
            ? sheet.Within("combustion-air.because.openings-least-needed", ("least", least, "in²"), ("each", each, "in²"))
            : sheet.Outside("combustion-air.because.openings-less-needed", ("least", least, "in²"), ("each", each, "in²"));
    }
}
