using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Takes every observation as a look. Kept from one judgement to the next, by the observation itself.</summary>
internal sealed class Observing
{
    private readonly Dictionary<Observation, Sighting> known = new(ReferenceEqualityComparer.Instance);
    private IReadOnlyList<Component> components = [];

    public List<Sighting> Look(Inspection inspection, EvidenceIndex evidence)
    {
        ForgetMoved(inspection.Components);
        List<Sighting> looks = new(inspection.Observations.Count);
        foreach (var observation in inspection.Observations)
        {
            if (!known.TryGetValue(observation, out var look)) known[observation] = look = Of(observation).Placed(evidence);
            looks.Add(look);
        }
        if (known.Count > 2 * looks.Count + 100) known.Clear();
        return looks;
    }

    /// <summary>What a look belongs to rests on the kind of its component, and on which component of a kind is the first.</summary>
    private void ForgetMoved(IReadOnlyList<Component> now)
    {
        if (ReferenceEquals(components, now)) return;
        var (before, after) = (First(components), First(now));
        HashSet<EntryName> moved = [.. components.Select(component => component.Id)];
        moved.SymmetricExceptWith(now.Select(component => component.Id));
        foreach (var component in now)
            if (before.GetValueOrDefault(component.Kind) != after[component.Kind]) moved.Add(component.Id);
        components = now;
        if (moved.Count == 0) return;
        foreach (var (observation, look) in known)
            if (look.Component is { } on && moved.Contains(on)) known.Remove(observation);
    }

    private static Dictionary<string, EntryName> First(IReadOnlyList<Component> components)
    {
        Dictionary<string, EntryName> first = new(StringComparer.Ordinal);
        foreach (var component in components) first.TryAdd(component.Kind, component.Id);
        return first;
    }

    private static Sighting Of(Observation observation)
    {
        var body = observation.Body;
        return new Sighting
        {
            Condition = body.Condition ?? FindingId.OwnWords(observation.Id).ToString(),
            Outcome = body.Outcome,
            Entries = [observation.Id],
            Place = body.Place,
            Component = body.Component,
            Spot = body.Spot,
            Words = body.Words,
            Reason = body.Reason,
            Sample = body.Sample,
        };
    }
}
