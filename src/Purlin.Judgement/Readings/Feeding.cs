using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Readings;

/// <summary>Finds the inputs of a reckoning among readings and facts. Numbers go in with their unit exactly as they were written.</summary>
internal sealed class Feeding(EvidenceIndex evidence)
{
    /// <summary>The inputs; none when a required one is missing.</summary>
    public Fed? Feed(Feed feed, FeedGroup group)
    {
        var fed = new Fed();
        return Fill(feed.Inputs, group, fed, fed.Inputs) && fed.Own ? fed : null;
    }

    private bool Fill(IReadOnlyDictionary<string, FeedInput> inputs, FeedGroup group, Fed fed, JsonObject into)
    {
        foreach (var (name, input) in inputs)
        {
            var value = Value(input, group, fed);
            if (value is not null) into[name] = value;
            else if (!input.Optional) return false;
        }
        return true;
    }

    private JsonNode? Value(FeedInput input, FeedGroup group, Fed fed)
    {
        if (input.Reading is { } kind) return Reading(kind, input, group, fed);
        if (input.Readings is { } many) return Many(many, input, group, fed);
        if (input.Points is { } points) return Points(points, group, fed);
        if (input.Distances is { } distances) return Distances(distances, group, fed);
        if (input.Fact is { } fact) return Fact(fact, input, group, fed) ?? Presumed(input);
        if (input.Property is { } property) return PropertyFact(property, fed);
        if (input.Setting is { } setting) return Setting(setting);
        if (input.Now) return evidence.YearNow;
        if (input.Kind) return KindOf(input, group.Component);
        if (input.Group is { } inner) return Object(inner, group, fed);
        if (input.List is { } list) return Objects(list, group, fed);
        if (input.Present is { } present) return evidence.ComponentsOf(present).Any() ? true : null;
        return Presumed(input);
    }

    private JsonObject? Object(IReadOnlyDictionary<string, FeedInput> inputs, FeedGroup group, Fed fed)
    {
        var made = new JsonObject();
        return Fill(inputs, group, fed, made) && made.Count > 0 ? made : null;
    }

    private JsonArray? Objects(IReadOnlyList<IReadOnlyDictionary<string, FeedInput>> list, FeedGroup group, Fed fed)
    {
        JsonArray made = new([.. list.Select(inputs => (JsonNode?)Object(inputs, group, fed)).Where(node => node is not null)]);
        return made.Count == 0 ? null : made;
    }

    private JsonNode? Setting(string name)
    {
        double? strictest = null;
        foreach (var standard in evidence.Standards)
            if (standard.Settings.TryGetValue(name, out var setting) && double.TryParse(setting.Value, System.Globalization.CultureInfo.InvariantCulture, out var value) && !(value < strictest)) strictest = value;
        return strictest is { } number ? number : null;
    }

    private static JsonNode? Presumed(FeedInput input) => input.Text is { } text ? text : input.Number is { } number ? number : null;

    /// <summary>The reckoning's name for this kind of thing, by fuel where it tells them apart.</summary>
    private static JsonNode? KindOf(FeedInput input, Component? component)
    {
        if (component is null) return null;
        return component.Fact("fuel") is { } fuel && input.Words?.ContainsKey($"{component.Kind}/{fuel.Value.Text}") == true
            ? Mapped(input, $"{component.Kind}/{fuel.Value.Text}")
            : Mapped(input, component.Kind);
    }

    private JsonNode? Reading(string kind, FeedInput input, FeedGroup group, Fed fed)
    {
        var own = group.Readings.LastOrDefault(reading => reading.Body.Kind == kind);
        var found = own ?? (input.House || evidence.Book.IsOfHouse(kind) ? evidence.ReadingsOf(kind).LastOrDefault() : null);
        if (found is null) return null;
        fed.Take(found.Id);
        fed.Own |= own is not null;
        return Written(found.Body.Amount, input.Bare);
    }

