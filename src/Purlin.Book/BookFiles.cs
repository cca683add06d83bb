using System.Reflection;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Book;

/// <summary>A file of the rule book.</summary>
/// <param name="Path">Path under the root: <c>rulebook/conditions/plumbing/water-heater.json</c>.</param>
/// <param name="Bytes">UTF-8: JSON, or CSV under <c>rulebook/tables</c>.</param>
public sealed record BookFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>The files of the rule book that were built into this program.</summary>
public static class BookFiles
{
    /// <summary>Those that the rules are read from, by path.</summary>
    public static IReadOnlyList<BookFile> Embedded() =>
        [.. In(typeof(BookFiles).Assembly, "rulebook/", "").OrderBy(file => file.Path, StringComparer.Ordinal)];

    /// <summary>All of them, by path: the rules, the tables of the reckonings, and the sentences of every language.</summary>
    public static IReadOnlyList<BookFile> Whole() =>
    [
        .. Embedded().Concat(In(typeof(Tables).Assembly, "tables/", "rulebook/")).Concat(In(typeof(Tongue).Assembly, "words/", "rulebook/"))
            .OrderBy(file => file.Path, StringComparer.Ordinal),
    ];

    private static IEnumerable<BookFile> In(Assembly assembly, string folder, string before) =>
        assembly.GetManifestResourceNames().Select(name => (Name: name, Path: name.Replace('\\', '/')))
            .Where(file => file.Path.StartsWith(folder, StringComparison.Ordinal))
            .Select(file => new BookFile(before + file.Path, Read(assembly, file.Name)));

    private static byte[] Read(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
