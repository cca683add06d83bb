using System.Collections.Immutable;
using System.Globalization;

namespace Purlin.Reckoning.Electrical;

/// <summary>
/// Sizes of conductors in the order of their metal: gauge numbers fall, then noughts rise, then thousands of circular mils.
/// </summary>
internal static class ConductorSize
{
    /// <summary>All that the tables of the code name, rising.</summary>
    internal static ImmutableArray<string> All { get; } =
        ["14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500", "600", "700", "750",
        "800", "900", "1000", "1100", "1250", "1500", "1750", "2000"];

    /// <summary>Those that the ampacity table of this program holds.</summary>
    internal static ImmutableArray<string> InAmpacityTable { get; } = [.. All.TakeWhile(size => size != "700")];

    internal static bool AtLeast(string size, string least) => All.IndexOf(size) >= All.IndexOf(least);

    /// <summary>With its unit, as the trade says it.</summary>
    internal static string Words(string size) => IsGauge(size) ? $"{size} AWG" : $"{size} kcmil";

    /// <summary>
    /// The size in the usual spellings of the trade: <c>12 AWG</c>, <c>#12</c>, <c>0</c> for 1/0, <c>00</c> for 2/0, <c>250 MCM</c>.
    /// </summary>
    internal static string Plain(string written)
    {
        var size = written.ToUpperInvariant();
        foreach (var word in new[] { "AWG", "KCMIL", "MCM", "GAUGE", "GA.", "NO.", "#" })
            size = size.Replace(word, "", StringComparison.Ordinal);
        size = size.Trim();
        return size is "0" or "00" or "000" or "0000" ? $"{size.Length}/0" : size;
    }

    /// <summary>The metal in its usual spellings.</summary>
    internal static string Metal(string written) => written.Trim().ToUpperInvariant() switch
    {
        "COPPER" or "CU" => "copper",
        "ALUMINUM" or "ALUMINIUM" or "AL" or "COPPER-CLAD ALUMINUM" or "COPPER-CLAD ALUMINIUM" => "aluminum",
        _ => written,
    };

    /// <summary>Cross-section in kcmil; none for gauge sizes, which no rule here needs.</summary>
    internal static double? Kcmil(string size) => IsGauge(size) ? null : double.Parse(size, CultureInfo.InvariantCulture);

    private static bool IsGauge(string size) => All.IndexOf(size) < All.IndexOf("250");
}
