using System.Globalization;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>
/// The published target of the temperature split. The table stands in whole degrees and leaves cells blank where it gives no target;
/// between whole degrees it is read linearly in both directions, never beyond its edge.
/// </summary>
internal static class TargetSplit
{
    private const string File = "air/target_split.csv";

    internal static string Source => Tables.Read(File).Source;

    /// <summary>The target, or none where the table has none.</summary>
    internal static TemperatureDifference? At(Temperature dryBulb, Temperature wetBulb)
    {
        var (dry, wet) = (dryBulb.Fahrenheit, wetBulb.Fahrenheit);
        var (dryStep, wetStep) = (Math.Floor(dry), Math.Floor(wet));
        var (dryPart, wetPart) = (dry - dryStep, wet - wetStep);
        double sum = 0;
        foreach (var (row, column, share) in new[]
        {
            (dryStep, wetStep, (1 - dryPart) * (1 - wetPart)), (dryStep + 1, wetStep, dryPart * (1 - wetPart)),
            (dryStep, wetStep + 1, (1 - dryPart) * wetPart), (dryStep + 1, wetStep + 1, dryPart * wetPart),
        })
        {
            // A corner without weight is not read, so that the last row and column count as inside.
            if (share <= 0) continue;
            if (Cell(row, column) is not { } cell) return null;
            sum += share * cell;
        }
        return TemperatureDifference.FromFahrenheit(sum);
    }

    private static double? Cell(double dryBulb, double wetBulb)
    {
        var table = Tables.Read(File);
        var column = wetBulb.ToString(CultureInfo.InvariantCulture);
        if (!table.Columns.Contains(column)) return null;
        return table.Rows.FirstOrDefault(row => row.Number("dry_bulb").Equals(dryBulb))?.NumberOrNone(column);
    }
}
