using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>
/// Which rule book this is: a number that a person can say, and the hash over all its files, so that two different books never bear one
/// name unnoticed. Both stand in <c>rulebook/edition.json</c>, which <c>purlin book stamp</c> writes.
/// </summary>
public sealed record BookEdition
{
    /// <summary>Path of the file that holds it.</summary>
    public const string Path = "rulebook/edition.json";

    /// <summary>Year and month and a counter: <c>2026.11.1</c>.</summary>
    [JsonPropertyName("edition")]
    public required string Number { get; init; }

    /// <summary>SHA-256 over all files of the book as they were when it was stamped, see <see cref="HashOf"/>.</summary>
    public required string Sha256 { get; init; }

    /// <summary>A book that nobody stamped: a folder of tests, or one begun by hand.</summary>
    public static BookEdition None { get; } = new() { Number = "not stamped", Sha256 = "" };

    /// <summary>
    /// SHA-256 over the path and the SHA-256 of every file, in the order of their paths; the file of the edition itself is left out. Line
    /// ends count as one character, so that a copy checked out on another system is the same book.
    /// </summary>
    public static string HashOf(IEnumerable<BookFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var list = new StringBuilder();
        foreach (var file in files.Where(file => file.Path != Path).OrderBy(file => file.Path, StringComparer.Ordinal))
            list.Append(file.Path).Append('\n').Append(Sha.Of(WithoutReturns(file.Bytes.Span))).Append('\n');
        return Sha.Of(Encoding.UTF8.GetBytes(list.ToString()));
    }

    /// <summary>The stamp for these files: the same when nothing changed, else the next number of its month.</summary>
    /// <param name="files">All files of the book.</param>
    /// <param name="today">For the year and month of a new number.</param>
    public static BookEdition Stamp(IReadOnlyList<BookFile> files, DateOnly today)
    {
        var (before, now) = (In(files), HashOf(files));
        if (before.Sha256 == now) return before;
        var month = $"{today.Year}.{today.Month}.";
        var counter = before.Number.StartsWith(month, StringComparison.Ordinal)
            && int.TryParse(before.Number.AsSpan(month.Length), out var last) ? last + 1 : 1;
        return new BookEdition { Number = $"{month}{counter}", Sha256 = now };
    }

    /// <summary>The edition that stands among these files; <see cref="None"/> when none does or it cannot be read.</summary>
    public static BookEdition In(IEnumerable<BookFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        try
        {
            return files.FirstOrDefault(file => file.Path == Path) is { } file
                ? JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.BookEdition)! : None;
        }
        catch (JsonException)
        {
            return None;
        }
    }

    /// <summary>As it stands in the file.</summary>
    public string Write() =>
        $"{{\n  \"edition\": {JsonSerializer.Serialize(Number, BookJson.Default.String)},\n  \"sha256\": \"{Sha256}\"\n}}\n";

    private static ReadOnlySpan<byte> WithoutReturns(ReadOnlySpan<byte> bytes)
    {
        if (!bytes.Contains((byte)'\r')) return bytes;
        var kept = new byte[bytes.Length];
        var length = 0;
        foreach (var one in bytes)
            if (one != '\r') kept[length++] = one;
        return kept.AsSpan(0, length);
    }
}
