using System.Globalization;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>What the chosen standards set: the number that asks the most of the inspector, and the words to show where the inspector decides.</summary>
internal static class StandardLimits
{
    /// <summary>The strictest of several; none when no standard chosen sets it as a number.</summary>
    public static double? Strictest(EvidenceIndex evidence, string name)
    {
        List<double> all = [];
        foreach (var standard in evidence.Standards)
            if (standard.Settings.TryGetValue(name, out var setting) && double.TryParse(setting.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)) all.Add(value);
        if (all.Count == 0) return null;
        return evidence.Book.Settings.TryGetValue(name, out var rule) && rule.Strictest == Book.Strictest.Lowest ? all.Min() : all.Max();
    }

    /// <summary>The sizes of one setting, standard by standard, for those that have any.</summary>
    public static IEnumerable<(Standard Standard, Setting Setting)> Sizes(EvidenceIndex evidence, string name) =>
        evidence.Standards.Where(standard => standard.Settings.TryGetValue(name, out var setting) && setting.Sizes.Count > 0).Select(standard => (standard, standard.Settings[name]));

    /// <summary>What to show at places and components.</summary>
    public static List<Wanted> Shown(EvidenceIndex evidence) =>
    [
        .. from standard in evidence.Standards
           from setting in standard.Settings
           where evidence.Book.Settings.ContainsKey(setting.Key)
           let rule = evidence.Book.Settings[setting.Key]
           orderby rule.Name, standard.Short
           select new Wanted(rule.Id, rule.Name, standard.Short, Value(setting.Value), setting.Value.Mark, rule.Places, rule.Components),
    ];

    private static string Value(Setting setting) => setting.Unit.Length > 0 ? $"{setting.Value} {setting.Unit}" : setting.Value;
}
