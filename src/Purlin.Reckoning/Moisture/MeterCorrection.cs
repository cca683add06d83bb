namespace Purlin.Reckoning.Moisture;

/// <summary>
/// Temperature correction of a resistance meter's reading, for a meter set for Douglas-fir at about 23 °C. The published charts of
/// meters differ by up to 2 % moisture; this formula lies between them. Its constants were read in a public file, its usual name
/// (Pfaff and Garrahan) is from memory.
/// </summary>
internal static class MeterCorrection
{
    internal const string Source = "Resistance-meter temperature correction (formula known as Pfaff and Garrahan's; name from memory)";

    internal static double AtTemperature(double reading, double celsius) =>
        (reading + 0.567 - 0.0260 * celsius + 0.000051 * celsius * celsius) / (0.881 * Math.Pow(1.0056, celsius));

    /// <summary>What to add for the species, by its published table; none when there is none.</summary>
    internal static TableRow? Species(string species, double percent)
    {
        var rows = Tables.Read("moisture/species.csv").Rows.Where(row => string.Equals(row["species"], species.Trim(),
            StringComparison.OrdinalIgnoreCase)).ToList();
        return rows.Find(row => percent <= row.Number("to_percent")) ?? rows.LastOrDefault();
    }
}
