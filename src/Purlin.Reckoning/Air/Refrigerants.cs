using Purlin.Journal;

namespace Purlin.Reckoning.Air;

/// <summary>Refrigerants by any of their usual names.</summary>
internal static class Refrigerants
{
    internal static IReadOnlyList<TableRow> All => Tables.Read("air/refrigerants.csv").Rows;

    internal static SaidValue Names => SaidValue.Of(All.Select(row => row["name"]));

    /// <summary>The row of a name or alias; none when unknown.</summary>
    internal static TableRow? Find(string name)
    {
        var plain = name.Trim().ToUpperInvariant().Replace(" ", "", StringComparison.Ordinal);
        return All.FirstOrDefault(row => row["name"] == plain || row["aliases"].Split(' ').Contains(plain));
    }
}
