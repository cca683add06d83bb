using Purlin.Journal;

namespace Purlin.Hearing.Listening;

/// <summary>
/// Reads what dictation hands over: WebVTT, SubRip, or plain text with or without clock times. The form is told by the text, not by the
/// name of the file.
/// </summary>
public static class TranscriptReader
{
    /// <summary>The most words of one narration: some twenty-five hours of talk.</summary>
    public const int MostWords = 250_000;

    /// <summary>The most characters of one file.</summary>
    public const int MostCharacters = 32 * 1024 * 1024;

    // A word longer than this was not spoken.
    private const int LongestWord = 200;

    /// <summary>The words of a file, or why it is refused.</summary>
    /// <param name="text">The whole file.</param>
    public static Checked<Transcript> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostCharacters) return Refused("hearing.too-long", text.Length, MostCharacters);
        var words = new WordList();
        var cues = new CueReader(words);
        if (HasCues(text)) cues.Read(text, MostWords);
        else new LineReader(words).Read(text, MostWords);
        if (words.Count > MostWords) return Refused("hearing.too-many", words.Count, MostWords);
        if (words.Count == 0) return new Refusal("narration", new Said("hearing.empty"), new Said("hearing.empty.allowed"));
        var transcript = words.ToTranscript(cues.Broken);
        var longest = transcript.Words.Max(word => word.Text.Length);
        return longest > LongestWord ? Refused("hearing.long-word", longest, LongestWord) : transcript;
    }

    private static bool HasCues(string text) => text.AsSpan().TrimStart("\uFEFF \r\n").StartsWith("WEBVTT", StringComparison.Ordinal)
        || text.Contains("-->", StringComparison.Ordinal);

    private static Refusal Refused(string key, int given, int most) =>
        new("narration", new Said(key, ("given", given)), new Said(key + ".allowed", ("most", most)));
}
