using System.Collections.Frozen;

namespace Purlin.Book.Search;

/// <summary>How much nearer or farther a condition is by where one stands and what the house is like.</summary>
internal sealed class Nearness
{
    private const double InHand = 1.3, Here = 1.3, Own = 1.3, OfItsYears = 1.05, OtherYears = 0.9, OtherMaterial = 0.6, Absent = 0.5;

    private readonly FrozenDictionary<string, (int From, int To)[]> years;
    private readonly FrozenDictionary<string, string[]> materials;

    public Nearness(RuleBook book)
    {
        years = book.Profiles.Where(profile => profile.From is not null || profile.To is not null)
            .SelectMany(profile => profile.Conditions.Select(id => (id, Years: (profile.From ?? int.MinValue, profile.To ?? int.MaxValue))))
            .GroupBy(line => line.id, StringComparer.Ordinal)
                .ToFrozenDictionary(group => group.Key, group => group.Select(line => line.Years).ToArray(), StringComparer.Ordinal);
        materials = book.Conditions.Values.Select(condition => (condition.Id, Named: Named(book, condition)))
            .Where(line => line.Named.Length > 0)
            .ToFrozenDictionary(line => line.Id, line => line.Named, StringComparer.Ordinal);
    }

    /// <summary>The factor by which what was said of it counts.</summary>
    public double Of(Condition condition, Standpoint from)
    {
        var near = condition.Own ? Own : 1;
        if (from.Place is { } place && condition.Places.Contains(place)) near *= Here;
        if (from.Component == condition.Component) near *= InHand;
        if (from.Absent.Contains(condition.Component) || (condition.Places.Count > 0 && condition.Places.All(from.Absent.Contains)))
            near *= Absent;
        if (from.Year is { } year && years.TryGetValue(condition.Id, out var ranges))
            near *= ranges.Any(range => year >= range.From && year <= range.To) ? OfItsYears : OtherYears;
        if (from.Materials.TryGetValue(condition.Component, out var made) && materials.TryGetValue(condition.Id, out var named)
            && !named.Any(word => Words(made).Contains(word))) near *= OtherMaterial;
        return near;
    }

    /// <summary>The materials that a condition names by its heading, of those that the fact sheet of its component offers.</summary>
    private static string[] Named(RuleBook book, Condition condition)
    {
        if (!book.Sheets.TryGetValue(condition.Component, out var sheet)) return [];
        var says = Words(condition.Name).Concat(Words(condition.Id)).ToHashSet(StringComparer.Ordinal);
        return [.. sheet.Facts.Where(fact => fact.Fact == "material").SelectMany(fact => fact.Choices).SelectMany(Words)
            .Where(says.Contains).Distinct(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Words(string text) => Stems.Split(text).Select(Stems.Of);
}
