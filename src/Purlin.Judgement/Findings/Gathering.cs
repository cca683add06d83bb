using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Findings;

/// <summary>Brings all looks for the same condition together: duplicates become one matter.</summary>
internal sealed class Gathering(EvidenceIndex evidence, Looks looks, Recall recall)
{
    /// <summary>The matters of which at least one look saw something.</summary>
    public List<Concern> Matters()
    {
        List<Concern> matters = [];
        foreach (var name in looks.Matters)
        {
            var all = looks.OfMatter(name);
            if (recall.Once<Gathered>("matter", name.ToString(), all, () => new Gathered(Make(name, all))).Concern is { } matter) matters.Add(matter);
        }
        return matters;
    }

    private Concern? Make(FindingId name, IReadOnlyList<Sighting> all)
    {
        var first = all.FirstOrDefault(look => look.IsSeen);
        if (first is null) return null;
        var id = first.Condition;
        var condition = evidence.Book.Conditions.TryGetValue(id, out var known) ? known : Free(name.IsOwn ? FindingId.Own : id, first);
        return new Concern { Id = name, Condition = condition, Looks = all };
    }

    /// <summary>What stands for a condition that the book does not have: the inspector's words, taken as a defect until somebody weighs it.</summary>
    private Condition Free(string id, Sighting look)
    {
        var words = evidence.Book.Words;
        var kind = evidence.Component(look.Component)?.Kind ?? "";
        return new Condition
        {
            Id = id,
            Name = look.Words ?? (id == FindingId.Own ? id : words.Say("own.unknown", ("given", id))),
            Component = kind,
            System = SystemOf(evidence, kind, look.Place),
            Means = words.Say("own.means"),
            Weight = new WeightRule { Consequence = Consequence.Function, Timing = Timing.Soon },
            Do = words.Say("own.do"),
            Trade = "general contractor",
            Own = true,
        };
    }

    /// <summary>The building system of what the book has no condition for: that of its kind of component, else that of where it is.</summary>
    public static string SystemOf(EvidenceIndex evidence, string kind, EntryName? place)
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

    private sealed record Gathered(Concern? Concern);
}
