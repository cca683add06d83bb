using System.Collections.Immutable;

namespace Purlin.Hearing.Listening;

/// <summary>Gathers the words of cues and lines, and gives each word its part of the time of its cue by its length.</summary>
internal sealed class WordList
{
    // A silence of this many seconds between two cues parts what was said.
    private const double Silence = 1.2;

    private readonly List<SpokenWord> words = [];
    private double? last;
    private bool ended;

    public int Count => words.Count;

    /// <summary>The next word begins something new.</summary>
    public void End() => ended = true;

    /// <summary>Takes in the words of one cue or line.</summary>
    public void Add(string text, double? from, double? to)
    {
        var parts = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 0) return;
        if (from - last >= Silence) ended = true;
        double all = parts.Sum(part => part.Length + 1), before = 0;
        foreach (var part in parts)
        {
            words.Add(new SpokenWord(part, At(before), At(before + part.Length), ended));
            ended = part[^1] is '.' or '?' or '!' or ';';
            before += part.Length + 1;
        }
        last = to ?? last;

        double? At(double reached) => from is { } start
            && to is { } end ? start + ((end - start) * Math.Min(1, reached / (all - 1))) : null;
    }

    public Transcript ToTranscript(int broken) => new() { Words = [.. words], BrokenTimes = broken };
}
