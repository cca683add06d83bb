using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Purlin.Journal.Fold;
using Purlin.Reckoning.Quantities;

namespace Purlin.Book.Takings;

/// <summary>Which gas burners count by the way their flue gas leaves.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<BurnerDraft>))]
public enum BurnerDraft
{
    /// <summary>All of them.</summary>
    [JsonStringEnumMemberName("any")]
    Any,

    /// <summary>Those that rise by their own warmth: neither with a fan nor sealed from the room.</summary>
    [JsonStringEnumMemberName("natural")]
    Natural,

    /// <summary>Those with a fan.</summary>
    [JsonStringEnumMemberName("fan-assisted")]
    FanAssisted,
}

// What one reckoning alone needs, in a shape that no other one takes.
public abstract partial record Taking
{
    private static readonly string[] GasBurnerKinds =
        ["furnace", "boiler", "water heater", "range", "cooktop", "clothes dryer", "room heater", "fireplace", "generator", "pool heater"];

    private static readonly string[] GasFuels = ["natural gas", "gas", "propane"];

    /// <summary>Readings with points on a plan, as <c>floor-survey</c> reads them.</summary>
    /// <param name="Of">Kind of reading: <c>floor level</c>.</param>
    public sealed record SurveyPoints(string Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => [Of];

        /// <inheritdoc/>
        public override Pointing PointingOf(string readingKind) => readingKind == Of ? Pointing.Plan : Pointing.None;

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => Listed(Pointed(group, Of, fed).Select(reading =>
        {
            var point = reading.Body.Point!;
            var one = new JsonObject
            {
                ["x"] = $"{point.X:R} {point.Unit}",
                ["y"] = $"{point.Y:R} {point.Unit}",
                ["reading"] = Written(reading.Body.Amount),
                ["covering"] = $"{point.Covering:R} {reading.Body.Amount.Unit}",
            };
            if (!string.IsNullOrWhiteSpace(reading.Body.Label)) one["label"] = reading.Body.Label;
            return (JsonNode?)one;
        }));

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(Of, null, null, null)];
    }

    /// <summary>Readings with their distance from the wall, the nearest first, as <c>grade</c> reads them.</summary>
    /// <param name="Of">Kind of reading: <c>ground level</c>.</param>
    public sealed record LevelsFromWall(string Of) : Taking
    {
        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => [Of];

        /// <inheritdoc/>
        public override Pointing PointingOf(string readingKind) => readingKind == Of ? Pointing.Distance : Pointing.None;

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) =>
            Listed(Pointed(group, Of, fed).OrderBy(reading => reading.Body.Point!.X).ThenBy(reading => reading.Id)
                .Select(reading => (JsonNode?)new JsonObject { ["distance"] = $"{reading.Body.Point!.X:R} {reading.Body.Point.Unit}", ["level"] = Written(reading.Body.Amount) }));

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(Of, null, null, null)];
    }

    /// <summary>Length, width and height of a room multiplied: the only volume that a tape gives.</summary>
    public sealed record RoomVolume : Taking
    {
        private static readonly Reading[] Sides = [new("room length"), new("room width"), new("room height")];

        /// <inheritdoc/>
        public override IEnumerable<string> ReadingKinds => Sides.Select(side => side.Of);

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            var volume = 1.0;
            foreach (var side in Sides)
            {
                if (side.Last(ground, group, fed) is not { } found || !Units.TryConvert(found.Body.Amount.Value, found.Body.Amount.Unit, "ft", out var feet)) return null;
                volume *= feet;
            }
            return $"{volume:R} ft³";
        }
    }

    /// <summary>A plate put together again from what was read off it part by part, as <c>nameplate</c> reads it.</summary>
    public sealed record PlateText : Taking
    {
        // What stands before a part on a plate; nothing before the text of a whole plate.
        private static readonly (string Before, string Fact)[] Parts = [("", "plate"), ("MODEL NO. ", "model"), ("SERIAL NO. ", "serial"), ("MFG DATE ", "date made")];

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            List<string> written = [];
            foreach (var (before, fact) in Parts)
            {
                if (group.Component is not { } component || !component.Facts.TryGetValue(fact, out var slot)) continue;
                fed.Take(slot.Standing[0].By, component.Id);
                written.Add(before + slot.Value.Value.Text + (slot.Value.Unit is { Length: > 0 } unit ? " " + unit : ""));
            }
            return written.Count == 0 ? null : string.Join('\n', written);
        }

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [new Lack(null, Parts[0].Fact, null, group.Component)];

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => components.SelectMany(component => Parts.Select(part => (component, part.Fact)));
    }

    /// <summary>The heat input of every gas burner, as stated or read off its plate. The sum means nothing while one is missing, or while it is not known what one burns.</summary>
    public sealed record GasBurners : Taking
    {
        private static readonly First Input = new([new Fact("input"), new Worked("nameplate", "fuel_input")]);

        /// <summary>Only those in the same place.</summary>
        public bool Here { get; init; }

        /// <summary>Which of them, by their draft.</summary>
        public BurnerDraft Draft { get; init; }

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            List<JsonNode?> made = [];
            foreach (var component in Members(ground, group))
            {
                var node = IsUntold(component) ? null : Input.Value(ground, group.For(component), fed);
                made.Add(node);
                fed.LacksKnownPart |= node is null;
            }
            return Listed(made);
        }

        /// <inheritdoc/>
        public override IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => Lack.OrNothing(Members(ground, group).SelectMany(component =>
            IsUntold(component) ? [new Lack(null, "fuel", null, component)]
            : Input.Value(ground, group.For(component), new FedInputs(component.Id)) is null ? Input.Lacks(ground, group.For(component)) : []));

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) =>
            GasBurnerKinds.SelectMany(kind => (Draft == BurnerDraft.Any ? (string[])["input", "fuel"] : ["input", "fuel", "draft"]).Select(fact => (kind, fact)));

        private IEnumerable<Component> Members(Ground ground, FeedGroup group) =>
            GasBurnerKinds.SelectMany(ground.ComponentsOf).Where(component => (!Here || component.Place == group.Place) && (IsUntold(component) || Counts(component)));

        /// <summary>Whether it cannot be told yet if it counts. One with a fan is told by its draft; that of one without a fuel would be one guess too many.</summary>
        private bool IsUntold(Component component) => Draft != BurnerDraft.FanAssisted && component.Fact("fuel") is null;

        private bool Counts(Component component) => Says(component, "fuel", GasFuels) && Draft switch
        {
            BurnerDraft.Natural => !Says(component, "draft", ["fan-assisted", "sealed"]),
            BurnerDraft.FanAssisted => Says(component, "draft", ["fan-assisted"]),
            _ => true,
        };
    }

    /// <summary>The longest run of all gas piping: the tables size every section by it, whichever section is judged.</summary>
    public sealed record LongestGasRun : Taking
    {
        private const string Piping = "gas piping", Run = "longest run";

        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed)
        {
            (Component Component, double Value, string Unit)? most = null;
            foreach (var component in ground.ComponentsOf(Piping))
            {
                if (!component.Facts.TryGetValue(Run, out var slot) || slot.Value.Value.Number is not { } number) continue;
                var unit = slot.Value.Unit ?? "";
                if (most is { } sofar && !(Units.TryConvert(number, unit, sofar.Unit, out var same) && same > sofar.Value)) continue;
                most = (component, number, unit);
            }
            if (most is not { } found) return null;
            fed.Take(found.Component.Facts[Run].Standing[0].By, found.Component.Id);
            return found.Unit.Length > 0 ? $"{found.Value:R} {found.Unit}" : found.Value;
        }

        /// <inheritdoc/>
        public override IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => [(Piping, Run)];
    }

    /// <summary>True when a heater that stores hot water is on record: its water expands against a closed pipe.</summary>
    public sealed record StoredHotWater : Taking
    {
        /// <inheritdoc/>
        public override JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed) => ground.ComponentsOf("water heater").Any() ? true : null;
    }

    private static IEnumerable<Journal.Fold.Reading> Pointed(FeedGroup group, string kind, FedInputs fed)
    {
        List<Journal.Fold.Reading> all = [.. group.Readings.Where(reading => reading.Body.Kind == kind && reading.Body.Point is not null)];
        foreach (var reading in all) fed.TakeOwn(reading.Id);
        return all;
    }
}
