using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Cli;

/// <summary>A rule book as a folder on disk: read as it is, without building anything.</summary>
internal static class BookFolder
{
    private const long MostBytes = 64 * 1024 * 1024;
    private static readonly string[] Folders = ["conditions", "readings", "words"];

    /// <summary>All its files, under the paths that the built-in book has.</summary>
    public static Checked<BookFile[]> Read(string folder)
    {
        if (!Directory.Exists(folder)) return new Refusal("folder", Said.Verbatim(folder), "a folder that exists, such as rulebook");
        if (!Folders.Any(inside => Directory.Exists(Path.Combine(folder, inside))))
            return new Refusal("folder", Said.Verbatim(folder), $"a rule book: a folder with {string.Join(", ", Folders)} in it");
        var files = Directory.EnumerateFiles(folder, "*.*", SearchOption.AllDirectories).Where(IsOfBook).Order(StringComparer.Ordinal)
            .ToList();
        var bytes = files.Sum(file => new FileInfo(file).Length);
        if (bytes > MostBytes) return new Refusal("folder", $"{folder} of {bytes} bytes", $"at most {MostBytes} bytes of JSON and CSV");
        return (BookFile[])[.. files.Select(file => new BookFile(PathOf(folder, file), File.ReadAllBytes(file)))];
    }

    private static bool IsOfBook(string file) =>
        file.EndsWith(".json", StringComparison.Ordinal)
        || (file.EndsWith(".csv", StringComparison.Ordinal) && file.Contains("tables", StringComparison.Ordinal));

    private static string PathOf(string folder, string file) => "rulebook/" + Path.GetRelativePath(folder, file).Replace('\\', '/');
}
