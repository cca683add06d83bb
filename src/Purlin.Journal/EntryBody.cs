using System.Text.Json;
using System.Text.Json.Serialization;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

/// <summary>
/// What an entry says. A closed hierarchy; its cases fall under three merge rules (see <c>docs/SYNC.md</c>): additions stand by themselves,
/// <see cref="Stating"/> entries give a slot a value and name in <c>Replaces</c> every value they saw there, and withdrawals take back or
/// restore an entry. All that a kind of entry needs stands on its case (<c>docs/adding-an-entry.md</c>). A list that is absent in a line
/// reads as empty: the generated JSON code ignores initialisers of <c>init</c> members, so their getters say it. A type that this program
/// does not know is kept as <see cref="Unknown"/>.
/// </summary>
public abstract partial record EntryBody
{
    private EntryBody() { }

    /// <summary>The type as written in the envelope, <c>reading.taken</c> for instance.</summary>
    [JsonIgnore]
    public virtual string Type => OfKind.Type;

    /// <summary>The proposal that this entry takes, as offered or changed; none for what was not proposed.</summary>
    public EntryName? Origin { get; init; }

    /// <summary>What there is to know of the kind apart from any one entry.</summary>
    internal abstract EntryKind OfKind { get; }

    /// <summary>
    /// The entry that this one says something of, so that what became of it is made again; none for what stands by itself.
    /// </summary>
    internal virtual EntryName? Owner => null;

    /// <summary>How the entry is called in a sentence for people: <c>The place “Attic”</c>.</summary>
    internal abstract string Said { get; }

    /// <summary>The act in a few words, for a list of acts: <c>Place: Attic</c>.</summary>
    /// <param name="called">What the things it names are called.</param>
    public abstract string Told(Called called);

    /// <summary>
    /// The same with every name of its own members passed through <paramref name="map"/>; <see cref="Mapped"/> sees to the rest.
    /// </summary>
    internal abstract EntryBody Named(Func<EntryName, EntryName> map);

    /// <summary>Refuses what the shape alone does not: words beyond a closed list, numbers beyond a limit.</summary>
    internal abstract void Check(BodyCheck check);

    /// <summary>The body with every name in it passed through <paramref name="map"/>.</summary>
    internal EntryBody Mapped(Func<EntryName, EntryName> map)
    {
        var named = Named(map);
        if (Origin is { } origin && map(origin) is var now && now != origin) named = named with { Origin = now };
        if (named is not Stating { Replaces.Count: > 0 } stating) return named;
        var replaced = Each(stating.Replaces, map);
        return replaced.SequenceEqual(stating.Replaces) ? named : stating with { Replaces = replaced };
    }

    /// <summary>Every entry the body names: what it builds on, in the order of its members.</summary>
    internal IReadOnlyList<EntryName> Names()
    {
        List<EntryName>? found = null;
        Mapped(name =>
        {
            (found ??= []).Add(name);
            return name;
        });
        return (IReadOnlyList<EntryName>?)found ?? [];
    }

    private static EntryName? Maybe(EntryName? name, Func<EntryName, EntryName> map) => name is { } there ? map(there) : null;

    private static IReadOnlyList<EntryName> Each(IReadOnlyList<EntryName> names, Func<EntryName, EntryName> map) =>
        names.Count == 0 ? names : [.. names.Select(map)];

    /// <summary>An entry that gives a slot a value: it names every value it saw standing there.</summary>
    public abstract record Stating : EntryBody
    {
        /// <summary>
        /// The entries whose values this one replaces; empty when it saw none. <see cref="Inspection.Replacing"/> fills it in.
        /// </summary>
        public IReadOnlyList<EntryName> Replaces { get => field ?? []; init; }

        /// <summary>The slot it gives a value.</summary>
        internal abstract SlotKey Slot { get; }

        internal sealed override EntryName? Owner => Slot.Of;

        /// <summary>What is asked when several values stand in the slot: <c>the name of a place</c>.</summary>
        internal abstract string Question { get; }
    }

    /// <summary>An entry of a type written by a newer program: kept, forwarded and counted on screen, passed over by the fold.</summary>
    /// <param name="UnknownType">The type as written.</param>
    /// <param name="Body">The body as written.</param>
    public sealed record Unknown(string UnknownType, JsonElement Body) : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => UnknownType;

        internal static EntryKind ItsKind { get; } = EntryKind.Rare<Unknown>("");

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"An entry ({Type})";

        /// <inheritdoc/>
        public override string Told(Called called) => Type;

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this;

        internal override void Check(BodyCheck check) { }
    }
}

/// <summary>What the things are called that an act names by their entries or ids.</summary>
/// <param name="Place">Name of a place; of the whole house for none.</param>
/// <param name="Condition">Name of a condition of the rule book; none when it has no such condition.</param>
public sealed record Called(Func<EntryName?, string> Place, Func<string, string?> Condition);
