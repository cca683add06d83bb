using System.Collections.Immutable;

namespace Purlin.Reckoning.Years;

/// <summary>What is published on how long a kind of component lasts.</summary>
public sealed class PublishedLife
{
    private readonly ImmutableArray<string> names;

    private PublishedLife(TableRow row)
    {
        Id = row["id"];
        Name = row["name"];
        names = [Id, Plain(Name), .. row["also"].Split(';', StringSplitOptions.RemoveEmptyEntries).Select(Plain)];
        LowYears = row.NumberOrNone("low");
        TypicalYears = row.NumberOrNone("typical");
        HighYears = row.NumberOrNone("high");
        Lives = row.NumberOrNone("shape") is { } shape ? new Weibull(shape, row.Number("scale"), row.Number("delay")) : null;
        Derivation = row["derivation"];
        Note = row["note"];
        Source = row.Source;
    }

    /// <summary>All of them, in the order of the table.</summary>
    public static ImmutableArray<PublishedLife> All { get; } = [.. Tables.Read("years/service-life.csv").Rows.Select(row => new PublishedLife(row))];

    /// <summary>Its name in inputs, <c>furnace-gas</c>.</summary>
    public string Id { get; }

    /// <summary>Its name for people.</summary>
    public string Name { get; }

    /// <summary>The low published life.</summary>
    public double? LowYears { get; }

    /// <summary>The average published life.</summary>
    public double? TypicalYears { get; }

    /// <summary>The high published life.</summary>
    public double? HighYears { get; }

    /// <summary>The distribution; none where too little is published.</summary>
    public Weibull? Lives { get; }

    /// <summary>How the distribution was come by.</summary>
    public string Derivation { get; }

    /// <summary>What to know about the figures; may be empty.</summary>
    public string Note { get; }

    /// <summary>Where the lives are published, with its mark.</summary>
    public string Source { get; }

    /// <summary>By id, name or another name; case, spaces and hyphens do not matter.</summary>
    public static PublishedLife? Find(string name) => All.FirstOrDefault(life => life.names.Contains(Plain(name)));

    /// <summary>Ids that share a word with a name, at most six; all of them when none does.</summary>
    public static string Like(string name)
    {
        var words = Plain(name).Split('-');
        var like = All.Where(life => life.Id.Split('-').Intersect(words).Any()).Take(6).Select(life => life.Id).ToArray();
        return string.Join(", ", like.Length > 0 ? like : [.. All.Select(life => life.Id)]);
    }

    private static string Plain(string name) =>
        name.Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-').Replace(",", "", StringComparison.Ordinal);
}
