using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Looking;

/// <summary>What the order of looks asks of one place.</summary>
internal sealed class LookPlace
{
    private readonly LookGround ground;
    private readonly EntryName? id;
    private readonly ILookup<string, Component> here;
    private readonly HashSet<string> answered;
    private readonly Dictionary<string, LooseEnd> asked = new(StringComparer.Ordinal);

    public LookPlace(LookGround ground, EntryName? id, string kind)
    {
        (this.ground, this.id, Kind) = (ground, id, kind);
        var inspection = ground.Inspection;
        here = inspection.Components.Where(component => id is not null && component.Place == id).ToLookup(component => component.Kind, StringComparer.Ordinal);
        answered = [.. inspection.Observations.Where(look => id is not null && look.Body.Place == id).Select(look => look.Body.Condition).OfType<string>()];
        if (id is not { } place) return;
        foreach (var end in ground.Judged.LooseEnds.Where(end => end.Tied is null && end.StillToLook.Contains(place)))
            foreach (var answer in end.Answers) asked.TryAdd(answer, end);
    }

    public string Kind { get; }

    /// <summary>What the book has to look for here and what loose ends ask, without what was answered here.</summary>
    public IEnumerable<Condition> Conditions() => ground.Book.ConditionsIn(Kind)
        .Concat(asked.Keys.Select(ground.Book.Conditions.GetValueOrDefault).OfType<Condition>())
        .DistinctBy(condition => condition.Id, StringComparer.Ordinal)
        .Where(condition => !answered.Contains(condition.Id));

    /// <summary>Things of a kind on record here.</summary>
    public IReadOnlyList<Component> Here(string component) => [.. here[component]];

    /// <summary>The open question that a look would answer.</summary>
    public LooseEnd? AskedBy(string condition) => asked.GetValueOrDefault(condition);

    /// <summary>How much more a condition is in mind here than elsewhere.</summary>
    public double InMind(string condition) => ground.Book.Usual.GetValueOrDefault(Kind)?.InMind(condition) ?? 1;

    /// <summary>The chance that a thing of this kind stands here.</summary>
    public double Share(string component) => ground.Share(id, Kind, component);
}
