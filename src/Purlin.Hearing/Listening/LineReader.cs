namespace Purlin.Hearing.Listening;

/// <summary>Reads plain text, with or without a clock time before its lines: <c>[00:12] gutter is full</c>.</summary>
internal sealed class LineReader(WordList words)
{
    // How long one word takes to say, for the last word of a line whose end nobody wrote down. Common practice of dictation: 150 words
    // a minute.
    private const double SecondsOfWord = 0.4;

    public void Read(string text, int most)
    {
        (double From, string Said)? waiting = null;
        foreach (var span in text.AsSpan().EnumerateLines())
        {
            var line = span.Trim();
            if (line.IsEmpty) words.End();
            else if (Timed(line) is var (from, said))
            {
                Say(from);
                waiting = (from, said);
            }
            else if (waiting is { } begun) waiting = (begun.From, $"{begun.Said} {line}");
            else words.Add(line.ToString(), null, null);
            if (words.Count > most) return;
        }
        Say(null);

        void Say(double? next)
        {
            if (waiting is not { } begun) return;
            var spoken = begun.Said.Count(letter => letter == ' ') + 1;
            var to = begun.From + (spoken * SecondsOfWord);
            words.Add(begun.Said, begun.From, next is { } limit && limit > begun.From ? Math.Min(limit, to) : to);
            words.End();
        }
    }

    private static (double From, string Said)? Timed(ReadOnlySpan<char> line)
    {
        var start = line.TrimStart("[( \t");
        var end = start.IndexOfAny("]) \t-");
        if (end < 3 || ClockTime.Read(start[..end]) is not { } from) return null;
        return (from, start[end..].TrimStart("]) \t-–:").ToString());
    }
}
