namespace Purlin.Reckoning.Air;

/// <summary>A table of single figures, one rule a row; reading one puts its source on the sheet.</summary>
internal sealed class RuleTable(string file, string document, Worksheet sheet)
{
    internal double Value(string rule)
    {
        var table = Tables.Read(file);
        var row = table.Rows.First(row => row["rule"] == rule);
        var source = table.Columns.Contains("section") ? $"{document}{(document.Length > 0 ? ", " : "")}{row["section"]}" : row["source"];
        var mark = row["mark"] == "confirmed" || source.Contains(row["mark"], StringComparison.Ordinal) ? "" : $" ({row["mark"]})";
        sheet.From(source + mark);
        return row.Number("value");
    }
}
