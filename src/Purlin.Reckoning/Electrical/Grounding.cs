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
        Inputs =
        [
            new Input.Choice("size", "grounding.input.size", ConductorSize.All) { Required = true, Plain = ConductorSize.Plain },
            new Input.Choice("material", "grounding.input.material",
                ["copper", "aluminum"]) { Required = true, Plain = ConductorSize.Metal },
            new Input.Quantity("service_rating", "grounding.input.service-rating", "A", 15, 1200) { Required = true },
            new Input.Choice("electrode", "grounding.input.electrode", ["water pipe", "rod, pipe or plate", "concrete-encased"]),
            new Input.Choice("electrode_conductor", "grounding.input.electrode-conductor",
                ConductorSize.All) { Plain = ConductorSize.Plain },
            new Input.Choice("electrode_conductor_material", "grounding.input.electrode-conductor-material",
                ["copper", "aluminum"]) { Plain = ConductorSize.Metal },
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
        sheet.Say("grounding.step.grounding-electrode-conductor", ("size", ConductorSize.Words(size)), ("material", Words.Of(material)),
            ("copper", ConductorSize.Words(electrode.Copper)),
            ("aluminum", electrode.Aluminum.Length > 0 ? ConductorSize.Words(electrode.Aluminum) : ""));
        Equipment(given, sheet);
        Jumper(sheet, size, material, row);
        sheet.Caution("grounding.caution.aluminum-electrode-conductors-may");
        sheet.Caution("grounding.caution.grounding-conductors-never-taken");
        return Judge(given, sheet, electrode);
    }

    private static (string Copper, string Aluminum) Limited(Given given, Worksheet sheet, string copper, string aluminum)
    {
        var limit = Tables.Read("electrical/electrode_limits.csv").Rows.FirstOrDefault(row => row["electrode"] == given.TextOrNone("electrode"));
        if (limit is null || !ConductorSize.AtLeast(copper, limit["copper"])) return (copper, aluminum);
        sheet.From($"NEC (NFPA 70) {limit["section"]}");
        sheet.Say("grounding.step.electrode-alone-no-more", ("electrode", Words.Of(limit["electrode"])),
            ("copper", ConductorSize.Words(limit["copper"])), ("section", limit["section"]));
        return (limit["copper"], limit["aluminum"]);
    }

    private static void Equipment(Given given, Worksheet sheet)
    {
        var row = Tables.Read("electrical/equipment_conductor.csv").Rows.First(row => given.Number("service_rating") <= row.Number("up_to_amps"));
        sheet.From(row.Source);
        sheet.Say("grounding.step.equipment-grounding-conductor", ("service-rating", given.Number("service_rating"), "A"),
            ("copper", ConductorSize.Words(row["copper"])), ("aluminum", ConductorSize.Words(row["aluminum"])));
        sheet.Result("equipment_conductor", Sizes(row["copper"], row["aluminum"]));
    }

    private static void Jumper(Worksheet sheet, string size, string material, TableRow row)
    {
        sheet.From("NEC (NFPA 70) 250.28(D), Table 250.102(C)(1)");
        if (row[$"{material}_up_to"].Length > 0)
        {
            sheet.Say("grounding.step.main-bonding-jumper-same", ("electrode-copper", ConductorSize.Words(row["electrode_copper"])),
                ("electrode-aluminum", ConductorSize.Words(row["electrode_aluminum"])));
            sheet.Result("main_bonding_jumper", Sizes(row["electrode_copper"], row["electrode_aluminum"]));
            return;
        }
        var least = sheet.Step("grounding.step.main-bonding-jumper-eighth", JumperShare * ConductorSize.Kcmil(size)!.Value, "kcmil");
        var jumper = ConductorSize.All.First(candidate => ConductorSize.Kcmil(candidate) >= least || (candidate == "3/0" && least <= 167.8)
            || (candidate == "4/0" && least <= 211.6));
        sheet.Result("main_bonding_jumper", new JsonObject { [material] = jumper });
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, (string Copper, string Aluminum) electrode)
    {
        if (given.TextOrNone("electrode_conductor") is not { } there)
            return sheet.CannotSay("grounding.because.these-sizes-asked-size");
        var metal = sheet.WordOr("electrode_conductor_material", "copper", "grounding.why.usual-metal");
        var asked = metal == "copper" ? electrode.Copper : electrode.Aluminum;
        if (asked.Length == 0) return sheet.CannotSay("grounding.because.rule-gives-no-size");
        return ConductorSize.AtLeast(there, asked)
            ? sheet.Within("grounding.because.electrode-conductor-not-smaller", ("there", ConductorSize.Words(there)),
                ("metal", Words.Of(metal)), ("asked", ConductorSize.Words(asked)))
            : sheet.Outside("grounding.because.electrode-conductor-smaller-asked", ("there", ConductorSize.Words(there)),
                ("metal", Words.Of(metal)), ("asked", ConductorSize.Words(asked)));
    }

    private static JsonObject Sizes(string copper, string aluminum) =>
        new() { ["copper"] = copper, ["aluminum"] = aluminum.Length > 0 ? aluminum : null };
}
