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
        Title = "Wiring: voltage drop",
        Purpose = "The voltage lost along a run of wire and its share of the source, against the code's guidance.",
        Inputs =
        [
            new Input.Choice("size", "Conductor size, AWG or kcmil", [.. Tables.Read("electrical/resistance.csv").Rows.Select(row => row["size"])]) { Required = true, Plain = ConductorSize.Plain },
            new Input.Choice("material", "Conductor metal", ["copper", "aluminum"]) { Required = true, Plain = ConductorSize.Metal },
            new Input.Quantity("length", "Length of the run, one way", "ft", 0.1, 10_000) { Required = true },
            new Input.Quantity("amps", "Current", "A", 0.01, 1200) { Required = true },
            new Input.Quantity("volts", "Voltage at the source", "V", 5, 600) { Required = true },
            new Input.Whole("phases", "1 or 3", 1, 3),
            new Input.Choice("stranding", "Solid or stranded", ["solid", "stranded"]),
            new Input.Quantity("temperature", "Temperature of the conductor", "°C", -40, 90),
            new Input.Choice("part", "Which part of the way", ["branch", "feeder", "both"]),
        ],
        Sources = ["NEC (NFPA 70) chapter 9, Table 8", "NEC (NFPA 70) 210.19 and 215.2 informational notes: guidance, no rule"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.WholeOrNone("phases") == 2) return new Refusal("phases", "2", "1 or 3");
        var sheet = new Worksheet(Calculation, given);
        if (PerThousandFeet(given, sheet) is not { } perThousand)
            return new Refusal("stranding", $"solid at {ConductorSize.Words(given.Text("size"))}", "stranded from 6 AWG on; solid conductors end at 8 AWG");
        var warmed = Warmed(given, sheet, perThousand);
        var volts = Voltage.FromVolts(given.Number("volts"));
        var three = sheet.Or("phases", 1, "", "the usual in a house").Equals(3);
        var factor = three ? Math.Sqrt(3) : 2;
        var resistance = Resistance.FromOhms(sheet.Step(three ? "Resistance of the run × √3, for three phases" : "Resistance there and back: 2 × length × ohms for 1,000 ft / 1,000", factor * given.Number("length") * warmed / 1000, "Ω"));
        var drop = sheet.Step("Drop: current × resistance", (Current.FromAmperes(given.Number("amps")) * resistance).Volts, "V");
        sheet.Result("drop", drop, "V");
        var share = sheet.Result("share", sheet.Step("Share of the source", 100 * drop / volts.Volts, "%"), "%");
        sheet.Result("left", volts.Volts - drop, "V");
        sheet.Caution("Guidance for good running, no rule: an excess is no violation, but lamps dim and motors run hot.");
        sheet.Caution("Direct-current resistance; in steel conduit and in large sizes the true drop is a little more.");
        return Judge(sheet, share);
    }

    private static double? PerThousandFeet(Given given, Worksheet sheet)
    {
        var row = Tables.Read("electrical/resistance.csv").Rows.First(row => row["size"] == given.Text("size"));
        sheet.From(row.Source);
        var stranding = sheet.WordOr("stranding", ConductorSize.AtLeast(given.Text("size"), "8") ? "stranded" : "solid", "house cable is solid to 10 AWG, common practice");
        return row.NumberOrNone($"{given.Text("material")}_{stranding}") is { } ohms
            ? sheet.Step($"{ConductorSize.Words(given.Text("size"))} {given.Text("material")}, {stranding}, for 1,000 ft at 75 °C", ohms, "Ω")
            : null;
    }

    private static double Warmed(Given given, Worksheet sheet, double perThousand)
    {
        var celsius = sheet.Or("temperature", TableCelsius, "°C", "the table's own, a conductor in use");
        if (Math.Abs(celsius - TableCelsius) < 1e-9) return perThousand;
        var row = Tables.Read("electrical/temperature_coefficient.csv").Rows.First(row => row["material"] == given.Text("material"));
        sheet.From(row.Source);
        sheet.Caution("The resistance was taken at another temperature than the code's 75 °C; a conductor in use is warmer than the room.");
        return sheet.Step($"At {celsius:0.#} °C: × [1 + {row.Number("per_celsius")} × ({celsius:0.#} - 75)]", perThousand * (1 + row.Number("per_celsius") * (celsius - TableCelsius)), "Ω");
    }

    private static Checked<Working> Judge(Worksheet sheet, double share)
    {
        var part = sheet.WordOr("part", "branch", "to the farthest outlet");
        var row = Tables.Read("electrical/voltage_drop.csv").Rows.First(row => row["part"] == part);
        sheet.From($"NEC (NFPA 70) {row["section"]}: guidance, no rule");
        var most = sheet.Step("Guidance: at most", row.Number("percent"), "%");
        return share > most
            ? sheet.Outside($"The drop of {share:0.0} % is over the guidance figure of {most:0} %.")
            : sheet.Within($"The drop of {share:0.0} % is within the guidance figure of {most:0} %.");
    }
}
