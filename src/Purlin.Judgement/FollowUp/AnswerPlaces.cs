using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.FollowUp;

/// <summary>Where the answer to a question can be: in the same part of the house, and where the things stand that answer it.</summary>
internal sealed class AnswerPlaces(EvidenceIndex evidence, Inquiry question)
{
    private const string Ceiling = "ceiling";

    /// <summary>The places that the question names, without those where no answer can be.</summary>
    public WalkedPlaces Of()
    {
        var all = evidence.PlacesIn(question.Follow.In);
        if (all.InOrder.Count == 0) return all;
        var places = Kept(Kept(Kept(all.InOrder, IsOfSamePart), CanAnswer), IsBelowRoof);
        return places.Count == all.InOrder.Count ? all : new WalkedPlaces(places);
    }

    /// <summary>Where nothing would be left, the question is about more than the rule thinks, and nothing is taken out.</summary>
    private static List<EntryName> Kept(List<EntryName> places, Func<EntryName, bool> keep) => places.FindAll(place =>
        keep(place)) is { Count: > 0 } some ? some : places;

    private bool IsOfSamePart(EntryName place) =>
        question.Opening.Places.Count == 0 || KindOf(place) == PlaceKind.Site || question.Opening.Places.Any(opened =>
            evidence.PartOf(opened) == evidence.PartOf(place));

    private bool CanAnswer(EntryName place)
    {
        var follow = question.Follow;
        return follow.Answers.Any(id => !IsMeasured(id) && ByLook(id, place)) || follow.Readings.Any(name => ByReading(name, place))
            || follow.Facts.Any(name => FactName.Parse(name).Kind is not { } kind || CanStand(kind, place));
    }

    private bool ByLook(string id, EntryName place) =>
        !evidence.Book.Conditions.TryGetValue(id, out var condition) || CanStand(condition.Component, place);

    /// <summary>A condition that a reckoning finds is answered where its readings are taken.</summary>
    private bool IsMeasured(string id) =>
        question.Follow.Readings.Count > 0 && evidence.Book.Feeds.Any(feed => feed.Raises.Any(raise => raise.Condition == id));

    private bool ByReading(string name, EntryName place)
    {
        if (evidence.Book.ReadingKinds.TryGetValue(name, out var kind))
            return IsAmong(kind.Places, place) && (kind.Component.Length == 0 || CanStand(kind.Component, place)) && IsAtWhatIsRun(name,
                place);
        var feeds = evidence.Book.Feeds.Where(feed => feed.Answers.Contains(name)).ToList();
        var facts = evidence.Book.Aliases.TryGetValue(name, out var alias) ? alias.Facts : [];
        if (feeds.Count == 0 && facts.Count == 0) return true;
        return feeds.Any(feed => feed.ReadingKinds.Count > 0 ? feed.ReadingKinds.Any(one => ByReading(one, place)) : feed.Components
            .Any(one => CanStand(one, place)))
            || facts.Any(fact => FactName.Parse(fact).Kind is not { } of || CanStand(of, place));
    }

    /// <summary>What is measured while something runs is measured at that thing, where it is on record in one of the places.</summary>
    private bool IsAtWhatIsRun(string reading, EntryName place)
    {
        var places = evidence.Book.Core.Values.Where(core => core.Readings.Contains(reading) && core.Verbs.Contains(Verb.Operate))
            .SelectMany(core => core.Components).Distinct(StringComparer.Ordinal).SelectMany(evidence.ComponentsOf)
            .Select(component => component.Place).OfType<EntryName>().Where(evidence.PlacesIn(question.Follow.In).Set.Contains).ToHashSet();
        return places.Count == 0 || places.Contains(place);
    }

    /// <summary>A thing of which each is a matter of its own stands where it is on record; another where such things usually do.</summary>
    private bool CanStand(string kind, EntryName place)
    {
        if (!evidence.Book.ToldApart.Contains(kind)) return true;
        var places = evidence.ComponentsOf(kind).Select(component => component.Place).OfType<EntryName>().ToList();
        return places.Count > 0 ? places.Contains(place) : !evidence.Book.Sheets.TryGetValue(kind, out var sheet) || IsAmong(sheet.Places,
            place);
    }

    /// <summary>What comes through the roof shows on the ceilings of the highest floor, not on those below it.</summary>
    private bool IsBelowRoof(EntryName place)
    {
        if (question.Opening.Places.Count == 0 || !question.Opening.Places.All(opened =>
            KindOf(opened) is PlaceKind.Roof or PlaceKind.Attic)) return true;
        if (!question.Follow.Answers.All(id => evidence.Book.Conditions.TryGetValue(id, out var condition)
            && condition.Component == Ceiling)) return true;
        return evidence.Place(place)?.Level is not { } level
            || !evidence.PlacesIn(question.Follow.In).InOrder.Exists(other => evidence.Place(other)?.Level > level
                && evidence.PartOf(other) == evidence.PartOf(place));
    }

    private bool IsAmong(IReadOnlyList<string> kinds, EntryName place) => kinds.Count == 0 || kinds.Contains(KindOf(place));

    private string KindOf(EntryName place) => evidence.Place(place)?.Kind ?? "";
}
