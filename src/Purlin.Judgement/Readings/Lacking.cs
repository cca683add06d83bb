using System.Text.Json.Nodes;
using Purlin.Journal.Fold;
using Purlin.Book;

namespace Purlin.Judgement.Readings;

/// <summary>One thing that a reckoning still lacks: a reading, a fact of a component or of the property. None of them where no single entry would settle it.</summary>
internal sealed record Lack(string? Reading, string? Fact, string? Property, Component? Component)
{
    /// <summary>The words on record that the reckoning does not know.</summary>
    public string? Given { get; init; }

    /// <summary>Words that it knows.</summary>
    public IReadOnlyList<string> Known { get; init; } = [];

    public bool CanBeAsked => Reading is not null || Property is not null || (Fact is not null && Component is not null);

    public static Lack Nothing { get; } = new(null, null, null, null);
}

/// <summary>Finds what keeps a feed from being reckoned, so that nothing is passed over in silence.</summary>
internal sealed class Lacking(Feeding feeding, FromComponents components)
{
    public IReadOnlyList<Lack> Of(Feed feed, FeedGroup group) => [.. Of(feed.Inputs, group).Distinct()];

    private IEnumerable<Lack> Of(IReadOnlyDictionary<string, FeedInput> inputs, FeedGroup group)
    {
        var given = new JsonObject();
        foreach (var (name, input) in inputs)
        {
            if (input.With is { } other && !given.ContainsKey(other)) continue;
            var scratch = new Fed(group.Component?.Id);
            var value = feeding.Value(input, group, scratch);
            if (value is not null) given[name] = value;
            if (scratch.Spoilt || (value is null && Feeding.Needed(input, given)))
                foreach (var lack in Of(input, group)) yield return lack;
        }
    }

    private IEnumerable<Lack> Of(FeedInput input, FeedGroup group)
    {
        if ((input.Reading ?? input.Readings ?? input.Points ?? input.Distances) is { } reading) return [new Lack(reading, null, null, null)];
        if (input.Property is { } property) return [new Lack(null, null, property, null)];
        if (input.Fact is { } fact) return [OfFact(fact, input, group)];
        if (input.First is { Count: > 0 } ways) return Of(ways.FirstOrDefault(way => IsSpoilt(way, group)) ?? ways[0], group);
        if (input.Group is { } inner) return Whole(Of(inner, group));
        if (input.List is { Count: 1 } list) return Whole(Of(list[0], group));
        if (input.Values is { Count: > 0 } values) return Of(values[0], group);
        if (input.Each is { } each) return Whole(feeding.Members(each, group).SelectMany(component => OfMember(each, component)));
        if (input.Lines is { Count: > 0 } lines) return [new Lack(null, lines[0].Fact, null, group.Component)];
        return [Lack.Nothing];
    }

    private IEnumerable<Lack> OfMember(FeedEach each, Component component)
    {
        if (Feeding.Untold(each, component) is { } untold) return [new Lack(null, untold, null, component)];
        if (!each.All) return [];
        var its = new FeedGroup([], component, component.Place);
        if (each.Of is { } inputs) return Of(inputs, its);
        return each.Value is { } value && feeding.Value(value, its, new Fed(component.Id)) is null ? Of(value, its) : [];
    }

    /// <summary>Whether a way was begun: most of its parts are on record, and one is known to be missing.</summary>
    private bool IsSpoilt(FeedInput way, FeedGroup group)
    {
        var scratch = new Fed(group.Component?.Id);
        feeding.Value(way, group, scratch);
        return scratch.Spoilt;
    }

    private Lack OfFact(string name, FeedInput input, FeedGroup group)
    {
        var component = components.Of(name, group);
        var fact = FromComponents.Last(name);
        var given = component?.Fact(fact)?.Value.Text;
        return new Lack(null, fact, null, component) { Given = given, Known = given is null ? [] : [.. input.Words?.Keys ?? []] };
    }

    private static IEnumerable<Lack> Whole(IEnumerable<Lack> lacks)
    {
        var all = lacks.ToList();
        return all.Count == 0 ? [Lack.Nothing] : all;
    }
}
