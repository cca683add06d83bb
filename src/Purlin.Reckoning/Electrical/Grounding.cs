using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>The sizes that ground and bond a service.</summary>
internal static class Grounding
{
    // Beyond the table a bonding jumper has an eighth of the service conductor's area (NEC 250.28(D)(1), 250.102(C)).
    private const double JumperShare = 0.125;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "grounding",
        Title = "Grounding: sizes at the service",
        Purpose = "Sizes of the grounding electrode conductor, the equipment grounding conductor and the main bonding jumper.",
        Inputs =
        [
            new Input.Choice("size", "Largest ungrounded service conductor, AWG or kcmil", ConductorSize.All) { Required = true, Plain = ConductorSize.Plain },
            new Input.Choice("material", "Its metal", ["copper", "aluminum"]) { Required = true, Plain = ConductorSize.Metal },
            new Input.Quantity("service_rating", "Rating of the service's overcurrent device", "A", 15, 1200) { Required = true },
            new Input.Choice("electrode", "The electrode, where the conductor goes to that alone", ["water pipe", "rod, pipe or plate", "concrete-encased"]),
            new Input.Choice("electrode_conductor", "Size of the electrode conductor that is there", ConductorSize.All) { Plain = ConductorSize.Plain },
            new Input.Choice("electrode_conductor_material", "Its metal", ["copper", "aluminum"]) { Plain = ConductorSize.Metal },
        ],
        Sources = ["NEC (NFPA 70) Table 250.66", "NEC (NFPA 70) Table 250.122", "NEC (NFPA 70) 250.28(D), Table 250.102(C)(1)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var (size, material) = (given.Text("size"), given.Text("material"));
        var table = Tables.Read("electrical/electrode_conductor.csv");
        var row = table.Rows.First(row => row[$"{material}_up_to"].Length == 0 || ConductorSize.AtLeast(row[$"{material}_up_to"], size));
        sheet.From(table.Source);
        var electrode = Limited(given, sheet, row["electrode_copper"], row["electrode_aluminum"]);
        sheet.Result("electrode_conductor", Sizes(electrode.Copper, electrode.Aluminum));
        sheet.Say($"Grounding electrode conductor for {ConductorSize.Words(size)} {material}: {ConductorSize.Words(electrode.Copper)} copper{(electrode.Aluminum.Length > 0 ? $" or {ConductorSize.Words(electrode.Aluminum)} aluminum" : "")}");
        Equipment(given, sheet);
        Jumper(sheet, size, material, row);
        sheet.Caution("Aluminum electrode conductors may not end outdoors within 18 in of the earth (250.64(A), from memory).");
        sheet.Caution("Grounding conductors are never taken off a live service; a licensed electrician alters them.");
        return Judge(given, sheet, electrode);
    }

    private static (string Copper, string Aluminum) Limited(Given given, Worksheet sheet, string copper, string aluminum)
    {
        var limit = Tables.Read("electrical/electrode_limits.csv").Rows.FirstOrDefault(row => row["electrode"] == given.TextOrNone("electrode"));
        if (limit is null || !ConductorSize.AtLeast(copper, limit["copper"])) return (copper, aluminum);
        sheet.From($"NEC (NFPA 70) {limit["section"]}");
        sheet.Say($"To a {limit["electrode"]} electrode alone no more than {ConductorSize.Words(limit["copper"])} copper is ever asked for ({limit["section"]})");
        return (limit["copper"], limit["aluminum"]);
    }

    private static void Equipment(Given given, Worksheet sheet)
    {
        var row = Tables.Read("electrical/equipment_conductor.csv").Rows.First(row => given.Number("service_rating") <= row.Number("up_to_amps"));
        sheet.From(row.Source);
        sheet.Say($"Equipment grounding conductor behind {given.Number("service_rating"):0} A: {ConductorSize.Words(row["copper"])} copper or {ConductorSize.Words(row["aluminum"])} aluminum");
        sheet.Result("equipment_conductor", Sizes(row["copper"], row["aluminum"]));
    }

    private static void Jumper(Worksheet sheet, string size, string material, TableRow row)
    {
        sheet.From("NEC (NFPA 70) 250.28(D), Table 250.102(C)(1)");
        if (row[$"{material}_up_to"].Length > 0)
        {
            sheet.Say($"Main bonding jumper, by the same steps as the electrode conductor and without its limits: {ConductorSize.Words(row["electrode_copper"])} copper or {ConductorSize.Words(row["electrode_aluminum"])} aluminum");
            sheet.Result("main_bonding_jumper", Sizes(row["electrode_copper"], row["electrode_aluminum"]));
            return;
        }
        var least = sheet.Step("Main bonding jumper: an eighth of the service conductor, of the same metal", JumperShare * ConductorSize.Kcmil(size)!.Value, "kcmil");
        var jumper = ConductorSize.All.First(candidate => ConductorSize.Kcmil(candidate) >= least || (candidate == "3/0" && least <= 167.8) || (candidate == "4/0" && least <= 211.6));
        sheet.Result("main_bonding_jumper", new JsonObject { [material] = jumper });
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, (string Copper, string Aluminum) electrode)
    {
        if (given.TextOrNone("electrode_conductor") is not { } there)
            return sheet.CannotSay("These are the sizes asked for; the size that is there was not given, so there is nothing to hold against them.");
        var metal = sheet.WordOr("electrode_conductor_material", "copper", "the usual metal");
        var asked = metal == "copper" ? electrode.Copper : electrode.Aluminum;
        if (asked.Length == 0) return sheet.CannotSay("The rule gives no size in aluminum for this electrode.");
        return ConductorSize.AtLeast(there, asked)
            ? sheet.Within($"The electrode conductor of {ConductorSize.Words(there)} {metal} is not smaller than the {ConductorSize.Words(asked)} asked for.")
            : sheet.Outside($"The electrode conductor of {ConductorSize.Words(there)} {metal} is smaller than the {ConductorSize.Words(asked)} asked for.");
    }

    private static JsonObject Sizes(string copper, string aluminum) => new() { ["copper"] = copper, ["aluminum"] = aluminum.Length > 0 ? aluminum : null };
}
