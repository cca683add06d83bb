using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Book.Takings;

/// <summary>How far away a reading may have been taken that goes into a working.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Reach>))]
public enum Reach
{
    /// <summary>In the same set, on the same component, or in the same place: as the feed sorts them.</summary>
    [JsonStringEnumMemberName("group")]
    Group,

    /// <summary>Anywhere in the same place.</summary>
    [JsonStringEnumMemberName("place")]
    Place,

    /// <summary>Anywhere in the house.</summary>
    [JsonStringEnumMemberName("house")]
    House,
}

// What stands on record as it is. The members called Of name what is taken.
public abstract partial record Taking
{
    /// <summary>A fact of the component the working is for, or <c>kind/fact</c> of another one that belongs with it.</summary>
    /// <param name="Of">Which fact.</param>
    public sealed record Fact(string Of) : Taking
    {
        /// <summary>True when the number goes in without its unit, since the input is a count.</summary>
        public bool Bare { get; init; }

        private FactName Name => FactName.Parse(Of);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            if (ground.Meant(Name, group) is not { } component || !component.Facts.TryGetValue(Name.Fact, out var slot)) return null;
            fed.Take(slot.Standing[0].By, component.Id);
            return Stated(slot.Value, Bare);
        }

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group)
        {
            var component = ground.Meant(Name, group);
            return [new Lack(null, Name.Fact, null, component) { Given = component?.Fact(Name.Fact)?.Value.Text }];
        }

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) =>
            Name.Kind is { } kind ? [(kind, Name.Fact)] : components.Select(component => (component, Name.Fact));

        internal override bool IsOnRecord(Ground ground, FeedGroup group) => ground.Meant(Name, group)?.Fact(Name.Fact) is not null;
    }

    /// <summary>The last reading of a kind.</summary>
    /// <param name="Of">Which kind.</param>
    public sealed record Reading(string Of) : Taking
    {
        /// <summary>How far away it may have been taken; one of a kind that speaks for the whole house, anywhere.</summary>
        public Reach From { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => [Of];

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Last(ground, group, fed) is { } found ? Written(found.Body.Amount) : null;

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(Of, null, null, null)];

        /// <summary>The reading itself.</summary>
        internal Journal.Fold.Reading? Last(Ground ground, FeedGroup group, FedInputs fed)
        {
            if (group.Readings.LastOrDefault(reading => reading.Body.Kind == Of) is { } own)
            {
                fed.TakeOwn(own.Id);
                return own;
            }
            var found = From == Reach.House || ground.IsOfHouse(Of) ? ground.ReadingsOf(Of).LastOrDefault()
                : From == Reach.Place && group.Place is { } here ? ground.ReadingsOf(Of).LastOrDefault(reading => ground.PlaceOf(reading) == here) : null;
            if (found is not null) fed.Take(found.Id);
            return found;
        }
    }

    /// <summary>All readings of a kind in the group, as a list.</summary>
    /// <param name="Of">Which kind.</param>
    public sealed record Readings(string Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => [Of];

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) =>
            Listed(OfKind(group, Of, fed).Select(reading => (JsonNode?)Written(reading.Body.Amount)));

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(Of, null, null, null)];
    }

    /// <summary>A fact of the property.</summary>
    /// <param name="Of">yearBuilt, floorArea, footprint, bedrooms, bathrooms, storeys, roofPitch or foundation.</param>
    public sealed record Property(string Of) : Taking
    {
        /// <summary>What can be taken of a property.</summary>
        public static IReadOnlyList<string> Known { get; } =
            ["yearBuilt", "floorArea", "footprint", "bedrooms", "bathrooms", "storeys", "roofPitch", "foundation"];

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            if (ground.House is not { } house || In(house.Property) is not { } value) return null;
            fed.Take(house.Entry);
            return value;
        }

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(null, null, Of, null)];

        private JsonNode? In(Journal.Property property) => Of switch
        {
            "yearBuilt" => property.YearBuilt,
            "floorArea" => property.FloorArea is { } area ? Written(area) : null,
            "footprint" => property.FloorArea is { } area && property.Storeys is { } storeys and > 0 ? Written(area with { Value = area.Value / storeys }) : null,
            "bedrooms" => property.Bedrooms,
            "bathrooms" => property.Bathrooms,
            "storeys" => property.Storeys,
            "roofPitch" => property.RoofPitch,
            "foundation" => property.Foundation,
            _ => null,
        };
    }

    /// <summary>A number that the standards chosen set; the strictest of several counts.</summary>
    /// <param name="Of">Which setting: <c>cooling outdoor least</c>.</param>
    public sealed record StandardSetting(string Of) : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => ground.Setting(Of) is { } number ? number : null;
    }

    /// <summary>The year of the visit.</summary>
    public sealed record Now : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => ground.YearNow;
    }

    /// <summary>The kind of the component itself.</summary>
    public sealed record Kind : Taking
    {
        /// <summary>The map that puts it into the words of the reckoning: by kind and fuel, <c>furnace/oil</c>, where it tells fuels apart, else by kind.</summary>
        public string? Words { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Words is { } map ? [map] : [];

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            if (group.Component is not { } component) return null;
            if (Words is not { } map) return component.Kind;
            var words = ground.Words(map);
            if (component.Fact("fuel") is { } fuel && words.TryGetValue($"{component.Kind}/{fuel.Value.Text}", out var byFuel)) return byFuel;
            return words.TryGetValue(component.Kind, out var plain) ? plain : null;
        }
    }

    /// <summary>Fixed words.</summary>
    /// <param name="Is">The words.</param>
    public sealed record FixedWords(string Is) : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Is;
    }

    /// <summary>A fixed number.</summary>
    /// <param name="Is">The number.</param>
    public sealed record FixedNumber(double Is) : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Is;
    }

    /// <summary>How many components of these kinds are on record; nothing when none is.</summary>
    /// <param name="Of">Kinds of component.</param>
    public sealed record Count(IReadOnlyList<string> Of) : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            List<Component> all = [.. Of.SelectMany(ground.ComponentsOf)];
            foreach (var component in all) fed.Take(component.Id);
            return all.Count == 0 ? null : all.Count;
        }
    }

    /// <summary>A number with its unit exactly as it was written; a number without one is a bare number.</summary>
    private static JsonNode Written(Amount amount) => amount.Unit.Length == 0 ? JsonValue.Create(amount.Value) : JsonValue.Create($"{amount.Value:R} {amount.Unit}");

    private static JsonNode Stated(Journal.Fold.Fact fact, bool bare) =>
        fact.Value.Number is { } number ? fact.Unit is { Length: > 0 } unit && !bare ? JsonValue.Create($"{number:R} {unit}") : JsonValue.Create(number)
        : fact.Value.Flag is { } flag ? JsonValue.Create(flag)
        : JsonValue.Create(fact.Value.Text);

    /// <summary>Readings of a kind in the very group, each taken in evidence.</summary>
    private static List<Journal.Fold.Reading> OfKind(FeedGroup group, string kind, FedInputs fed)
    {
        List<Journal.Fold.Reading> all = [.. group.Readings.Where(reading => reading.Body.Kind == kind)];
        foreach (var reading in all) fed.TakeOwn(reading.Id);
        return all;
    }

    /// <summary>What is there of these, as a list; nothing when none is.</summary>
    private static JsonArray? Listed(IEnumerable<JsonNode?> nodes) =>
        nodes.Where(node => node is not null).ToArray() is { Length: > 0 } made ? [.. made] : null;
}
