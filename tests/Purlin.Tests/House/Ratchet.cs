using System.Text.Json;

namespace Purlin.Tests.House;

/// <summary>
/// What does not keep to a rule yet, counted in a file beside this one. A number there may fall and never rise; who mends something lowers
/// it. Where a list tells of more than there is, the room that was won is given up at once, so that nothing grows back into it.
/// </summary>
internal static class Ratchet
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    private const string Folder = "tests/Purlin.Tests/House";

    /// <summary>Holds what was counted against the list.</summary>
    /// <param name="list">Name of the list, <c>wide-lines.json</c>.</param>
    /// <param name="counted">How many there are, by file or room; only what is above nothing.</param>
    /// <param name="slack">By how many the whole list may tell of more than there is.</param>
    /// <param name="advice">What to do about one that is too many.</param>
    public static void Holds(string list, IReadOnlyDictionary<string, int> counted, int slack, string advice)
    {
        var path = Path.Combine(Repository.Root, Folder, list);
        if (Environment.GetEnvironmentVariable("PURLIN_WRITE") == "1") Write(path, counted);
        var allowed = JsonSerializer.Deserialize<SortedDictionary<string, int>>(File.ReadAllText(path))!;
        Told.Nothing(counted.Where(line => line.Value > allowed.GetValueOrDefault(line.Key))
            .Select(line => $"{line.Key}: {line.Value}, and {list} allows {allowed.GetValueOrDefault(line.Key)}"), advice);
        var room = allowed.Sum(line => line.Value - counted.GetValueOrDefault(line.Key));
        Assert.True(room <= slack,
            $"{list} allows {room} more than there are, {slack} at most are left for work that is under way. Lower its numbers, or run this class with PURLIN_WRITE=1, which only lowers them.");
    }

    /// <summary>Lowers the numbers to what there is; a file that is new to the list is not taken in.</summary>
    private static void Write(string path, IReadOnlyDictionary<string, int> counted)
    {
        var before = File.Exists(path) ? JsonSerializer.Deserialize<SortedDictionary<string, int>>(File.ReadAllText(path)) : null;
        var now = new SortedDictionary<string, int>(counted.Where(line => before is null || before.ContainsKey(line.Key))
            .ToDictionary(line => line.Key, line => Math.Min(line.Value, before?[line.Key] ?? line.Value)), StringComparer.Ordinal);
        File.WriteAllText(path, JsonSerializer.Serialize(now, Indented) + "\n");
    }
}
