using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Reckoning;

namespace Purlin.Judgement.Readings;

/// <summary>Finds the inputs of a reckoning among readings and facts, and reckons. A way that is not on record gives nothing; nothing is guessed.</summary>
internal sealed class Feeding(EvidenceIndex evidence, JudgingMemory memory)
{
    private readonly FromReadings readings = new(evidence);
    private readonly FromComponents components = new(evidence);

    /// <summary>The inputs, whole or not.</summary>
    public Fed Feed(Feed feed, FeedGroup group)
    {
        var fed = new Fed(group.Component?.Id);
        fed.Whole = Fill(feed.Inputs, group, fed, fed.Inputs) && !fed.Spoilt;
        foreach (var pair in feed.Together.Where(pair => !pair.All(fed.Inputs.ContainsKey)))
            foreach (var name in pair) fed.Inputs.Remove(name);
        return fed;
    }

    public Checked<Working> Reckon(Feed feed, Fed fed) =>
        memory.Working(feed.Reckoning + fed.Inputs.ToJsonString(), () => Reckonings.Reckon(feed.Reckoning, fed.Inputs));

    /// <summary>Whether an input is needed here: by itself, or because another one is given.</summary>
    public static bool Needed(FeedInput input, JsonObject into) => input.With is { } other ? into.ContainsKey(other) : !input.Optional;

    public JsonNode? Value(FeedInput input, FeedGroup group, Fed fed)
    {
        var value = input.Bands is { } bands ? Banded(bands, Plain(input, group, fed)) : Plain(input, group, fed);
        return value ?? (IsOnRecord(input, group) ? null : Presumed(input));
    }

    /// <summary>What is on record in words that nobody knows is not presumed to be the usual: an iron wire is no copper wire.</summary>
    private bool IsOnRecord(FeedInput input, FeedGroup group) => input.Fact is { } fact && components.Of(fact, group)?.Fact(FromComponents.Last(fact)) is not null;

    private bool Fill(IReadOnlyDictionary<string, FeedInput> inputs, FeedGroup group, Fed fed, JsonObject into)
    {
        // All are looked for, also when one is missing: only then can it be told whether it is the only one, and whether anything was begun.
        var whole = true;
        foreach (var (name, input) in inputs)
        {
            if (input.With is { } other && !into.ContainsKey(other)) continue;
            if (Value(input, group, fed) is { } value) into[name] = value;
            else whole &= !Needed(input, into);
        }
        return whole;
    }

    private JsonNode? Plain(FeedInput input, FeedGroup group, Fed fed)
    {
        if (input.Reading is { } kind) return readings.Last(kind, input, group, fed);
        if (input.Readings is { } many) return FromReadings.Many(many, input, group, fed);
        if (input.Points is { } points) return FromReadings.Points(points, group, fed);
        if (input.Distances is { } distances) return FromReadings.Distances(distances, group, fed);
        if (input.Box is { } box) return readings.Box(box, input, group, fed);
        if (input.Fact is { } fact) return components.Fact(fact, input, group, fed);
        if (input.Most is { } most) return components.Most(most, fed);
        if (input.Count is { } kinds) return components.Count(kinds, fed);
        if (input.Lines is { } lines) return FromComponents.Lines(lines, group, fed);
        if (input.Kind) return FromComponents.KindOf(input, group.Component);
        if (input.Property is { } property) return PropertyFact(property, fed);
        if (input.Setting is { } setting) return Setting(setting);
        if (input.Now) return evidence.YearNow;
        if (input.Present is { } present) return evidence.ComponentsOf(present).Any() ? true : null;
        return Made(input, group, fed);
    }

    /// <summary>Ways that are made of other ways.</summary>
    private JsonNode? Made(FeedInput input, FeedGroup group, Fed fed)
    {
        if (input.First is { } ways) return ways.Select(way => Value(way, group, fed)).FirstOrDefault(value => value is not null);
        if (input.Group is { } inner) return Object(inner, group, fed);
        if (input.List is { } list) return Listed(list.Select(inputs => (JsonNode?)Object(inputs, group, fed)));
        if (input.Values is { } values) return Listed(values.Select(one => Value(one, group, fed)));
        if (input.Each is { } each) return Each(each, group, fed);
        if (input.Worked is { } worked) return Worked(worked, input, group, fed);
        return null;
    }

    private JsonObject? Object(IReadOnlyDictionary<string, FeedInput> inputs, FeedGroup group, Fed fed)
    {
        var made = new JsonObject();
        var its = fed.Beside();
        var whole = Fill(inputs, group, its, made) && made.Count > 0;
        fed.Spoilt |= its.Spoilt;
        // What is left out leaves no evidence behind.
        if (whole) fed.Take(its);
        return whole ? made : null;
    }

