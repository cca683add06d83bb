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
        Title = "Fuel gas: pipe size",
        Purpose = "Whether a section of steel gas pipe carries the appliances beyond it, by the longest-length method.",
        Inputs =
        [
            new Input.List("appliances", "Input of each appliance that the section feeds", [new Input.Quantity("", "Input of one", "Btu/h", 100, 5_000_000)], 1, 50) { Required = true },
            new Input.Quantity("longest_length", "Pipe from the meter to the farthest outlet of the whole system", "ft", 1, 5_000) { Required = true },
            new Input.Choice("size", "Nominal size of the section, in", Sizes) { Plain = Plain },
            new Input.Quantity("heating_value", "Heat in a cubic foot of the gas, Btu", "", 400, 3_500),
            new Input.Quantity("specific_gravity", "Weight of the gas against air", "", 0.35, 2.1),
            new Input.Choice("table", "Which edition's table", ["IFGC 2018", "NFPA 54 older"]),
        ],
        Sources = ["IFGC 2018, Table 402.4(2) (= IRC G2413.4(1)) and A.3.1, longest-length method", "IFGC 2018, Table A.2.4"],
        Work = Work,
    };

    // 3/4 in, 3/4", 1 1/4 and 1.25 are spellings of the trade.
    private static string Plain(string written)
    {
        var size = written.Replace("inch", "", StringComparison.OrdinalIgnoreCase).Replace("in", "", StringComparison.OrdinalIgnoreCase).Replace("\"", "", StringComparison.Ordinal).Trim();
        return size switch { "0.5" => "1/2", "0.75" => "3/4", "1.25" or "1 1/4" => "1-1/4", _ => size };
    }

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        sheet.From("IFGC 2018, A.3.1, longest-length method");
        var heat = sheet.Or("heating_value", 1000, "Btu/ft³", "usual for natural gas; ask the supplier");
        var inputs = given.Numbers("appliances").Aggregate(HeatRate.FromBtuPerHour(0), (sum, one) => sum + HeatRate.FromBtuPerHour(one));
        var demand = GasFlow.FromCubicFeetPerHour(sheet.Step("Demand: inputs / heating value", inputs.BtuPerHour / heat, "ft³/h"));
        sheet.Result("demand", demand.CubicFeetPerHour, "ft³/h");
        sheet.Caution("An estimate of pipe hidden in walls: say that it appears undersized, for a gas fitter to verify, never that it is.");
        sheet.Caution("For steel pipe, low pressure and a drop of 0.5 in w.c.; corrugated tubing and higher pressures have tables of their own.");
        sheet.Caution("Gas piping is opened only by a licensed contractor; a smell of gas means leaving the house and calling the utility from outside.");
        var name = sheet.WordOr("table", "IFGC 2018", "the newer of the two; they differ by up to 3 %");
        var length = given.Number("longest_length");
        var row = Tables.Read(File).Rows.FirstOrDefault(row => row["table"] == name && row.Number("length") >= length);
        if (row is null) return OffTable(sheet, $"At {length:0} ft the table has no row.");
        sheet.From(row.Source);
        sheet.Step("Row of the table: the length itself or the next longer", row.Number("length"), "ft");
        return Judge(given, sheet, row, demand.CubicFeetPerHour, Gravity(given, sheet));
    }

    private static double Gravity(Given given, Worksheet sheet)
    {
        var gravity = sheet.Or("specific_gravity", 0.60, "", "natural gas, the table's own");
        if (gravity.Equals(0.60)) return 1;
        var table = Tables.Read("air/gas_gravity.csv");
        sheet.From(table.Source);
        // A heavier gas passes less: the next heavier row is never too favourable.
        return sheet.Step("Multiplier for the gas's weight, at the row itself or the next heavier", table.Rows.First(row => row.Number("gravity") >= gravity - 1e-9).Number("multiplier"));
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, TableRow row, double demand, double multiplier)
    {
        double Capacity(string size) => row.Number(size) * multiplier;
        var smallest = Sizes.FirstOrDefault(size => Capacity(size) >= demand);
        if (smallest is null) sheet.NoResult("smallest_size");
        else
        {
            sheet.Step($"Smallest size that carries it: {smallest} in", Capacity(smallest), "ft³/h");
            sheet.Result("smallest_size", smallest);
        }
        if (given.TextOrNone("size") is not { } size)
        {
            sheet.NoResult("capacity");
            return sheet.CannotSay(smallest is null ? "No size of the table carries this demand." : $"The demand asks for {smallest} in pipe; the size that is there was not given.");
        }
        var capacity = sheet.Result("capacity", sheet.Step($"Capacity of {size} in pipe", Capacity(size), "ft³/h"), "ft³/h");
        return capacity >= demand
            ? sheet.Within($"{size} in pipe carries {capacity:0} ft³/h, at least the {demand:0} asked of it.")
            : sheet.Outside($"{size} in pipe carries {capacity:0} ft³/h, less than the {demand:0} asked of it; it appears undersized.");
    }

    private static Checked<Working> OffTable(Worksheet sheet, string because)
    {
        sheet.NoResult("capacity");
        sheet.NoResult("smallest_size");
        return sheet.CannotSay(because);
    }
}
