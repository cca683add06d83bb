using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal.Fold;

namespace Purlin.Book.Takings;

/// <summary>A word for numbers up to a limit.</summary>
/// <param name="Word">The word.</param>
/// <param name="Most">The limit; none for all above.</param>
public sealed record Band(string Word, double? Most = null);

// What is made of other takings.
public abstract partial record Taking
{
    /// <summary>Several ways, of which the first that is on record counts.</summary>
    /// <param name="Of">The ways, the best one first.</param>
    public sealed record First(IReadOnlyList<Taking> Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.SelectMany(way => way.ReadingKinds);

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.SelectMany(way => way.WordMaps);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Of.Select(way => way.Value(ground, group, fed)).FirstOrDefault(value => value is not null);

        /// <summary>Of the way that was begun; else of the best one.</summary>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => (Of.FirstOrDefault(way => way.LacksKnownPart(ground, group)) ?? Of[0]).Lacks(ground, group);

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.SelectMany(way => way.FactsOf(components));
    }

    /// <summary>What is presumed where nothing stands on record; what stands there in words that nobody knows is never presumed to be the usual.</summary>
    /// <param name="Of">What is taken when it is on record.</param>
    public sealed record Presumed(Taking Of) : Taking
    {
        /// <summary>The words that are presumed.</summary>
        public string? Text { get; init; }

        /// <summary>The number that is presumed.</summary>
        public double? Number { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.ReadingKinds;

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.WordMaps;

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) =>
            Of.Value(ground, group, fed) ?? (Of.IsOnRecord(ground, group) ? null : Text is { } text ? text : Number is { } number ? number : (JsonNode?)null);

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => Of.Lacks(ground, group);

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.FactsOf(components);

        internal override bool IsOnRecord(Ground ground, FeedGroup group) => Of.IsOnRecord(ground, group);
    }

    /// <summary>Words on record put into the words of the reckoning; words that the map does not know give nothing.</summary>
    /// <param name="Of">What is taken.</param>
    /// <param name="Words">Name of the map, among the <c>words</c> of the files of readings.</param>
    public sealed record Mapped(Taking Of, string Words) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.ReadingKinds;

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.WordMaps.Append(Words);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) =>
            Of.Value(ground, group, fed) is { } value && ground.Words(Words).TryGetValue(InWords(value), out var mapped) ? mapped : null;

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) =>
            Of.Lacks(ground, group).Select(lack => lack.Given is null ? lack : lack with { Known = [.. ground.Words(Words).Keys] });

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.FactsOf(components);

        internal override bool IsOnRecord(Ground ground, FeedGroup group) => Of.IsOnRecord(ground, group);

        private static string InWords(JsonNode value) => value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : value.ToJsonString();
    }

    /// <summary>A word by a number: that of the first band whose limit it does not pass.</summary>
    /// <param name="Of">The number.</param>
    /// <param name="Bands">The bands, from below.</param>
    public sealed record Banded(Taking Of, IReadOnlyList<Band> Bands) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.ReadingKinds;

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) =>
            Of.Value(ground, group, fed) is JsonValue plain && double.TryParse(plain.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                ? Bands.FirstOrDefault(band => band.Most is not { } most || number <= most)?.Word : null;

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => Of.Lacks(ground, group);

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.FactsOf(components);
    }

    /// <summary>An object of several inputs; nothing when one that it needs is not on record.</summary>
    /// <param name="Of">Its inputs by name.</param>
    public sealed record Group(IReadOnlyDictionary<string, Taking> Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.Values.SelectMany(taking => taking.ReadingKinds);

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.Values.SelectMany(taking => taking.WordMaps);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Of.Object(ground, group, fed);

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => Lack.OrNothing(Of.Lacks(ground, group));

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.Values.SelectMany(taking => taking.FactsOf(components));
    }

    /// <summary>A list of what these give; one that is not on record is left out, and nothing is given when all are.</summary>
    /// <param name="Of">The elements.</param>
    public sealed record List(IReadOnlyList<Taking> Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.SelectMany(element => element.ReadingKinds);

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.SelectMany(element => element.WordMaps);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Listed(Of.Select(element => element.Value(ground, group, fed)));

        /// <summary>Of several objects nobody can tell which one is meant.</summary>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => Of is [var first, ..] && (Of.Count == 1 || first is not Group) ? first.Lacks(ground, group) : [Lack.Nothing];

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => Of.SelectMany(element => element.FactsOf(components));
    }

    /// <summary>One element for each component of these kinds.</summary>
    /// <param name="Kinds">Kinds of component.</param>
    /// <param name="Of">What is taken of each.</param>
    public sealed record Each(IReadOnlyList<string> Kinds, Taking Of) : Taking
    {
        /// <summary>Only those of which each of these facts is one of its words.</summary>
        public IReadOnlyDictionary<string, IReadOnlyList<string>> Where { get => field ?? new Dictionary<string, IReadOnlyList<string>>(); init; }

        /// <summary>True when the sum means nothing with one of them missing.</summary>
        public bool All { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Of.ReadingKinds;

        /// <inheritdoc/>
        public override IEnumerable<string> WordMaps => Of.WordMaps;

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            List<JsonNode?> made = [];
            foreach (var component in Members(ground))
            {
                var node = Of.Value(ground, group.For(component), fed);
                made.Add(node);
                fed.LacksKnownPart |= All && node is null;
            }
            return Listed(made);
        }

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) =>
            Lack.OrNothing(Members(ground).SelectMany(component => All && Of.Value(ground, group.For(component), new FedInputs(component.Id)) is null ? Of.Lacks(ground, group.For(component)) : []));

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) =>
            Of.FactsOf(Kinds).Concat(Kinds.SelectMany(kind => Where.Keys.Select(fact => (kind, fact))));

        private IEnumerable<Component> Members(Ground ground) => Kinds.SelectMany(ground.ComponentsOf).Where(component => Where.All(fact => Says(component, fact.Key, fact.Value)));
    }

    /// <summary>What another feed works out for the same component, or <c>kind/feed</c> for another one: the date on a plate becomes the year of an age. Only what was read counts, never what was inferred.</summary>
    /// <param name="Of">Id of the feed.</param>
    /// <param name="Member">Which member of its result, with dots: <c>capacity.tons</c>.</param>
    public sealed record Worked(string Of, string Member) : Taking
    {
        /// <summary>True when of a date only the year goes in.</summary>
        public bool Year { get; init; }

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            var name = FactName.Parse(Of);
            if (ground.Meant(name, group) is not { } component || ground.Worked(name.Fact, component) is not { } worked) return null;
            JsonNode? node = worked.Result;
            foreach (var part in Member.Split('.'))
            {
                node = (node as JsonObject)?[part];
                if ((string?)(node as JsonObject)?["confidence"] == "inferred") return null;
            }
            if (node is null) return null;
            foreach (var entry in worked.Entries) fed.Take(entry, component.Id);
            return Plain(node);
        }

        private JsonNode? Plain(JsonNode node)
        {
            var value = node is JsonObject quantity ? quantity["value"] : node;
            if (value?.GetValueKind() != JsonValueKind.String) return node is JsonObject && (string?)node["unit"] is { Length: > 0 } unit ? $"{value} {unit}" : value?.DeepClone();
            var words = value.GetValue<string>();
            if (!Year) return words;
            return words.Length >= 4 && int.TryParse(words.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out var year) ? year : null;
        }
    }

    private static bool Says(Component component, string fact, IReadOnlyList<string> words) =>
        component.Fact(fact) is { } known && words.Contains(known.Value.Text, StringComparer.OrdinalIgnoreCase);
}
