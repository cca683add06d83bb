using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>States what was not looked at or tested: recorded limitations first, then those that follow from <c>not visible</c>.</summary>
internal sealed class Limiting(EvidenceIndex evidence, Looks looks)
{
    public List<JudgedLimitation> Write()
    {
        List<JudgedLimitation> all = [];
        foreach (var recorded in evidence.Limitations)
        {
            var rule = recorded.Body.Rule is { } id && evidence.Book.Limitations.TryGetValue(id, out var known) ? known : null;
            all.Add(new JudgedLimitation(recorded.Id, recorded.Body.What, Filled(recorded.Cause ?? recorded.Body.Cause), Filled(recorded.Next ?? recorded.Body.Next) ?? rule?.Next,
                recorded.Body.Place, recorded.Body.Component, evidence.PhotosFor(recorded.Id)));
        }
        all.AddRange(FromNotVisible());
        return all;
    }

    /// <summary>One for each place and reason: ten things that one pile of boxes hid are one limitation.</summary>
    private IEnumerable<JudgedLimitation> FromNotVisible()
    {
        var hidden = looks.Hidden().Where(look => !looks.For(look.Condition).Any(other => other.Looked && other.Place == look.Place));
        foreach (var group in hidden.GroupBy(look => (look.Place, Reason: Filled(look.Reason))))
        {
            var (place, reason) = group.Key;
            List<string> kinds = [.. group.Select(KindOf).Where(kind => kind.Length > 0).Distinct(StringComparer.Ordinal)];
            var component = group.Select(look => look.Component).FirstOrDefault(named => named is not null);
            yield return new JudgedLimitation(
                group.First().Entries[0], What(evidence.NameOf(place), kinds, group), reason, Next(place, kinds, reason),
                place, component,
                [.. group.SelectMany(look => look.Entries).SelectMany(evidence.PhotosFor).Distinct()]);
        }
    }

    private string What(string place, List<string> kinds, IEnumerable<Sighting> hidden)
    {
        var words = evidence.Book.Words;
        var what = string.Join("; ", hidden.Select(What).Distinct(StringComparer.Ordinal));
        return kinds.Count == 0
            ? words.Say("limitation.what.own", ("place", place), ("what", what))
            : words.Say("limitation.what", ("place", place), ("kinds", string.Join(", ", kinds)), ("what", what));
    }

    /// <summary>What the rule book advises for this reason; else to have it looked at once it can be seen.</summary>
    private string Next(EntryName? place, List<string> kinds, string? reason)
    {
        var advised = kinds.Select(kind => evidence.Book.Limitations.Values
            .Where(rule => rule.Component == kind && (rule.Places.Count == 0 || rule.Places.Contains(evidence.Place(place)?.Kind ?? "")) && rule.Reasons.Contains(reason ?? "", StringComparer.OrdinalIgnoreCase))
            .OrderBy(rule => rule.Id, StringComparer.Ordinal).FirstOrDefault()?.Next).ToList();
        return kinds.Count > 0 && advised.TrueForAll(next => next is not null)
            ? string.Join(' ', advised.Distinct(StringComparer.Ordinal))
            : evidence.Book.Words.Say("limitation.next", ("what", kinds.Count == 1 ? kinds[0] : evidence.NameOf(place)));
    }

    private string KindOf(Sighting look) =>
        evidence.Component(look.Component)?.Kind ?? (evidence.Book.Conditions.TryGetValue(look.Condition, out var condition) ? condition.Component : "");

    private string What(Sighting look) =>
        evidence.Book.Conditions.TryGetValue(look.Condition, out var condition) ? Lower(condition.Name) : look.Words ?? look.Condition;

    private static string Lower(string name) => name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
