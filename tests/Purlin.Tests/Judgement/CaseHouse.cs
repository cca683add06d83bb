using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Judgement;

/// <summary>Builds the inspection that a case file describes.</summary>
internal static class CaseHouse
{
    public static Inspection Build(JsonObject one)
    {
        var house = new SmallHouse { Property = Property(one["property"] as JsonObject), Standards = [.. Texts(one["standards"])] };
        if ((string?)one["date"] is { } date) house.Date = DateOnly.ParseExact(date, "yyyy-MM-dd");
        foreach (var day in Texts(one["editions"])) house.Editions.Add(DateOnly.ParseExact(day, "yyyy-MM-dd"));
        Dictionary<string, EntryName> places = [];
        foreach (var (name, kind) in one["places"] as JsonObject ?? []) places[name] = house.Place((string)kind!, name);
        Dictionary<string, EntryName> components = [];
        foreach (var (name, node) in one["components"] as JsonObject ?? [])
        {
            components[name] = house.Component((string)node!["kind"]!, Place(places, node["place"]));
            Facts(house, components[name], node["facts"]);
        }
        Facts(house, SmallHouse.House, one["house"]);
        foreach (var (list, outcome) in new[] { ("seen", Outcome.Seen), ("clear", Outcome.Clear), ("notVisible", Outcome.NotVisible) })
            foreach (var node in one[list] as JsonArray ?? []) house.Observe(Observation(node!, outcome, places, components));
        foreach (var node in one["readings"] as JsonArray ?? []) house.Read(Reading(node!, places, components));
        foreach (var node in one["limits"] as JsonArray ?? []) house.Limit((string)node!["what"]!, (string?)node["cause"], (string?)node["next"], Place(places, node["place"]));
        return house.Build();
    }

    private static void Facts(SmallHouse house, EntryName component, JsonNode? facts)
    {
        foreach (var (fact, value) in facts as JsonObject ?? [])
        {
            if (value is JsonArray pair) house.Fact(component, fact, FactValue.Of((double)pair[0]!), (string)pair[1]!);
            else
            {
                house.Fact(component, fact, value!.GetValueKind() switch
                {
                    JsonValueKind.Number => FactValue.Of((double)value),
                    JsonValueKind.True or JsonValueKind.False => FactValue.Of((bool)value),
                    _ => FactValue.Of((string)value!),
                });
            }
        }
    }

    private static EntryBody.ObservationMade Observation(JsonNode node, string outcome, Dictionary<string, EntryName> places, Dictionary<string, EntryName> components) => new()
    {
        Place = places[(string)node["place"]!],
        Condition = (string?)node["condition"],
        Component = Place(components, node["component"]),
        Outcome = outcome,
        Reason = (string?)node["reason"],
        Sample = node["sample"] is JsonArray counts ? new Sample((int)counts[0]!, (int)counts[1]!, (int)counts[2]!) : null,
    };

    private static EntryBody.ReadingTaken Reading(JsonNode node, Dictionary<string, EntryName> places, Dictionary<string, EntryName> components) => new()
    {
        Kind = (string)node["kind"]!,
        Amount = new Amount((double)node["value"]!, (string)node["unit"]!),
        Place = Place(places, node["place"]),
        Component = Place(components, node["component"]),
        Set = (string?)node["set"],
        Point = node["point"] is JsonArray point ? new PlanPoint((double)point[0]!, (double)point[1]!, "ft") : null,
    };

    private static Property Property(JsonObject? node) => new()
    {
        Address = "1 Invented Lane",
        YearBuilt = (int?)node?["yearBuilt"],
        Foundation = (string?)node?["foundation"],
        Garage = (string?)node?["garage"],
        Attic = (string?)node?["attic"],
        FloorArea = node?["floorArea"] is { } area ? new Amount((double)area, "ft²") : null,
        Storeys = (int?)node?["storeys"],
        RoofPitch = (double?)node?["roofPitch"],
        Bedrooms = (int?)node?["bedrooms"],
        Bathrooms = (int?)node?["bathrooms"],
    };

    private static EntryName? Place(Dictionary<string, EntryName> names, JsonNode? node) => node is null ? null : names[(string)node!];

    private static IEnumerable<string> Texts(JsonNode? node) => (node as JsonArray ?? []).Select(text => (string)text!);
}
