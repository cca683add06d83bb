using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.FollowUp;

/// <summary>What of the evidence answers one question.</summary>
internal sealed class Answers
{
    private readonly EvidenceIndex evidence;
    private readonly Inquiry question;
    private readonly List<EntryName> places;
    private readonly HashSet<EntryName> placeSet;
    private readonly List<Sighting> looks;
    private readonly List<Sighting> hidden;
    private readonly List<MeasuredAnswer> measured;
    private readonly bool toldApart;

    public Answers(EvidenceIndex evidence, Looks looksFor, Measured readings, Inquiry question, WalkedPlaces walked)
    {
        (this.evidence, this.question, places, placeSet) = (evidence, question, walked.InOrder, walked.Set);
        toldApart = evidence.Book.ToldApart.Contains(question.Condition.Component) && !question.AsksForTheSame;
        var all = question.Follow.Answers.SelectMany(looksFor.For).Where(look => InPlace(look) && OfSamePart(look.Place)
            && !OfAnother(look.Component)).ToList();
        looks = [.. all.Where(look => look.Looked && OpenersAnsweredBy(look) && SaysOfAll(look))];
        hidden = [.. all.Where(look => look.Outcome == Outcome.NotVisible)];
        var opened = question.Openers.SelectMany(opener => opener.Entries).ToHashSet();
        measured =
        [
            // What is on record of a thing is not asked for, whatever it opened; nor is a measure of the spot itself that was taken.
            .. question.Follow.Readings.SelectMany(readings.For).Where(answer => IsOfSpot || !answer.Entries.All(opened.Contains))
                .Concat(question.Follow.Facts.SelectMany(readings.Facts))
                .Where(answer => InPlace(answer) && (answer.OfHouse || OfSamePart(answer.Place)) && !OfAnother(answer.Component)),
        ];
    }

    /// <summary>Places where no look and no reading answers yet. A place where the same thing was seen has been looked at by that.</summary>
    public List<EntryName> StillToLook(IReadOnlySet<EntryName> openedIn)
    {
        if (measured.Exists(answer => answer.OfHouse)) return [];
        HashSet<EntryName> answered = [];
        foreach (var look in looks)
            if (look.Place is { } place) answered.Add(place);
        foreach (var answer in measured)
            if (answer.Place is { } place) answered.Add(place);
        if (question.AsksForTheSame) answered.UnionWith(openedIn);
        return answered.Count == 0 ? [.. places] : places.FindAll(place => !answered.Contains(place));
    }

    public Tied? Tied(IReadOnlyList<EntryName> still)
    {
        var answered = looks.Count > 0 || measured.Count > 0;
        if (question.Follow.Need == Need.All && places.Count > 0 ? still.Count == 0 : answered) return ByEvidence();
        var blocked = hidden.Where(look => look.Place is not null).Select(look => look.Place!.Value).ToHashSet();
        return hidden.Count > 0 && still.All(blocked.Contains) ? ByLimitation() : null;
    }

    private Tied ByEvidence()
    {
        List<string> parts = [];
        foreach (var group in looks.Where(SaysSomething).GroupBy(look => (look.Condition, look.IsSeen)).OrderByDescending(group => group.Key.IsSeen))
        {
            var name = evidence.Book.Conditions.TryGetValue(group.Key.Condition, out var condition) ? condition.Name : group.Key.Condition;
            var where = string.Join(", ", group.Select(look => look.Place).Distinct().OrderBy(place => evidence.Walk(place)).Select(place => evidence.NameOf(place)));
            parts.Add(evidence.Book.Words.Say(group.Key.IsSeen ? "loose-end.answer.seen" : "loose-end.answer.clear", ("what", name), ("where", where)));
        }
        parts.AddRange(InBrief());
        IEnumerable<EntryName> by = [.. looks.SelectMany(look => look.Entries), .. measured.SelectMany(answer => answer.Entries)];
        return new Tied(Tie.Evidence, [.. by.Distinct()], parts.Count == 0 ? evidence.Book.Words.Say("loose-end.tied.evidence") : string.Join(" ", parts));
    }

    /// <summary>Seen wins over clear in one place, and a reading that is too high need not say that it is not too low.</summary>
    private bool SaysSomething(Sighting look) =>
        look.IsSeen || !looks.Exists(other => other.IsSeen && ((other.Condition == look.Condition && other.Place == look.Place) || Share(other.Entries, look.Entries)));

    /// <summary>A survey of forty points is one sentence.</summary>
    private IEnumerable<string> InBrief()
    {
        var words = evidence.Book.Words;
        foreach (var group in measured.Select(answer => (answer.About, answer.Found)).Distinct().GroupBy(answer => answer.About))
            yield return words.Say("loose-end.answer.found", ("about", group.Key), ("found", SaidValue.Of(group.Select(answer => words.Say(answer.Found).TrimEnd('.')))));
    }

    private Tied ByLimitation()
    {
        var where = string.Join(", ", hidden.Select(look => look.Place).Distinct().OrderBy(place => evidence.Walk(place)).Select(place => evidence.NameOf(place)));
        var reasons = string.Join("; ", hidden.Select(look => look.Reason).Where(reason => !string.IsNullOrWhiteSpace(reason)).Distinct(StringComparer.Ordinal));
        return new Tied(Tie.Limitation, [.. hidden.SelectMany(look => look.Entries).Distinct()], evidence.Book.Words.Say("loose-end.answer.hidden", ("where", where), ("reasons", reasons)));
    }

    /// <summary>Each opener needs an answer other than itself; for more of the same that answer stands in another place.</summary>
    private bool OpenersAnsweredBy(Sighting look)
    {
        foreach (var opener in question.Openers)
            if (!(look.Condition == opener.Condition && look.Place == opener.Place) && (IsOtherOf(opener, look) || !Share(opener.Entries,
                look.Entries)))
                return true;
        return false;
    }

    /// <summary>One survey of the steps tells how steep they are, and whether they are even.</summary>
    private static bool IsOtherOf(Sighting opener, Sighting look) =>
        look.Working is { } working && ReferenceEquals(working, opener.Working) && look.Condition != opener.Condition;

    private bool IsOfSpot => question.Follow.Here && !question.AsksForTheSame;

    /// <summary>A pan below the other water heater says nothing of this one.</summary>
    private bool OfAnother(EntryName? component) =>
        toldApart && evidence.Component(component) is { } known && known.Kind == question.Condition.Component
        && question.Openers.All(opener => opener.Component is { } own && own != known.Id);

    /// <summary>A floor that a level finds flat says nothing of the cracks that the same question asks for.</summary>
    private bool SaysOfAll(Sighting look) => look.IsSeen || look.Working is null || question.Follow.Answers.Count == 1;

    /// <summary>
    /// The addition's floor says nothing of the old house. Where the places of the question lie in other parts only, they answer it.
    /// </summary>
    private bool OfSamePart(EntryName? place) =>
        place is not { } there || question.Opening.Places.Count == 0 || placeSet.Contains(there)
            || evidence.Place(there)?.Kind == PlaceKind.Site
        || question.Opening.Places.Any(opened => evidence.PartOf(opened) == evidence.PartOf(there));

    private static bool Share(IReadOnlyList<EntryName> some, IReadOnlyList<EntryName> others)
    {
        foreach (var entry in some)
            if (others.Contains(entry)) return true;
        return false;
    }

    private bool InPlace(Sighting look) => look.Place is not { } place || places.Count == 0 || placeSet.Contains(place);

    private bool InPlace(MeasuredAnswer answer) => places.Count == 0 || answer.OfHouse || answer.Place is not { } known || placeSet.Contains(known);
}