    private static JsonNode? Many(string kind, FeedInput input, FeedGroup group, Fed fed)
    {
        var list = new JsonArray();
        foreach (var reading in group.Readings.Where(reading => reading.Body.Kind == kind))
        {
            fed.Take(reading.Id);
            fed.Own = true;
            list.Add((JsonNode?)Written(reading.Body.Amount, input.Bare));
        }
        return list.Count == 0 ? null : list;
    }

    private static JsonNode? Points(string kind, FeedGroup group, Fed fed)
    {
        var list = new JsonArray();
        foreach (var reading in group.Readings.Where(reading => reading.Body.Kind == kind && reading.Body.Point is not null))
        {
            fed.Take(reading.Id);
            fed.Own = true;
            var point = reading.Body.Point!;
            var one = new JsonObject
            {
                ["x"] = $"{point.X:R} {point.Unit}",
                ["y"] = $"{point.Y:R} {point.Unit}",
                ["reading"] = Written(reading.Body.Amount, bare: false),
                ["covering"] = $"{point.Covering:R} {reading.Body.Amount.Unit}",
            };
            if (!string.IsNullOrWhiteSpace(reading.Body.Label)) one["label"] = reading.Body.Label;
            list.Add((JsonNode?)one);
        }
        return list.Count == 0 ? null : list;
    }

    private static JsonNode? Distances(string kind, FeedGroup group, Fed fed)
    {
        var list = new JsonArray();
        foreach (var reading in group.Readings.Where(reading => reading.Body.Kind == kind && reading.Body.Point is not null).OrderBy(reading => reading.Body.Point!.X).ThenBy(reading => reading.Id))
        {
            fed.Take(reading.Id);
            fed.Own = true;
            JsonNode one = new JsonObject { ["distance"] = $"{reading.Body.Point!.X:R} {reading.Body.Point.Unit}", ["level"] = Written(reading.Body.Amount, bare: false) };
            list.Add(one);
        }
        return list.Count == 0 ? null : list;
    }

    private JsonNode? Fact(string name, FeedInput input, FeedGroup group, Fed fed)
    {
        var slash = name.LastIndexOf('/');
        var component = slash < 0 ? group.Component : Related(name[..slash], group);
        if (component is null || !component.Facts.TryGetValue(name[(slash + 1)..], out var slot)) return null;
        fed.Take(slot.Standing[0].By);
        if (slash < 0 || component.Id == group.Component?.Id) fed.Own = true;
        var fact = slot.Value;
        if (input.Words?.ContainsKey(fact.Value.Text) == true) return Mapped(input, fact.Value.Text);
        if (fact.Value.Number is { } number) return fact.Unit is { Length: > 0 } unit && !input.Bare ? $"{number:R} {unit}" : number;
        if (fact.Value.Flag is { } flag) return flag;
        return Mapped(input, fact.Value.Text);
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

    private JsonNode? PropertyFact(string name, Fed fed)
    {
        if (evidence.Property is not { } property || evidence.House is not { } house) return null;
        JsonNode? value = name switch
        {
            "yearBuilt" => property.YearBuilt,
            "floorArea" => property.FloorArea is { } area ? Written(area, bare: false) : null,
            "bedrooms" => property.Bedrooms,
            "bathrooms" => property.Bathrooms,
            "storeys" => property.Storeys,
            "roofPitch" => property.RoofPitch,
            _ => null,
        };
        if (value is not null) fed.Take(house);
        return value;
    }

    private static JsonNode? Mapped(FeedInput input, string? words)
    {
        if (words is null) return null;
        if (input.Words is null) return words;
        return input.Words.TryGetValue(words, out var mapped) ? mapped : null;
    }

    private static JsonNode Written(Amount amount, bool bare) =>
        bare || amount.Unit.Length == 0 ? JsonValue.Create(amount.Value) : JsonValue.Create($"{amount.Value:R} {amount.Unit}");
}
