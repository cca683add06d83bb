using Purlin.Journal.Fold;

namespace Purlin.Journal;

/// <summary>The visit that another one comes back to: its record, and the edition of its report that was in hand.</summary>
public sealed record EarlierVisit
{
    /// <summary>Id of that inspection.</summary>
    public required string Inspection { get; init; }

    /// <summary>The day of that visit.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Number of the edition; none when none was sealed.</summary>
    public int? Edition { get; init; }

    /// <summary>Its seal: the hash of the line that sealed it; none when none was sealed.</summary>
    public string? Seal { get; init; }
}

/// <summary>
/// Begins a second visit: the same house with its places and things, and nothing that was seen, read or told there before. What is found
/// now
/// is recorded anew, so that the record of each visit stands by itself.
/// </summary>
public static class SecondVisit
{
    /// <summary>The opening of the second visit: the house as it was known, and which visit it comes back to.</summary>
    /// <param name="earlier">The first visit.</param>
    /// <param name="date">The day of the second.</param>
    public static EntryBody.InspectionOpened Opening(Inspection earlier, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        var opened = earlier.Opening?.Body ?? throw new ArgumentException("the earlier visit has no opening", nameof(earlier));
        var last = earlier.Editions.OrderBy(edition => edition.Body.Number).LastOrDefault();
        return opened with
        {
            Date = date,
            Weather = null,
            Present = null,
            Earlier = new EarlierVisit { Inspection = earlier.Id, Date = opened.Date, Edition = last?.Body.Number, Seal = last?.Seal },
        };
    }

    /// <summary>Writes the parts of the house, places and things that stand in the first visit, under names of the second.</summary>
    /// <param name="earlier">The first visit, folded.</param>
    /// <param name="entries">Its lines.</param>
    /// <param name="opening">The opening of the second visit, already written.</param>
    /// <param name="write">Writes an entry of the second visit and tells its name.</param>
    public static void Furnish(Inspection earlier, IEnumerable<Entry> entries, EntryName opening, Func<EntryBody, EntryName> write)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(write);
        HashSet<EntryName> standing = [.. earlier.Places.Select(place => place.Id), .. earlier.Components.Select(component =>
            component.Id), .. earlier.Parts.Select(part => part.Id)];
        Dictionary<EntryName, EntryName> now = [];
        if (earlier.Opening is { } opened) now[opened.Id] = opening;
        foreach (var entry in entries.OrderBy(entry => entry.Hlc).ThenBy(entry => entry.Name.Device, StringComparer.Ordinal).ThenBy(entry =>
            entry.Name.Seq))
            if (standing.Contains(entry.Name) && entry.Body is EntryBody.PartAdded or EntryBody.PlaceAdded or EntryBody.ComponentAdded
                && entry.Body.Names().All(now.ContainsKey))
                now[entry.Name] = write((entry.Body with { Origin = null }).Mapped(name => now[name]));
    }
}
