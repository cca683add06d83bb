using Purlin.Book;
using Purlin.Field.Matters;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Places;

namespace Purlin.Field.Here;

/// <summary>The things of a place as its drawing and its list show them: what is on record, then what is usual in such a place.</summary>
public static class PlaceThings
{
    private const string UsualMark = "usual:";

    // What holds for the whole house (rain, climate zone) is recorded on its ground.
    private const string House = "house";

    // What stands in two of five such places is drawn faint at once; rarer things are found by their name.
    private const double IsUsual = 0.4;

    /// <summary>What a touch on a thing that is only usual here stands for.</summary>
    public static string UsualId(string component) => UsualMark + component;

    /// <summary>The kind of a thing that is only usual here; none when the touch stands for one on record.</summary>
    public static string? UsualOf(string? id) => id?.StartsWith(UsualMark, StringComparison.Ordinal) == true ? id[UsualMark.Length..] : null;

    /// <summary>All things, in the order of the eye.</summary>
    public static IReadOnlyList<PlaceThing> Of(Inspection inspection, JudgedInspection? judged, RuleBook book, Place place, string? inHand)
    {
        var absent = LookList.AbsentIn(inspection, place.Id);
        var asked = LookList.OpenHere(judged, place.Id).SelectMany(end => end.Answers).Select(book.Conditions.GetValueOrDefault)
            .OfType<Condition>().Select(condition => condition.Component).ToHashSet(StringComparer.Ordinal);
        var usual = book.Usual.GetValueOrDefault(place.Kind);
        List<string> order = [.. usual?.Things.Select(thing => thing.Component).Distinct(StringComparer.Ordinal) ?? []];
        var here = inspection.Components.Where(component => component.Place == place.Id || (component.Kind == House && place.Kind == PlaceKind.Site)).ToList();
        var kinds = here.Select(component => component.Kind).ToHashSet(StringComparer.Ordinal);
        var property = inspection.Opening?.Body.Property;
        var recorded = here.Select(component => new PlaceThing(component.Id.ToString(), component.Kind, component.Name ?? component.Kind, StateOf(inspection, book, place, component.Kind, component.Id))
        {
            Material = component.Fact("material")?.Value.Text,
            InHand = component.Id.ToString() == inHand,
            Asked = asked.Contains(component.Kind),
        });
        var faint = order.Where(kind => !kinds.Contains(kind) && !absent.Contains(kind) && (usual!.Share(kind, property) >= IsUsual || asked.Contains(kind) || UsualId(kind) == inHand || StateOf(inspection, book, place, kind, null) != ThingState.Usual))
            .Select(kind => new PlaceThing(UsualId(kind), kind, kind, StateOf(inspection, book, place, kind, null)) { InHand = UsualId(kind) == inHand, Asked = asked.Contains(kind) });
        return [.. recorded.Concat(faint).OrderBy(thing => order.IndexOf(thing.Component) is var at && at < 0 ? int.MaxValue : at)];
    }

    /// <summary>The matters of a place, each pinned to its thing.</summary>
    public static IReadOnlyList<PlacePin> Pins(JudgedInspection? judged, Place place, IReadOnlyList<PlaceThing> things)
    {
        if (judged is null) return [];
        return
        [
            .. Numbered.All(judged).Where(one => one.Number is not null && one.Finding.Places.Contains(place.Id))
                .Select(one => (one, Thing: things.FirstOrDefault(thing => one.Finding.Components.Any(name => name.ToString() == thing.Id)) ?? things.FirstOrDefault(thing => thing.Component == one.Finding.ComponentKind)))
                .Where(pair => pair.Thing is not null)
                .Select(pair => new PlacePin(pair.one.Number!.Value, (int)pair.one.Finding.Weight, pair.Thing!.Id, $"{pair.one.Finding.Weight.Word()}: {pair.one.Finding.Title}")),
        ];
    }

    /// <summary>What was looked at on a thing of a place, newest last; looks without a thing count for things of their kind.</summary>
    public static IEnumerable<Observation> LooksAt(Inspection inspection, RuleBook book, Place place, string kind, EntryName? component) =>
        inspection.Observations.Where(look => look.Body.Place == place.Id && look.Body.Condition is { } id
            && book.Conditions.TryGetValue(id, out var condition) && condition.Component == kind && (look.Body.Component is null || component is null || look.Body.Component == component));

    private static ThingState StateOf(Inspection inspection, RuleBook book, Place place, string kind, EntryName? component)
    {
        var looks = LooksAt(inspection, book, place, kind, component).Select(look => look.Body.Outcome).ToList();
        if (looks.Count == 0) return component is null ? ThingState.Usual : ThingState.Here;
        if (looks.TrueForAll(outcome => outcome == Outcome.NotVisible)) return ThingState.NotSeen;
        return looks.Contains(Outcome.Clear) ? ThingState.Sound : ThingState.Here;
    }
}
