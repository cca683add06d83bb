using System.Text;

namespace Purlin.Hearing.Listening;

/// <summary>
/// Reads the cues of WebVTT and SubRip, which differ in little that matters here: a line of two times with an arrow, and lines of text
/// up to an
/// empty one. A time that cannot be read costs only the time: its words are kept.
/// </summary>
internal sealed class CueReader(WordList words)
{
    private const string Arrow = "-->";

    private string before = "";

    /// <summary>How many times could not be read.</summary>
    public int Broken { get; private set; }

    /// <summary>How many lines of times there were.</summary>
    public int Cues { get; private set; }

    public void Read(string text, int most)
    {
        double? from = null, to = null;
        var isCue = false;
        var number = "";
        foreach (var span in text.AsSpan().EnumerateLines())
        {
            var line = span.Trim();
            if (line.IsEmpty) (isCue, number) = (false, "");
            else if (line.Contains(Arrow, StringComparison.Ordinal))
            {
                (from, to) = Times(line);
                (isCue, number) = (true, "");
            }
            else if (isCue && IsNumber(line) && number.Length == 0) number = line.ToString();
            else if (isCue)
            {
                Take(number.Length > 0 ? $"{number} {line}" : line.ToString(), from, to);
                number = "";
            }
            if (words.Count > most) return;
        }
    }

    private (double?, double?) Times(ReadOnlySpan<char> line)
    {
        Cues++;
        var arrow = line.IndexOf(Arrow, StringComparison.Ordinal);
        var after = line[(arrow + Arrow.Length)..].TrimStart();
        var space = after.IndexOfAny(' ', '\t');
        if (ClockTime.Read(line[..arrow]) is { } from && ClockTime.Read(space < 0 ? after : after[..space]) is { } to
            && to >= from) return (from, to);
        Broken++;
        return (null, null);
    }

    /// <summary>Captions that roll say the line before once more; it counts once.</summary>
    private void Take(string line, double? from, double? to)
    {
        var said = Plain(line);
        if (said.Length > 12 && said == before) return;
        before = said;
        words.Add(said, from, to);
    }

    private static bool IsNumber(ReadOnlySpan<char> line)
    {
        foreach (var letter in line)
            if (!char.IsAsciiDigit(letter)) return false;
        return line.Length < 9;
    }

    /// <summary>The words without marks of style and speaker.</summary>
    private static string Plain(string line)
    {
        if (!line.AsSpan().ContainsAny("<&{")) return line;
        var plain = new StringBuilder(line.Length);
        var inside = 0;
        foreach (var letter in line)
        {
            if (letter is '<' or '{') inside++;
            else if (letter is '>' or '}' && inside > 0) inside--;
            else if (inside == 0) plain.Append(letter);
        }
        return plain.ToString().Replace("&nbsp;", " ", StringComparison.Ordinal).Replace("&amp;", "&", StringComparison.Ordinal).Trim();
    }
}
