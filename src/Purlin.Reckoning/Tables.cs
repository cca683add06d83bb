using System.Collections.Concurrent;

namespace Purlin.Reckoning;

/// <summary>The published tables that travel inside the program: <c>rulebook/tables/**/*.csv</c>.</summary>
public static class Tables
{
    private static readonly ConcurrentDictionary<string, Table> Parsed = new(StringComparer.Ordinal);

    /// <summary>A table by its path, <c>electrical/ampacity.csv</c>; parsed once.</summary>
    /// <exception cref="ArgumentException">There is no such table: a slip of ours, for names never come from outside.</exception>
    /// <exception cref="FormatException">The file is not as <see cref="Table"/> says.</exception>
    public static Table Read(string name) => Parsed.GetOrAdd(name, static path =>
    {
        using var stream = typeof(Tables).Assembly.GetManifestResourceStream("tables/" + path)
            ?? throw new ArgumentException($"no table tables/{path}", nameof(name));
        using var reader = new StreamReader(stream);
        return Table.Parse(path, reader.ReadToEnd());
    });
}
