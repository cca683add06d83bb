using System.Text.Json;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>The inspector says a sentence of the rule book in their own words.</summary>
    public sealed record WordingSaid : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "wording.said";

        /// <summary>Which sentence, as the rule book names it: <c>water-heater.too-hot/do</c>.</summary>
        public required string Key { get; init; }

        /// <summary>What the book said when it was changed.</summary>
        public string Was { get => field ?? ""; init; }

        /// <summary>What is said instead; empty to say it as the book does again.</summary>
        public string Now { get => field ?? ""; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }

    /// <summary>The whole of one condition of the inspector's own. It travels as JSON: evidence is kept without knowing what a rule means.</summary>
    public sealed record ConditionWritten : EntryBody, IStated
    {
        /// <inheritdoc/>
        public override string Type => "condition.written";

        /// <summary>Its id, <c>own.bats</c>.</summary>
        public required string Id { get; init; }

        /// <summary>The condition, with the members that a condition of the rule book has; none when it was given up.</summary>
        public JsonElement? Condition { get; init; }

        /// <inheritdoc/>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }
    }
}
