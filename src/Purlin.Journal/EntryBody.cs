using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Journal;

/// <summary>
/// What an entry says. A closed hierarchy; its cases fall under three merge rules (see <c>docs/SYNC.md</c>): additions stand by
/// themselves, state entries give a slot a value and name in <c>Replaces</c> every value they saw there, and withdrawals
/// take back or restore an entry. A list that is absent in a line reads as empty: the generated JSON code ignores initialisers of
/// <c>init</c> members, so their getters say it. A type that this program does not know is kept as <see cref="Unknown"/>.
/// </summary>
public abstract partial record EntryBody
{
    private EntryBody() { }

    /// <summary>The type as written in the envelope, <c>reading.taken</c> for instance.</summary>
    [JsonIgnore]
    public abstract string Type { get; }

    /// <summary>An entry of a type written by a newer program: kept, forwarded and counted on screen, passed over by the fold.</summary>
    /// <param name="UnknownType">The type as written.</param>
    /// <param name="Body">The body as written.</param>
    public sealed record Unknown(string UnknownType, JsonElement Body) : EntryBody
    {
        /// <inheritdoc/>
        public override string Type => UnknownType;
    }
}

/// <summary>An entry that gives a slot a value: it names every value it saw standing there.</summary>
public interface IStated
{
    /// <summary>The entries whose values this one replaces; empty when it saw none.</summary>
    IReadOnlyList<EntryName> Replaces { get; }
}