    private static JsonArray? Listed(IEnumerable<JsonNode?> nodes)
    {
        JsonArray made = [.. nodes.Where(node => node is not null)];
        return made.Count == 0 ? null : made;
    }

    /// <summary>The components that hang together with this one; also those of which that cannot be told yet.</summary>
    public IEnumerable<Component> Members(FeedEach each, FeedGroup group) => each.Kinds.SelectMany(evidence.ComponentsOf)
        .Where(component => !each.Here || component.Place == group.Place)
        .Where(component => Untold(each, component) is not null || (FromComponents.Is(component, each.Where) && !(each.Not.Count > 0 && FromComponents.Is(component, each.Not))));

    /// <summary>A fact without which it cannot be told whether the component counts.</summary>
    public static string? Untold(FeedEach each, Component component) => each.Known.FirstOrDefault(fact => component.Fact(fact) is null);

    private JsonArray? Each(FeedEach each, FeedGroup group, Fed fed)
    {
        JsonArray made = [];
        foreach (var component in Members(each, group))
        {
            var its = new FeedGroup([.. group.Readings.Where(reading => reading.Body.Component == component.Id)], component, component.Place);
            var node = Untold(each, component) is not null ? null : each.Value is { } value ? Value(value, its, fed) : each.Of is { } inputs ? Object(inputs, its, fed) : null;
            if (node is not null) made.Add(node);
            else fed.Spoilt |= each.All;
        }
        return made.Count == 0 ? null : made;
    }

    /// <summary>What another feed works out for the same thing: the date on a plate becomes the year of an age.</summary>
    private JsonNode? Worked(string name, FeedInput input, FeedGroup group, Fed fed)
    {
        if (components.Of(name, group) is not { } component || evidence.Book.Feeds.FirstOrDefault(feed => feed.Id == FromComponents.Last(name)) is not { } feed || !feed.Components.Contains(component.Kind)) return null;
        var inner = Feed(feed, new FeedGroup([], component, component.Place));
        if (!inner.Whole || Reckon(feed, inner) is not { IsAccepted: true } reckoned) return null;
        JsonNode? node = reckoned.OrThrow().Result;
        var isInferred = false;
        foreach (var part in (input.Take ?? "").Split('.'))
        {
            node = (node as JsonObject)?[part];
            isInferred |= (string?)(node as JsonObject)?["confidence"] == "inferred";
        }
        if (node is null || (input.Sure && isInferred)) return null;
        foreach (var entry in inner.Entries) fed.Take(entry, component.Id);
        return Taken(node, input);
    }

    private static JsonNode? Taken(JsonNode node, FeedInput input)
    {
        var value = node is JsonObject quantity ? quantity["value"] : node;
        if (value?.GetValueKind() == JsonValueKind.String)
        {
            var words = value.GetValue<string>();
            if (!input.Year) return FromComponents.Mapped(input, words);
            return words.Length >= 4 && int.TryParse(words.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out var year) ? year : null;
        }
        return !input.Bare && node is JsonObject && (string?)node["unit"] is { Length: > 0 } unit ? $"{value} {unit}" : value?.DeepClone();
    }

    private static JsonNode? Banded(IReadOnlyList<Band> bands, JsonNode? value) =>
        value is JsonValue plain && double.TryParse(plain.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? bands.FirstOrDefault(band => band.Most is not { } most || number <= most)?.Word : null;

    private JsonNode? Setting(string name) => Duties.StandardLimits.Strictest(evidence, name) is { } number ? number : null;

    private static JsonNode? Presumed(FeedInput input) => input.Text is { } text ? text : input.Number is { } number ? number : null;

    private JsonNode? PropertyFact(string name, Fed fed)
    {
        if (evidence.Property is not { } property || evidence.House is not { } house) return null;
        JsonNode? value = name switch
        {
            "yearBuilt" => property.YearBuilt,
            "floorArea" => property.FloorArea is { } area ? FromReadings.Written(area, bare: false) : null,
            "footprint" => property.FloorArea is { } area && property.Storeys is { } storeys and > 0 ? FromReadings.Written(area with { Value = area.Value / storeys }, bare: false) : null,
            "bedrooms" => property.Bedrooms,
            "bathrooms" => property.Bathrooms,
            "storeys" => property.Storeys,
            "roofPitch" => property.RoofPitch,
            _ => null,
        };
        if (value is not null) fed.Take(house);
        return value;
    }
}
