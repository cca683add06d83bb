namespace Purlin.Reckoning.Air;

/// <summary>When and how a cooling test stands, from <c>air/cooling_test.csv</c>.</summary>
internal static class CoolingTest
{
    internal static TableRow Rule(string name) => Tables.Read("air/cooling_test.csv").Rows.First(row => row["rule"] == name);

    /// <summary>The document with the section of the rule.</summary>
    internal static string Source(TableRow rule)
    {
        var mark = rule["mark"] == "confirmed" ? "" : $" ({rule["mark"]})";
        return $"California Energy Commission, 2008 Residential Appendices, {rule["section"]}{mark}";
    }
}
