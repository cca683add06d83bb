using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Understanding;

/// <summary>Places, components with their facts, what was looked for and what is not there, in the names of the book.</summary>
internal sealed class ThingNames(KnownNames names, Telling telling)
{
    private readonly StatedWords facts = new(names, telling);

    public Place Place(Place place, List<LookAgain> again)
    {
        var meant = names.Place(place.Kind);
        Tell(place.Id, "kind", telling.Say("again.what.place"), place.Kind, meant, again, place.Id);
        return meant.Name == place.Kind ? place : place with { Kind = meant.Name };
    }

    public Component Component(Component component, List<LookAgain> again)
    {
        var meant = component.Kind == "house" ? Meant.AsWritten("house") : names.Component(component.Kind);
        Tell(component.Id, "kind", telling.Say("again.what.component"), component.Kind, meant, again, component.Place);
        var read = meant.IsUnderstood ? Facts(meant.Name, component, again) : component.Facts;
        return meant.Name == component.Kind && ReferenceEquals(read, component.Facts) ? component : component with
        {
            Kind = meant.Name,
            Facts = read
        };
    }

    public Observation Observation(Observation observation, List<LookAgain> again)
    {
        var body = observation.Body;
        if (body.Condition is not { } condition) return observation;
        var meant = names.Condition(condition);
        if (telling.Name(observation.Id, "condition", telling.Say("again.what.condition"), condition, meant,
            bars: body.Outcome != Outcome.Seen || body.Words is null) is { } told)
            again.Add(told with { Place = body.Place });
        return meant.Name == condition ? observation : observation with { Body = body with { Condition = meant.Name } };
    }

    public Absence Absence(Absence absence, List<LookAgain> again)
    {
        var meant = names.Component(absence.Kind);
        Tell(absence.Id, "kind", telling.Say("again.what.component"), absence.Kind, meant, again, absence.Place);
        return meant.Name == absence.Kind ? absence : absence with { Kind = meant.Name };
    }

    private IReadOnlyDictionary<string, Slot<Fact>> Facts(string kind, Component component, List<LookAgain> again)
    {
        if (component.Facts.Count == 0) return component.Facts;
        Dictionary<string, Slot<Fact>> read = new(component.Facts.Count, StringComparer.Ordinal);
        var same = true;
        // What is named as the book names it keeps its name, whatever else means the same.
        foreach (var (given, slot) in component.Facts.OrderBy(fact => names.Fact(kind, fact.Key).Found).ThenBy(fact =>
            fact.Key, StringComparer.Ordinal))
        {
            var by = slot.Standing[0].By;
            var meant = names.Fact(kind, given);
            if (telling.Name(by, given, telling.Say("again.what.fact", ("component", kind)), given, meant, bars: false) is { } told) again
                .Add(told with { Place = component.Place });
            var name = meant.Name;
            if (name != given && component.Facts.ContainsKey(name)) name = given;
            var about = again.Count;
            var now = Slot(kind, name, slot, again);
            for (var at = about; at < again.Count; at++) again[at] = again[at] with { Place = component.Place };
            same &= name == given && ReferenceEquals(now, slot);
            read.TryAdd(name, now);
        }
        return same ? component.Facts : read;
    }

    private Slot<Fact> Slot(string kind, string name, Slot<Fact> slot, List<LookAgain> again)
    {
        List<Stated<Fact>> standing = [.. slot.Standing.Select(stated => facts.Read(kind, name, stated.Value, stated.By, again) is var fact
            && ReferenceEquals(fact, stated.Value) ? stated : stated with { Value = fact })];
        return standing.SequenceEqual(slot.Standing, ReferenceEqualityComparer.Instance) ? slot : slot with { Standing = standing };
    }

    /// <summary>What is near to nothing may be a thing of the inspector's own; what is near to something was meant to be that.</summary>
    private void Tell(EntryName entry, string member, string what, string given, Meant meant, List<LookAgain> again, EntryName? place)
    {
        if (telling.Name(entry, member, what, given, meant, bars: meant.Nearest.Count > 0) is { } told) again
            .Add(told with { Place = place });
    }
}
