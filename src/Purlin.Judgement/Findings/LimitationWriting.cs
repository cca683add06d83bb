using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>States what was not looked at or tested: recorded limitations first, then those that follow from <c>not visible</c>.</summary>
internal sealed class LimitationWriting(EvidenceIndex evidence, ILookup<EntryName, EntryName> photosFor)
{
    public List<JudgedLimitation> Write(IReadOnlyList<Sighting> looks)
    {
        List<JudgedLimitation> all = [];
        foreach (var recorded in evidence.Inspection.Limitations)
        {
            var rule = recorded.Body.Rule is { } id && evidence.Book.Limitations.TryGetValue(id, out var known) ? known : null;
            all.Add(new JudgedLimitation(recorded.Id, recorded.Body.What, Filled(recorded.Cause ?? recorded.Body.Cause), Filled(recorded.Next ?? recorded.Body.Next) ?? rule?.Next,
                recorded.Body.Place, recorded.Body.Component, [.. photosFor[recorded.Id]]));
        }
        all.AddRange(FromNotVisible(looks));
        return all;
    }

    /// <summary>One for each place, component kind and reason: ten things that one pile of boxes hid are one limitation.</summary>
    private IEnumerable<JudgedLimitation> FromNotVisible(IReadOnlyList<Sighting> looks)
    {
        var looked = looks.Where(look => look.Looked).Select(look => (look.Condition, look.Place)).ToHashSet();
        var hidden = looks.Where(look => look.Outcome == Outcome.NotVisible && !looked.Contains((look.Condition, look.Place)));
        foreach (var group in hidden.GroupBy(look => (look.Place, Kind: KindOf(look), Reason: Filled(look.Reason))))
        {
            var (place, kind, reason) = group.Key;
            var words = evidence.Book.Words;
            var what = string.Join("; ", group.Select(What).Distinct(StringComparer.Ordinal));
            var component = group.Select(look => look.Component).FirstOrDefault(named => named is not null);
            yield return new JudgedLimitation(
                group.First().Entries[0],
                words.Say("limitation.what", ("place", evidence.NameOf(place)), ("what", what)),
                reason,
                words.Say("limitation.next", ("what", kind.Length > 0 ? kind : evidence.NameOf(place))),
                place, component,
                [.. group.SelectMany(look => look.Entries).SelectMany(entry => photosFor[entry]).Distinct()]);
        }
    }

    private string KindOf(Sighting look) =>
        evidence.Component(look.Component)?.Kind ?? (evidence.Book.Conditions.TryGetValue(look.Condition, out var condition) ? condition.Component : "");

    private string What(Sighting look) =>
        evidence.Book.Conditions.TryGetValue(look.Condition, out var condition) ? Lower(condition.Name) : look.Words ?? look.Condition;

    private static string Lower(string name) => name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
