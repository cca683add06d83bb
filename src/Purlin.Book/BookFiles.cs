using System.Reflection;

namespace Purlin.Book;

/// <summary>A file of the rule book.</summary>
/// <param name="Path">Path under the root: <c>rulebook/conditions/plumbing/water-heater.json</c>.</param>
/// <param name="Bytes">UTF-8 JSON.</param>
public sealed record BookFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>The files of the rule book that were built into this program.</summary>
public static class BookFiles
{
    /// <summary>All of them, by path.</summary>
    public static IReadOnlyList<BookFile> Embedded()
    {
        var assembly = typeof(BookFiles).Assembly;
        List<BookFile> files = [];
        foreach (var name in assembly.GetManifestResourceNames().Order(StringComparer.Ordinal))
        {
            if (!name.StartsWith("rulebook", StringComparison.Ordinal)) continue;
            files.Add(new BookFile(name.Replace('\\', '/'), Read(assembly, name)));
        }
        return files;
    }

    private static byte[] Read(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
