using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Lists what to be alert to in this house, from the facts of the property alone.</summary>
internal static class Alerting
{
    private const int Most = 10;

    public static List<Alert> List(EvidenceIndex evidence)
    {
        var things = evidence.Book.Profiles.Where(profile => profile.Material is not null).Select(profile => profile.Component)
            .Distinct(StringComparer.Ordinal).SelectMany(evidence.ComponentsOf).ToLookup(component => component.Kind, StringComparer.Ordinal);
        return [.. Expected(evidence.Book, evidence.Property, evidence.Component(evidence.House)?.Fact("state")?.Value.Text, evidence.YearNow, things).Take(Most).Select(profile =>
            new Alert(profile.Title, profile.Reason, profile.Look, [.. profile.Sources.Select(evidence.Book.SourceInWords)], profile.Conditions))];
    }

    /// <summary>Every profile that speaks of such a house, highest rank first.</summary>
    /// <param name="book">The rule book.</param>
    /// <param name="property">Facts of the property; without them nothing is expected.</param>
    /// <param name="state">The state it stands in, where it is on record.</param>
    /// <param name="year">The year of the visit.</param>
    /// <param name="things">Components on record, by kind.</param>
    public static IEnumerable<Profile> Expected(RuleBook book, Property? property, string? state, int year, ILookup<string, Component> things)
    {
        if (property is null) yield break;
        HashSet<(string, string)> told = [];
        foreach (var profile in book.Profiles)
        {
            if (profile.Foundation is { } foundation && foundation != property.Foundation) continue;
            if (!InYears(profile, property.YearBuilt, year) || !InState(profile, state) || !HasMaterial(profile, things) || IsAbsent(profile.Component, property)) continue;
            // Of one material the nearest profile speaks: iron drains under this slab, not iron drains in general too.
            if (profile.Material is { } material && !told.Add((profile.Component, material))) continue;
            yield return profile;
        }
    }

    /// <summary>A profile of certain years says nothing of a house whose year nobody knows.</summary>
    private static bool InYears(Profile profile, int? built, int now)
    {
        if (profile.From is null && profile.To is null && profile.OlderThan is null) return true;
        return built is { } year && (profile.OlderThan is not { } years || year < now - years) && (profile.From is not { } from || year >= from) && (profile.To is not { } to || year <= to);
    }

    private static bool InState(Profile profile, string? state) => profile.States.Count == 0 || (state is not null && profile.States.Contains(state, StringComparer.OrdinalIgnoreCase));

    /// <summary>A house known to have no deck needs no word about decks.</summary>
    private static bool IsAbsent(string component, Property property) => component switch
    {
        "deck" => property.Deck == false,
        "chimney" or "fireplace" => property.Chimney == false,
        "garage" or "garage door" => property.Garage is "none" or "carport",
        "attic ventilation" => property.Attic == "none",
        _ => false,
    };

    /// <summary>Once the material is on record and is another one, the alert has had its day.</summary>
    private static bool HasMaterial(Profile profile, ILookup<string, Component> things)
    {
        if (profile.Material is not { } material) return true;
        var facts = things[profile.Component].Select(component => component.Fact("material")?.Value.Text).Where(text => text is not null).ToList();
        return facts.Count == 0 || facts.Exists(text => text!.Contains(material, StringComparison.OrdinalIgnoreCase));
    }
}
