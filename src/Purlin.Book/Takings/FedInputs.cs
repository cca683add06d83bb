using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Book.Takings;

/// <summary>The readings and the component that one working is made for.</summary>
/// <param name="Readings">Readings that belong together, in the order in which they were taken.</param>
/// <param name="Component">The component it is about; none when it is about none.</param>
/// <param name="Place">Where; none for the whole house.</param>
public sealed record FeedGroup(IReadOnlyList<Reading> Readings, Component? Component, EntryName? Place)
{
    /// <summary>The same readings as far as they were taken on one component, for that component.</summary>
    internal FeedGroup For(Component component) =>
        new([.. Readings.Where(reading => reading.Body.Component == component.Id)], component, component.Place);
}

/// <summary>Inputs that were found for a reckoning (its bound arguments), with the entries they came from.</summary>
/// <param name="owner">The component that the working is for.</param>
public sealed class FedInputs(EntryName? owner)
{
    /// <summary>The inputs as the reckoning reads them.</summary>
    public JsonObject Inputs { get; } = [];

    /// <summary>The entries they came from, each once.</summary>
    public List<EntryName> Entries { get; } = [];

    /// <summary>True when something of this very group went in, so that house-wide readings alone start nothing.</summary>
    public bool IsBegun { get; internal set; }

    /// <summary>True when every input that must be there was found.</summary>
    public bool IsWhole { get; internal set; }

    /// <summary>True when a sum lacks a part of which it is known that it exists.</summary>
    public bool LacksKnownPart { get; internal set; }

    /// <summary>Takes an entry in evidence.</summary>
    internal void Take(EntryName entry)
    {
        if (!Entries.Contains(entry)) Entries.Add(entry);
    }

    /// <summary>Takes an entry of the very group.</summary>
    internal void TakeOwn(EntryName entry)
    {
        Take(entry);
        IsBegun = true;
    }

    /// <summary>Takes an entry about a component; one about the component that the working is for begins it.</summary>
    internal void Take(EntryName entry, EntryName about)
    {
        Take(entry);
        IsBegun |= about == owner;
    }

    /// <summary>An empty one for the same owner, for a part that may yet be left out.</summary>
    internal FedInputs Beside() => new(owner);

    internal void Take(FedInputs part)
    {
        foreach (var entry in part.Entries) Take(entry);
        IsBegun |= part.IsBegun;
    }
}
