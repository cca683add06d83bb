using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Readings;

/// <summary>Inputs out of readings. Numbers go in with their unit exactly as they were written.</summary>
internal sealed class FromReadings(EvidenceIndex evidence)
{
    public JsonNode? Last(string kind, FeedInput input, FeedGroup group, Fed fed) =>
        Find(kind, input, group, fed) is { } found ? Written(found.Body.Amount, input.Bare) : null;

    public static JsonNode? Many(string kind, FeedInput input, FeedGroup group, Fed fed)
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

    public static JsonNode? Points(string kind, FeedGroup group, Fed fed)
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

    public static JsonNode? Distances(string kind, FeedGroup group, Fed fed)
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

    /// <summary>Three lengths multiplied: the only volume that a tape gives.</summary>
    public JsonNode? Box(IReadOnlyList<string> kinds, FeedInput input, FeedGroup group, Fed fed)
    {
        var volume = 1.0;
        foreach (var kind in kinds)
        {
            if (Find(kind, input, group, fed) is not { } found || !Units.TryConvert(found.Body.Amount.Value, found.Body.Amount.Unit, "ft", out var feet)) return null;
            volume *= feet;
        }
        return $"{volume:R} ft³";
    }

    private Reading? Find(string kind, FeedInput input, FeedGroup group, Fed fed)
    {
        var own = group.Readings.LastOrDefault(reading => reading.Body.Kind == kind);
        var found = own ?? (input.House || evidence.Book.IsOfHouse(kind) ? evidence.ReadingsOf(kind).LastOrDefault()
            : input.Here && group.Place is { } here ? evidence.ReadingsOf(kind).LastOrDefault(reading => evidence.PlaceOf(reading) == here) : null);
        if (found is null) return null;
        fed.Take(found.Id);
        fed.Own |= own is not null;
        return found;
    }

    public static JsonNode Written(Amount amount, bool bare) =>
        bare || amount.Unit.Length == 0 ? JsonValue.Create(amount.Value) : JsonValue.Create($"{amount.Value:R} {amount.Unit}");
}
