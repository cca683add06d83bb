using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>Voltage lost along a run, by the resistance of its conductors.</summary>
internal static class VoltageDrop
{
    // Chapter 9, Table 8 is for conductors at 75 °C; tables for 20 °C give a drop some 18 % too small.
    private const double TableCelsius = 75;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "voltage-drop",
        Inputs =
        [
            new Input.Choice("size", "voltage-drop.input.size",
            [.. Tables.Read("electrical/resistance.csv").Rows.Select(row => row["size"])]) { Required = true, Plain = ConductorSize.Plain },
            new Input.Choice("material", "voltage-drop.input.material",
                ["copper", "aluminum"]) { Required = true, Plain = ConductorSize.Metal },
            new Input.Quantity("length", "voltage-drop.input.length", "ft", 0.1, 10_000) { Required = true },
            new Input.Quantity("amps", "voltage-drop.input.amps", "A", 0.01, 1200) { Required = true },
            new Input.Quantity("volts", "voltage-drop.input.volts", "V", 5, 600) { Required = true },
            new Input.Whole("phases", "voltage-drop.input.phases", 1, 3),
            new Input.Choice("stranding", "voltage-drop.input.stranding", ["solid", "stranded"]),
            new Input.Quantity("temperature", "voltage-drop.input.temperature", "°C", -40, 90),
            new Input.Choice("part", "voltage-drop.input.part", ["branch", "feeder", "both"]),
        ],
        Sources = ["NEC (NFPA 70) chapter 9, Table 8", "NEC (NFPA 70) 210.19 and 215.2 informational notes: guidance, no rule"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.WholeOrNone("phases") == 2) return new Refusal("phases", Said.Verbatim("2"), "voltage-drop.allowed.or");
        var sheet = new Worksheet(Calculation, given);
        if (PerThousandFeet(given, sheet) is not { } perThousand)
            return new Refusal("stranding", new("voltage-drop.given.solid", ("size", ConductorSize.Words(given.Text("size")))),
                "voltage-drop.allowed.stranded-awg-solid-conductors");
        var warmed = Warmed(given, sheet, perThousand);
        var volts = Voltage.FromVolts(given.Number("volts"));
        var three = sheet.Or("phases", 1, "", "voltage-drop.why.usual-house").Equals(3);
        var factor = three ? Math.Sqrt(3) : 2;
        var resistance = Resistance.FromOhms(sheet.Step(three ? new Said("voltage-drop.step.resistance-run-three-phases")
            : new Said("voltage-drop.step.resistance-back-length-ohms"), factor * given.Number("length") * warmed / 1000, "Ω"));
        var drop = sheet.Step("voltage-drop.step.drop-current-resistance", (Current.FromAmperes(given.Number("amps")) * resistance).Volts,
            "V");
        sheet.Result("drop", drop, "V");
        var share = sheet.Result("share", sheet.Step("voltage-drop.step.share-source", 100 * drop / volts.Volts, "%"), "%");
        sheet.Result("left", volts.Volts - drop, "V");
        sheet.Caution("voltage-drop.caution.guidance-good-running-no");
        sheet.Caution("voltage-drop.caution.direct-current-resistance-steel");
        return Judge(sheet, share);
    }

    private static double? PerThousandFeet(Given given, Worksheet sheet)
    {
        var row = Tables.Read("electrical/resistance.csv").Rows.First(row => row["size"] == given.Text("size"));
        sheet.From(row.Source);
        var stranding = sheet.WordOr("stranding", ConductorSize.AtLeast(given.Text("size"), "8")
            ? "stranded" : "solid", "voltage-drop.why.house-cable-solid-awg");
        return row.NumberOrNone($"{given.Text("material")}_{stranding}") is { } ohms
            ? sheet.Step("voltage-drop.step.ft", ohms, "Ω", ("size", ConductorSize.Words(given.Text("size"))),
            ("material", given.Text("material")), ("stranding", stranding))
            : null;
    }

    private static double Warmed(Given given, Worksheet sheet, double perThousand)
    {
        var celsius = sheet.Or("temperature", TableCelsius, "°C", "voltage-drop.why.table-own-conductor-use");
        if (Math.Abs(celsius - TableCelsius) < 1e-9) return perThousand;
        var row = Tables.Read("electrical/temperature_coefficient.csv").Rows.First(row => row["material"] == given.Text("material"));
        sheet.From(row.Source);
        sheet.Caution("voltage-drop.caution.resistance-taken-another");
        return sheet.Step("voltage-drop.step.at", perThousand * (1 + row.Number("per_celsius") * (celsius - TableCelsius)), "Ω",
            ("celsius", celsius, "°C"), ("per-celsius", row.Number("per_celsius")), ("again", celsius));
    }

    private static Checked<Working> Judge(Worksheet sheet, double share)
    {
        var part = sheet.WordOr("part", "branch", "voltage-drop.why.farthest-outlet");
        var row = Tables.Read("electrical/voltage_drop.csv").Rows.First(row => row["part"] == part);
        sheet.From($"NEC (NFPA 70) {row["section"]}: guidance, no rule");
        var most = sheet.Step("voltage-drop.step.guidance-most", row.Number("percent"), "%");
        return share > most
            ? sheet.Outside("voltage-drop.because.drop-over-guidance-figure", ("share", share, "%"), ("most", most, "%"))
            : sheet.Within("voltage-drop.because.drop-within-guidance-figure", ("share", share, "%"), ("most", most, "%"));
    }
}
