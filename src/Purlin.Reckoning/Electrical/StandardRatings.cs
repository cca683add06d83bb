using System.Collections.Immutable;

namespace Purlin.Reckoning.Electrical;

/// <summary>Standard ratings of breakers, NEC 240.6(A).</summary>
internal static class StandardRatings
{
    private const string File = "electrical/standard_ratings.csv";

    /// <summary>Ratings known in an edition, rising.</summary>
    internal static ImmutableArray<TableRow> In(int edition) =>
        [.. Tables.Read(File).Rows.Where(row => (row.NumberOrNone("first_edition") ?? 0) <= edition)];

    /// <summary>The smallest rating that is not below; none above the table.</summary>
    internal static TableRow? AtLeast(double amps, int edition) => In(edition).FirstOrDefault(row => row.Number("amps") >= amps);
}
