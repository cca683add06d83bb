using System.Text.Json;
using Purlin.Hearing.Listening;
using Purlin.Tests.House;

namespace Purlin.Tests.Hearing;

/// <summary>One narration of the fixtures with the entries that it should become. See Fixtures/narrations/README.md.</summary>
internal sealed record Narration(string Name, Transcript Transcript, IReadOnlyList<Label> Labels,
    IReadOnlyList<(int Start, int End)> Asides, IReadOnlyList<string> Phenomena)
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/narrations");

    /// <summary>Narrations that the reader may be tuned on.</summary>
    public static IReadOnlyList<Narration> Open() => In(Folder);

    /// <summary>Narrations that nobody looks at while the reader is tuned.</summary>
    public static IReadOnlyList<Narration> HeldOut() => In(Path.Combine(Folder, "held-out"));

    private static List<Narration> In(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(Read)];

    private static Narration Read(string file)
    {
        var words = new[] { ".vtt", ".srt", ".txt" }.Select(end => Path.ChangeExtension(file, end)).First(File.Exists);
        using var document = JsonDocument.Parse(File.ReadAllBytes(file));
        var root = document.RootElement;
        return new Narration(
            Path.GetFileNameWithoutExtension(file),
            TranscriptReader.Read(File.ReadAllText(words)).OrThrow(),
            [.. root.GetProperty("proposals").EnumerateArray().Select(Label.Read)],
            [.. root.GetProperty("asides").EnumerateArray().Select(aside => (aside[0].GetInt32(), aside[1].GetInt32()))],
            [.. root.GetProperty("phenomena").EnumerateArray().Select(one => one.GetString()!)]);
    }
}

/// <summary>One entry that a narration should become.</summary>
internal sealed record Label(string Component, string? Condition, string Outcome, string? Place, string? Trade, bool Hedged,
    IReadOnlyList<(int Start, int End)> Words, IReadOnlyList<(string Kind, double Value)> Amounts)
{
    public static Label Read(JsonElement label) => new(
        label.GetProperty("component").GetString()!,
        label.GetProperty("condition").GetString(),
        label.GetProperty("outcome").GetString()!,
        label.GetProperty("place").GetString(),
        label.GetProperty("trade").GetString(),
        label.GetProperty("hedged").GetBoolean(),
        [.. label.GetProperty("words").EnumerateArray().Select(range => (range[0].GetInt32(), range[1].GetInt32()))],
        [.. label.GetProperty("amounts").EnumerateArray()
            .Select(amount => (amount.GetProperty("kind").GetString()!, Math.Round(amount.GetProperty("value").GetDouble(), 2)))]);
}
