using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Lists what to be alert to in this house, from the facts of the property alone.</summary>
internal static class Alerting
{
    private const int Most = 10;

    public static List<Alert> List(EvidenceIndex evidence)
    {
        if (evidence.Property is not { } property) return [];
        List<Alert> alerts = [];
        HashSet<(string, string)> told = [];
        foreach (var profile in evidence.Book.Profiles)
        {
            if (alerts.Count == Most) break;
            if (profile.Foundation is { } foundation && foundation != property.Foundation) continue;
            if (!InYears(profile, property.YearBuilt) || !HasMaterial(profile, evidence) || IsAbsent(profile.Component, property)) continue;
            // Of one material the nearest profile speaks: iron drains under this slab, not iron drains in general too.
            if (profile.Material is { } material && !told.Add((profile.Component, material))) continue;
            alerts.Add(new Alert(profile.Title, profile.Reason, profile.Look, [.. profile.Sources.Select(evidence.Book.SourceInWords)]));
        }
        return alerts;
    }

    /// <summary>A profile of certain years says nothing of a house whose year nobody knows.</summary>
    private static bool InYears(Profile profile, int? built)
    {
        if (profile.From is null && profile.To is null) return true;
        return built is { } year && (profile.From is not { } from || year >= from) && (profile.To is not { } to || year <= to);
    }

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
    private static bool HasMaterial(Profile profile, EvidenceIndex evidence)
    {
        if (profile.Material is not { } material) return true;
        var facts = evidence.ComponentsOf(profile.Component).Select(component => component.Fact("material")?.Value.Text).Where(text => text is not null).ToList();
        return facts.Count == 0 || facts.Exists(text => text!.Contains(material, StringComparison.OrdinalIgnoreCase));
    }
}
