using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Book.Takings;

/// <summary>
/// The evidence as takings ask for it. Whoever judges stands behind it and notes what was asked, so that a result is worked out anew when
/// that changes; a taking asks nothing in any other way.
/// </summary>
public abstract class Ground
{
    /// <summary>The year of the visit.</summary>
    public abstract int YearNow { get; }

    /// <summary>The property and the entry that states it; none before an opening.</summary>
    public abstract (Property Property, EntryName Entry)? House { get; }

    /// <summary>Components of a kind, in the order in which they were recorded.</summary>
    public abstract IEnumerable<Component> ComponentsOf(string kind);

    /// <summary>Readings of a kind, in the order in which they were taken.</summary>
    public abstract IEnumerable<Reading> ReadingsOf(string kind);

    /// <summary>Where a reading was taken: its own place, else that of what it was taken on.</summary>
    public abstract EntryName? PlaceOf(Reading reading);

    /// <summary>Whether one reading of this kind speaks for the whole house.</summary>
    public abstract bool IsOfHouse(string readingKind);

    /// <summary>The number that the standards chosen set, the strictest of several; none when none of them sets it.</summary>
    public abstract double? Setting(string name);

    /// <summary>A map of words by its name; empty when the book has none of that name.</summary>
    public abstract IReadOnlyDictionary<string, string> Words(string map);

    /// <summary>
    /// What another feed works out for a component, with the entries it rests on; none when it cannot be worked out, or is not about such a
    /// thing.
    /// </summary>
    public abstract (JsonObject Result, IReadOnlyList<EntryName> Entries)? Worked(string feed, Component component);

    /// <summary>
    /// The component that a name speaks of: <c>kind/fact</c> of another one that belongs with this one, else the group's own.
    /// </summary>
    internal Component? Meant(FactName name, FeedGroup group) => name.Kind is { } kind ? Related(kind, group) : group.Component;

    /// <summary>
    /// The component of that kind that belongs with this one: of the same name in the same place, of the same name, else the only one there
    /// is.
    /// </summary>
    private Component? Related(string kind, FeedGroup group)
    {
        if (group.Component?.Kind == kind) return group.Component;
        var all = ComponentsOf(kind).ToList();
        return all.FirstOrDefault(component => component.Place == group.Place && component.Name == group.Component?.Name)
            ?? all.FirstOrDefault(component => component.Name is not null && component.Name == group.Component?.Name)
            ?? (all.Count == 1 ? all[0] : null);
    }
}
