using System.Collections.Immutable;
using System.Globalization;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>Demand of household cooking equipment by NEC Table 220.55 and its notes 1 to 3.</summary>
internal static class Cooking
{
    private const string File = "electrical/cooking.csv";

    // Limits of the table's columns and notes, kW: column A below 3.5, column B to 8.75, column C to 12 (NEC Table 220.55).
    private const double ColumnAEnds = 3.5;
    private const double ColumnBEnds = 8.75;
    private const double ColumnCEnds = 12;

    // Notes 1 and 2: 5 % for each kW above 12, a remaining half counting as one.
    private const double RaisePerKilowatt = 0.05;

    /// <summary>The demand; each choice is a step.</summary>
    /// <param name="ranges">Ratings, kW.</param>
    /// <param name="columnsAllowed"><c>smaller</c> or <c>column C</c>.</param>
    /// <param name="rules">The edition.</param>
    /// <param name="sheet">Where the steps go.</param>
    internal static ApparentPower Demand(ImmutableArray<double> ranges, string columnsAllowed, LoadRules rules, Worksheet sheet)
    {
        if (ranges.IsEmpty) return ApparentPower.FromVoltAmperes(0);
        sheet.From($"NEC (NFPA 70) {rules.Edition}, Table {(rules.Edition >= 2026 ? "120.55 (table number from memory)" : "220.55")}");
        var floor = rules.Value("cooking_floor_kw");
        ImmutableArray<double> small = [.. ranges.Where(kilowatts => kilowatts <= floor)];
        ImmutableArray<double> large = [.. ranges.Where(kilowatts => kilowatts > floor)];
        var nameplate = small.IsEmpty
            ? 0 : sheet.Step("cooking.step.cooking-units-less-nameplate", small.Sum(), "kW", ("floor", floor, "kW"));
        if (large.IsEmpty) return ApparentPower.FromKilovoltAmperes(nameplate);
        var demand = ColumnC(large, sheet);
        if (columnsAllowed == "smaller" && ColumnsAandB(large) is { } shares && shares < demand)
            demand = sheet.Step("cooking.step.note-kw-less-nameplates", shares, "kW");
        return ApparentPower.FromKilovoltAmperes(sheet.Step("cooking.step.cooking-demand", demand + nameplate, "kW"));
    }

    private static double ColumnC(ImmutableArray<double> ranges, Worksheet sheet)
    {
        var demand = sheet.Step("cooking.step.table-column-cooking-unit", Row(ranges.Length).Number("column_c"), "kW",
            ("count", ranges.Length));
        var average = ranges.Average(kilowatts => Math.Max(kilowatts, ColumnCEnds));
        if (average <= ColumnCEnds) return demand;
        var over = Math.Floor(average - ColumnCEnds + 0.5);
        sheet.Step("cooking.step.notes-average-rating-anything", average, "kW");
        return sheet.Step("cooking.step.raised-above", demand * (1 + RaisePerKilowatt * over), "kW", ("over", over, "kW"));
    }

    private static double? ColumnsAandB(ImmutableArray<double> ranges)
    {
        if (ranges.Any(kilowatts => kilowatts > ColumnBEnds)) return null;
        ImmutableArray<double> a = [.. ranges.Where(kilowatts => kilowatts < ColumnAEnds)];
        ImmutableArray<double> b = [.. ranges.Where(kilowatts => kilowatts >= ColumnAEnds)];
        return Share(a, "column_a") + Share(b, "column_b");
    }

    private static double? Share(ImmutableArray<double> ranges, string column) =>
        ranges.IsEmpty ? 0 : Row(ranges.Length).NumberOrNone(column) / 100 * ranges.Sum();

    private static TableRow Row(int units) =>
        Tables.Read(File).Rows.First(row => row["units"] == units.ToString(CultureInfo.InvariantCulture));
}
