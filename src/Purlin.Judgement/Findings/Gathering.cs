using Purlin.Journal;
using Purlin.Judgement.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Brings all looks for the same condition together: duplicates become one matter.</summary>
internal static class Gathering
{
    /// <summary>Id of a matter in the inspector's own words.</summary>
    public const string Own = "own";

    public static List<Sighting> Observed(EvidenceIndex evidence)
    {
        List<Sighting> looks = [];
        foreach (var observation in evidence.Inspection.Observations)
        {
            var body = observation.Body;
            looks.Add(new Sighting
            {
                Condition = body.Condition ?? $"{Own}@{observation.Id}",
                Outcome = body.Outcome,
                Entries = [observation.Id],
                Place = body.Place,
                Component = body.Component,
                Spot = body.Spot,
                Words = body.Words,
                Reason = body.Reason,
                Sample = body.Sample,
            });
        }
        return looks;
    }

    /// <summary>The matters of which at least one look saw something.</summary>
    public static List<Matter> Matters(EvidenceIndex evidence, IEnumerable<Sighting> looks)
    {
        List<Matter> matters = [];
        foreach (var group in looks.GroupBy(look => NameOf(evidence, look), StringComparer.Ordinal))
        {
            if (!group.Any(look => look.IsSeen)) continue;
            List<Sighting> all = [.. group];
            matters.Add(new Matter { Id = group.Key, Condition = ConditionOf(evidence, all), Looks = all });
        }
        return matters;
    }

    public static string NameOf(EvidenceIndex evidence, Sighting look) =>
        evidence.Apart(look.Component) is { } apart && !look.Condition.StartsWith(Own + "@", StringComparison.Ordinal) ? $"{look.Condition}@{apart}" : look.Condition;

    private static Condition ConditionOf(EvidenceIndex evidence, List<Sighting> looks)
    {
        var id = looks[0].Condition;
        if (evidence.Book.Conditions.TryGetValue(id, out var known)) return known;
        var first = looks.First(look => look.IsSeen);
        return Free(evidence, id.StartsWith(Own + "@", StringComparison.Ordinal) ? Own : id, first);
    }

    /// <summary>What stands for a condition that the book does not have: the inspector's words, taken as a defect until somebody weighs it.</summary>
    private static Condition Free(EvidenceIndex evidence, string id, Sighting look)
    {
        var words = evidence.Book.Words;
        var kind = evidence.Component(look.Component)?.Kind ?? "";
        return new Condition
        {
            Id = id,
            Name = look.Words ?? id,
            Component = kind,
            System = SystemOf(evidence, kind, look.Place),
            Means = words.Say("own.means"),
            Weight = new WeightRule { Consequence = "function" },
            Do = words.Say("own.do"),
            Trade = "general contractor",
            Own = true,
        };
    }

    private static string SystemOf(EvidenceIndex evidence, string kind, EntryName? place)
    {
        var known = evidence.Book.Conditions.Values.Where(condition => condition.Component == kind).Select(condition => condition.System).Order(StringComparer.Ordinal).FirstOrDefault();
        return known ?? evidence.Place(place)?.Kind switch
        {
            PlaceKind.Site => "site",
            PlaceKind.Side or PlaceKind.Deck or PlaceKind.Outbuilding => "exterior",
            PlaceKind.Roof => "roof",
            PlaceKind.Attic => "attic",
            PlaceKind.CrawlSpace or PlaceKind.Basement => "structure",
            _ => "interior",
        };
    }
}
