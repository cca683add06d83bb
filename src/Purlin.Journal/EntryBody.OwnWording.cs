using System.Buffers;
using System.Text.Json;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    private static readonly SearchValues<char> OwnLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-");

    /// <summary>The inspector says a sentence of the rule book in their own words.</summary>
    public sealed record WordingSaid : Stating
    {
        /// <summary>Which sentence, as the rule book names it: <c>water-heater.too-hot/do</c>.</summary>
        public required string Key { get; init; }

        /// <summary>What the book said when it was changed.</summary>
        public string Was { get => field ?? ""; init; }

        /// <summary>What is said instead; empty to say it as the book does again.</summary>
        public string Now { get => field ?? ""; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<WordingSaid>("wording.said", Gathered.Wordings);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, null, Key);

        internal override string Question => $"the own words for “{Key}”";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => Now.Length > 0 ? $"Said my way: {Now}" : $"Said as the book does: {Key}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check)
        {
            var isKey = Key.Length is > 0 and <= 200 && Key.Contains('/', StringComparison.Ordinal);
            check.Must(isKey, "key", Journal.Said.Verbatim(BodyJson.Short(Key)), "journal.wanted.key-sentence-most-200-characters");
            check.AtMost("sentence", Was.Length > Now.Length ? Was : Now, Limits.SentenceCharacters);
        }
    }

    /// <summary>
    /// The whole of one condition of the inspector's own. It travels as JSON: evidence is kept without knowing what a rule means.
    /// </summary>
    public sealed record ConditionWritten : Stating
    {
        /// <summary>Its id, <c>own.bats</c>.</summary>
        public required string Id { get; init; }

        /// <summary>The condition, with the members that a condition of the rule book has; none when it was given up.</summary>
        public JsonElement? Condition { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<ConditionWritten>("condition.written", Gathered.OwnConditions);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, null, Id);

        internal override string Question => $"the own condition “{Id}”";

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Own condition: {Id}{(Condition is null ? ", given up" : "")}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check)
        {
            check.Must(IsOwn(Id), "id", Journal.Said.Verbatim(BodyJson.Short(Id)), "journal.wanted.own-1-60-z-0");
            if (Condition is not { } condition) return;
            var isObject = condition.ValueKind == JsonValueKind.Object;
            check.Must(isObject, "condition", condition.ValueKind.ToString().ToLowerInvariant(), "journal.wanted.object");
            if (isObject) check.AtMost("condition", condition.GetRawText(), Limits.ConditionCharacters);
        }

        /// <summary>Whether this can be the id of a condition of the inspector's own.</summary>
        private static bool IsOwn(string id) =>
            id.StartsWith("own.", StringComparison.Ordinal) && id.Length is > 4 and <= 64 && id.AsSpan(4).IndexOfAnyExcept(OwnLetters) < 0;
    }
}
