namespace Purlin.Journal.Fold;

/// <summary>
/// The state of one inspection: a fold over its entries. The same set of entries gives the same state whatever the order and repetition
/// of their delivery. All lists are in causal order; each stands in a file of its own beside what it holds. Withdrawn things are not in the
/// lists; see <see cref="Withdrawn"/>.
/// </summary>
public sealed partial record Inspection
{
    /// <summary>Id of the inspection; empty when there is no entry at all.</summary>
    public required string Id { get; init; }

    /// <summary>The opening entry; none when it has not arrived yet. When several stand, the first in causal order.</summary>
    public Opening? Opening { get; init; }

    /// <summary>Devices that wrote here.</summary>
    public IReadOnlyList<Device> Devices { get; init; } = [];

    /// <summary>Sealed editions, by number.</summary>
    public IReadOnlyList<SealedEdition> Editions { get; init; } = [];

    /// <summary>What a person has to settle: slots with several values, parent cycles, withdrawals without effect, forks, far-off clocks.</summary>
    public IReadOnlyList<Unsettled> Unsettled { get; init; } = [];

    /// <summary>Entries of a type this program does not know, counted on screen.</summary>
    public IReadOnlyList<EntryName> Unknown { get; init; } = [];

    /// <summary>What of standing lines was not taken as it was written, in causal order.</summary>
    public IReadOnlyList<MisreadEntry> Misread { get; init; } = [];

    /// <summary>Entries that are withdrawn at present.</summary>
    public IReadOnlyList<EntryName> Withdrawn { get; init; } = [];

    /// <summary>Names of sequence numbers that are missing between known ones, of each device.</summary>
    public IReadOnlyList<EntryName> Missing { get; init; } = [];

    /// <summary>Highest sequence of each device.</summary>
    public IReadOnlyDictionary<string, int> Heads { get; init; } = new Dictionary<string, int>();

    /// <summary>Number of entries folded.</summary>
    public int Entries { get; init; }

    /// <summary>The slots of the fold that this is the latest state of; none for a state without entries.</summary>
    internal Slots? Slots { get; init; }

    /// <summary>The entry as it is to be written here: it replaces every value that stands in its slot, so that nothing diverges from what was in hand.</summary>
    /// <returns>An entry that states nothing, or that says itself what it replaces, as it is.</returns>
    public TBody Replacing<TBody>(TBody body)
        where TBody : EntryBody
    {
        ArgumentNullException.ThrowIfNull(body);
        if (body is not EntryBody.Stating { Replaces.Count: 0 } stating || Slots?.At(stating.Slot) is not { Count: > 0 } standing) return body;
        return (TBody)(EntryBody)(stating with { Replaces = [.. standing.Take(Limits.NamesInList).Select(line => line.Name)] });
    }
}

/// <summary>The opening of the inspection.</summary>
/// <param name="Id">Name of the opening entry.</param>
/// <param name="Body">What it says.</param>
public sealed record Opening(EntryName Id, EntryBody.InspectionOpened Body);

/// <summary>What of one line was not taken as it was written.</summary>
/// <param name="Entry">The line.</param>
/// <param name="Type">Its type.</param>
/// <param name="What">What it is.</param>
public sealed record MisreadEntry(EntryName Entry, string Type, Misread What);

/// <summary>A device that wrote here.</summary>
/// <param name="Id">Its id, with fork mark.</param>
/// <param name="Name">What its owner calls it, when it said so.</param>
/// <param name="Head">Its highest sequence.</param>
public sealed record Device(string Id, string? Name, int Head);

/// <summary>A sealed edition.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="Seal">Hash of the sealing line.</param>
public sealed record SealedEdition(EntryName Id, EntryBody.EditionSealed Body, string Seal);
