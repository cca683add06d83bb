using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>Whether a section of gas pipe carries what hangs on it, by the longest-length method.</summary>
internal static class GasPipe
{
    private const string File = "air/gas_pipe.csv";

    private static ImmutableArray<string> Sizes { get; } = ["1/2", "3/4", "1", "1-1/4"];

    internal static Calculation Calculation { get; } = new()
    {
        Name = "gas-pipe",
        Inputs =
        [
            new Input.List("appliances", "gas-pipe.input.appliances",
            [new Input.Quantity("", "gas-pipe.input.appliances.each", "Btu/h", 100, 5_000_000)], 1, 50) { Required = true },
            new Input.Quantity("longest_length", "gas-pipe.input.longest-length", "ft", 1, 5_000) { Required = true },
            new Input.Choice("size", "gas-pipe.input.size", Sizes) { Plain = Plain },
            new Input.Quantity("heating_value", "gas-pipe.input.heating-value", "", 400, 3_500),
            new Input.Quantity("specific_gravity", "gas-pipe.input.specific-gravity", "", 0.35, 2.1),
            new Input.Choice("table", "gas-pipe.input.table", ["IFGC 2018", "NFPA 54 older"]),
        ],
        Sources = ["IFGC 2018, Table 402.4(2) (= IRC G2413.4(1)) and A.3.1, longest-length method", "IFGC 2018, Table A.2.4"],
        Work = Work,
    };

    // 3/4 in, 3/4", 1 1/4 and 1.25 are spellings of the trade.
    private static string Plain(string written)
    {
        var size = written.Replace("inch", "", StringComparison.OrdinalIgnoreCase).Replace("in", "", StringComparison.OrdinalIgnoreCase)
            .Replace("\"", "", StringComparison.Ordinal).Trim();
        return size switch { "0.5" => "1/2", "0.75" => "3/4", "1.25" or "1 1/4" => "1-1/4", _ => size };
    }

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        sheet.From("IFGC 2018, A.3.1, longest-length method");
        var heat = sheet.Or("heating_value", 1000, "Btu/ft³", "gas-pipe.why.usual-natural-gas-ask");
        var inputs = given.Numbers("appliances").Aggregate(HeatRate.FromBtuPerHour(0), (sum, one) => sum + HeatRate.FromBtuPerHour(one));
        var demand = GasFlow.FromCubicFeetPerHour(sheet.Step("gas-pipe.step.demand-inputs-heating-value", inputs.BtuPerHour / heat,
            "ft³/h"));
        sheet.Result("demand", demand.CubicFeetPerHour, "ft³/h");
        sheet.Caution("gas-pipe.caution.estimate-pipe-hidden-walls");
        sheet.Caution("gas-pipe.caution.steel-pipe-low-pressure");
        sheet.Caution("gas-pipe.caution.gas-piping-opened-only");
        var name = sheet.WordOr("table", "IFGC 2018", "gas-pipe.why.newer-two-they-differ");
        var length = given.Number("longest_length");
        var row = Tables.Read(File).Rows.FirstOrDefault(row => row["table"] == name && row.Number("length") >= length);
        if (row is null) return OffTable(sheet, new("gas-pipe.because.off-table", ("length", length, "ft")));
        sheet.From(row.Source);
        sheet.Step("gas-pipe.step.row-table-length-itself", row.Number("length"), "ft");
        return Judge(given, sheet, row, demand.CubicFeetPerHour, Gravity(given, sheet));
    }

    private static double Gravity(Given given, Worksheet sheet)
    {
        var gravity = sheet.Or("specific_gravity", 0.60, "", "gas-pipe.why.natural-gas-table-own");
        if (gravity.Equals(0.60)) return 1;
        var table = Tables.Read("air/gas_gravity.csv");
        sheet.From(table.Source);
        // A heavier gas passes less: the next heavier row is never too favourable.
        return sheet.Step("gas-pipe.step.multiplier-gas-weight-row", table.Rows.First(row => row.Number("gravity") >= gravity - 1e-9)
            .Number("multiplier"));
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, TableRow row, double demand, double multiplier)
    {
        double Capacity(string size) => row.Number(size) * multiplier;
        var smallest = Sizes.FirstOrDefault(size => Capacity(size) >= demand);
        if (smallest is null) sheet.NoResult("smallest_size");
        else
        {
            sheet.Step("gas-pipe.step.smallest-size-carries", Capacity(smallest), "ft³/h", ("smallest", smallest));
            sheet.Result("smallest_size", smallest);
        }
        if (given.TextOrNone("size") is not { } size)
        {
            sheet.NoResult("capacity");
            return sheet.CannotSay(smallest is null ? new Said("gas-pipe.because.no-size-table-carries")
                : new Said("gas-pipe.because.demand-asks-pipe-size", ("smallest", smallest)));
        }
        var capacity = sheet.Result("capacity", sheet.Step("gas-pipe.step.capacity-pipe", Capacity(size), "ft³/h", ("size", size)),
            "ft³/h");
        return capacity >= demand
            ? sheet.Within("gas-pipe.because.pipe-carries-least-asked", ("size", size), ("capacity", capacity, "ft³/h"), ("demand", demand))
            : sheet.Outside("gas-pipe.because.pipe-carries-less-asked", ("size", size), ("capacity", capacity, "ft³/h"),
                ("demand", demand));
    }

    private static Checked<Working> OffTable(Worksheet sheet, Said because)
    {
        sheet.NoResult("capacity");
        sheet.NoResult("smallest_size");
        return sheet.CannotSay(because);
    }
}
