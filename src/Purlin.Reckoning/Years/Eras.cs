using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Purlin.Reckoning.Years;

/// <summary>The table of eras.</summary>
public static class Eras
{
    /// <summary>All rows, in the order of the table.</summary>
    public static ImmutableArray<Era> All { get; } = [.. Tables.Read("eras.csv").Rows.Select(row => new Era(row))];

    private static readonly FrozenDictionary<string, Era> ById = All.ToFrozenDictionary(era => era.Id, StringComparer.Ordinal);

    /// <summary>The row of that id, or none.</summary>
    public static Era? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>The row that holds in a state: its own law where it has one for that row, else the row itself.</summary>
    public static string In(string id, string? state) =>
        state is null ? id : All.FirstOrDefault(era => era.StandsFor == id
        && string.Equals(era.State, state, StringComparison.OrdinalIgnoreCase))?.Id ?? id;

    /// <summary>Ids that share a word with what was asked for, at most six.</summary>
    public static ImmutableArray<string> Like(string id)
    {
        var words = id.Split('-', ' ', '_');
        return [.. All.Select(era => (era.Id, Shared: era.Id.Split('-').Intersect(words, StringComparer.OrdinalIgnoreCase).Count()))
            .Where(era => era.Shared > 0).OrderByDescending(era => era.Shared).Take(6).Select(era => era.Id)];
    }
}
