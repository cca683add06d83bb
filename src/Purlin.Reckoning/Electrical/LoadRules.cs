using System.Collections.Immutable;

namespace Purlin.Reckoning.Electrical;

/// <summary>
/// The figures of the load calculation in one edition of the code, from <c>electrical/load_rules.csv</c>. Every figure that is read
/// puts its section, with its mark, among the sources of the working.
/// </summary>
internal sealed class LoadRules(int edition, Worksheet sheet)
{
    private const string File = "electrical/load_rules.csv";

    /// <summary>The editions that the program knows.</summary>
    internal static ImmutableArray<int> Editions { get; } = [2014, 2017, 2020, 2023, 2026];

    internal int Edition { get; } = edition;

    /// <summary>Whether the edition has a figure for the rule at all.</summary>
    internal bool Knows(string rule) => Row(rule) is not null;

    internal double Value(string rule)
    {
        var row = Row(rule) ?? throw new ArgumentException($"{File} has no {rule} for {Edition}", nameof(rule));
        var mark = row["mark"] == "confirmed" ? "" : $" ({row["mark"]})";
        sheet.From($"NEC (NFPA 70) {Edition}, {row["section"]}{mark}");
        return row.Number("value");
    }

    /// <summary>A figure in %, as a share.</summary>
    internal double Share(string rule) => Value(rule) / 100;

    private TableRow? Row(string rule) =>
        Tables.Read(File).Rows.FirstOrDefault(row => row["rule"] == rule && row.Number("from") <= Edition && Edition <= row.Number("to"));
}
