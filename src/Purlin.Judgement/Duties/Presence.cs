using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>Knows what a house does not have, from its facts: a house on a slab has no crawl space to look into.</summary>
internal sealed class Presence(EvidenceIndex evidence)
{
    private static readonly HashSet<string> Particular = [PlaceKind.CrawlSpace, PlaceKind.Basement, PlaceKind.Garage, PlaceKind.Attic, PlaceKind.Deck, PlaceKind.Stairs];
    private static readonly HashSet<string> None = new(["none", "no", "not present"], StringComparer.OrdinalIgnoreCase);

    /// <summary>Why it is not there, in words; none when it is or when nobody knows.</summary>
    public string? WhyAbsent(CoreDuty core)
    {
        return ByProperty(core) ?? ByFact(core) ?? ByLooking(core);
    }

    private string? ByFact(CoreDuty core)
    {
        if (core.Components.Any(kind => evidence.ComponentsOf(kind).Any())) return null;
        foreach (var kind in core.Components)
            if (evidence.Component(evidence.House)?.Fact(kind) is { } fact && (fact.Value.Flag == false || None.Contains(fact.Value.Text)))
                return evidence.Book.Words.Say("duty.absent.fact", ("what", kind));
        return null;
    }

    /// <summary>It was looked for wherever it could be, and each time said not to be there.</summary>
    private string? ByLooking(CoreDuty core)
    {
        if (core.Components.Count == 0 || core.Components.Any(kind => evidence.ComponentsOf(kind).Any())) return null;
        foreach (var kind in core.Components)
            if (!evidence.IsAbsent(kind, core.Places)) return null;
        return evidence.Book.Words.Say("duty.absent.looked", ("what", string.Join(", ", core.Components)));
    }

    private string? ByProperty(CoreDuty core)
    {
        if (core.Places.Any(kind => Particular.Contains(kind) && evidence.PlacesOf(kind).Any())) return null;
        foreach (var test in core.Absent)
        {
            var equals = test.IndexOf('=', StringComparison.Ordinal);
            if (Property(test[..equals]) == test[(equals + 1)..]) return evidence.Book.Words.Say("duty.absent", ("fact", test[..equals]), ("value", test[(equals + 1)..]));
        }
        return null;
    }

    private string? Property(string name) => Told(evidence.Property, name);

    /// <summary>What was told of the property under this name, as words; none when nothing was.</summary>
    public static string? Told(Property? property, string name) => property is null ? null : name switch
    {
        "foundation" => property.Foundation,
        "attic" => property.Attic,
        "garage" => property.Garage,
        "deck" => property.Deck is { } deck ? deck ? "yes" : "no" : null,
        "chimney" => property.Chimney is { } chimney ? chimney ? "yes" : "no" : null,
        "storeys" => property.Storeys?.ToString(),
        _ => null,
    };
}
