using System.Collections.Immutable;

namespace Purlin.Hearing.Listening;

/// <summary>What was said, word by word, with times where the file had them.</summary>
public sealed record Transcript
{
    /// <summary>Words in the order in which they were said.</summary>
    public required ImmutableArray<SpokenWord> Words { get; init; }

    /// <summary>How many times in the file could not be read; their words stand between those of their neighbors.</summary>
    public int BrokenTimes { get; init; }

    /// <summary>Words of a line that was typed or dictated, with no times.</summary>
    public static Transcript Of(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var words = new WordList();
        words.Add(said, null, null);
        return words.ToTranscript(0);
    }
}
