using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Readings;

/// <summary>The readings and the component that one working is made for.</summary>
internal sealed record FeedGroup(IReadOnlyList<Reading> Readings, Component? Component, EntryName? Place);

/// <summary>Inputs that were found for a reckoning, with the entries they came from.</summary>
internal sealed class Fed(EntryName? owner)
{
    public JsonObject Inputs { get; } = [];

    public List<EntryName> Entries { get; } = [];

    /// <summary>True when something of this very group went in, so that house-wide readings alone start nothing.</summary>
    public bool Own { get; set; }

    /// <summary>True when every input that must be there was found.</summary>
    public bool Whole { get; set; }

    /// <summary>True when a sum lacks a part of which it is known that it exists.</summary>
    public bool Spoilt { get; set; }

    public void Take(EntryName entry)
    {
        if (!Entries.Contains(entry)) Entries.Add(entry);
    }

    /// <summary>An empty one for the same owner, for a part that may yet be left out.</summary>
    public Fed Beside() => new(owner);

    public void Take(Fed part)
    {
        foreach (var entry in part.Entries) Take(entry);
        Own |= part.Own;
    }

    /// <summary>Takes an entry about a component; one about the component that the working is for starts it.</summary>
    public void Take(EntryName entry, EntryName about)
    {
        Take(entry);
        Own |= about == owner;
    }
}
