using System.Collections.Frozen;

namespace Purlin.Book;

/// <summary>How things, places and conditions are spoken of by a person who walks and talks, and the turns of such talk.</summary>
public sealed record HearingWords
{
    /// <summary>What each kind of component is called, with the parts of it that stand for it.</summary>
    public FrozenDictionary<string, string[]> Things { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>What each kind of place is called.</summary>
    public FrozenDictionary<string, string[]> Places { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>Words that mean the same as another, or as several together, when a fault is told.</summary>
    public FrozenDictionary<string, string[]> Same { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>Words for the contrary of a fault: by "loose" stand "tight" and "solid".</summary>
    public FrozenDictionary<string, string[]> Opposites { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>Turns of talk by what they do: <c>hedge</c>, <c>not</c>, <c>recap</c>, <c>unseen</c> and so on.</summary>
    public FrozenDictionary<string, string[]> Turns { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>What each trade is called.</summary>
    public FrozenDictionary<string, string[]> Trades { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>What is said where a condition is seen, by its id, beside its own words and signs.</summary>
    public FrozenDictionary<string, string[]> Seen { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>What is said where a condition was looked for and is not there, by its id.</summary>
    public FrozenDictionary<string, string[]> Clear { get; init; } = FrozenDictionary<string, string[]>.Empty;

    /// <summary>The files of the folder <c>hearing</c>, each one of these members.</summary>
    internal static IReadOnlyList<string> Files { get; } = ["clear", "opposites", "places", "same", "seen", "things", "trades", "turns"];

    internal static HearingWords Of(IReadOnlyDictionary<string, Dictionary<string, string[]>> files) => new()
    {
        Things = Part(files, "things"),
        Places = Part(files, "places"),
        Same = Part(files, "same"),
        Opposites = Part(files, "opposites"),
        Turns = Part(files, "turns"),
        Trades = Part(files, "trades"),
        Seen = Part(files, "seen"),
        Clear = Part(files, "clear"),
    };

    private static FrozenDictionary<string, string[]> Part(IReadOnlyDictionary<string, Dictionary<string, string[]>> files, string name) =>
        files.TryGetValue(name, out var lines) ? lines.ToFrozenDictionary(StringComparer.Ordinal) : FrozenDictionary<string,
            string[]>.Empty;
}
