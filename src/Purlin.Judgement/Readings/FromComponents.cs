using System.Text.Json.Nodes;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Readings;

/// <summary>Inputs out of the facts of components, and which component is meant.</summary>
internal sealed class FromComponents(EvidenceIndex evidence)
{
    public JsonNode? Fact(string name, FeedInput input, FeedGroup group, Fed fed)
    {
        if (Of(name, group) is not { } component || !component.Facts.TryGetValue(Last(name), out var slot)) return null;
        fed.Take(slot.Standing[0].By, component.Id);
        var fact = slot.Value;
        if (input.Words?.ContainsKey(fact.Value.Text) == true) return Mapped(input, fact.Value.Text);
        if (fact.Value.Number is { } number) return fact.Unit is { Length: > 0 } unit && !input.Bare ? $"{number:R} {unit}" : number;
        if (fact.Value.Flag is { } flag) return flag;
        return Mapped(input, fact.Value.Text);
    }

    /// <summary>The greatest of all: the longest run of the whole system, whichever section is judged.</summary>
    public JsonNode? Most(string name, Fed fed)
    {
        (Component Component, double Value, string Unit)? most = null;
        foreach (var component in evidence.ComponentsOf(name[..name.LastIndexOf('/')]))
        {
            if (!component.Facts.TryGetValue(Last(name), out var slot) || slot.Value.Value.Number is not { } number) continue;
            var unit = slot.Value.Unit ?? "";
            if (most is { } sofar && !(Units.TryConvert(number, unit, sofar.Unit, out var same) && same > sofar.Value)) continue;
            most = (component, number, unit);
        }
        if (most is not { } found) return null;
        fed.Take(found.Component.Facts[Last(name)].Standing[0].By, found.Component.Id);
        return found.Unit.Length > 0 ? $"{found.Value:R} {found.Unit}" : found.Value;
    }

    public JsonNode? Count(IReadOnlyList<string> kinds, Fed fed)
    {
        var counted = 0;
        foreach (var component in kinds.SelectMany(evidence.ComponentsOf))
        {
            fed.Take(component.Id);
            counted++;
        }
        return counted == 0 ? null : counted;
    }

    /// <summary>A plate put together again from what was read off it part by part.</summary>
    public static JsonNode? Lines(IReadOnlyList<PlateLine> lines, FeedGroup group, Fed fed)
    {
        List<string> written = [];
        foreach (var line in lines)
        {
            if (group.Component is not { } component || !component.Facts.TryGetValue(line.Fact, out var slot)) continue;
            fed.Take(slot.Standing[0].By, component.Id);
            written.Add(line.Before + slot.Value.Value.Text + (slot.Value.Unit is { Length: > 0 } unit ? " " + unit : ""));
        }
        return written.Count == 0 ? null : string.Join('\n', written);
    }

    /// <summary>The reckoning's name for this kind of thing, by fuel where it tells them apart.</summary>
    public static JsonNode? KindOf(FeedInput input, Component? component)
    {
        if (component is null) return null;
        return component.Fact("fuel") is { } fuel && input.Words?.ContainsKey($"{component.Kind}/{fuel.Value.Text}") == true
            ? Mapped(input, $"{component.Kind}/{fuel.Value.Text}")
            : Mapped(input, component.Kind);
    }

    /// <summary>The component that a name speaks of: <c>kind/fact</c> of another, else the group's own.</summary>
    public Component? Of(string name, FeedGroup group)
    {
        var slash = name.LastIndexOf('/');
        return slash < 0 ? group.Component : Related(name[..slash], group);
    }

    public static string Last(string name) => name[(name.LastIndexOf('/') + 1)..];

    public static bool Is(Component component, IReadOnlyDictionary<string, IReadOnlyList<string>> facts) =>
        facts.All(fact => component.Fact(fact.Key) is { } known && fact.Value.Contains(known.Value.Text, StringComparer.OrdinalIgnoreCase));

    public static JsonNode? Mapped(FeedInput input, string? words)
    {
        if (words is null) return null;
        if (input.Words is null) return words;
        return input.Words.TryGetValue(words, out var mapped) ? mapped : null;
    }

    /// <summary>The component of that kind that belongs with this one: in the same place, else the only one there is.</summary>
    private Component? Related(string kind, FeedGroup group)
    {
        if (group.Component?.Kind == kind) return group.Component;
        var all = evidence.ComponentsOf(kind).ToList();
        return all.FirstOrDefault(component => component.Place == group.Place && component.Name == group.Component?.Name)
            ?? all.FirstOrDefault(component => component.Name is not null && component.Name == group.Component?.Name)
            ?? (all.Count == 1 ? all[0] : null);
    }
}
