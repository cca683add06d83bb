using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>A stretch of one line: its words, and where they lead.</summary>
internal sealed record Bit(string Text, Cut Cut, string? To);

/// <summary>Breaks words with links into lines. A line that goes on ends with a space, so that readers aloud do not glue two words.</summary>
internal static class Lines
{
    public static IReadOnlyList<IReadOnlyList<Bit>> Of(Prose prose, Style style, double width)
    {
        List<List<Bit>> lines = [[]];
        var used = 0.0;
        foreach (var run in prose)
        {
            var cut = run.Strong ? Cut.Bold : style.Cut;
            var paragraphs = Typesetting.Bound(Typesetting.Clean(run.Text)).Split('\n');
            for (var index = 0; index < paragraphs.Length; index++)
            {
                if (index > 0) (used, _) = (0, Begin(lines));
                foreach (var word in Words(paragraphs[index]))
                {
                    var bare = Typesetting.Width(word.TrimEnd(' '), style.Size, cut);
                    if (used > 0 && used + bare > width) (used, _) = (0, Begin(lines));
                    foreach (var part in bare > width ? Chopped(word, style.Size, cut, width) : [word])
                    {
                        if (used > 0 && part.Length > 0 && used + Typesetting.Width(part.TrimEnd(' '), style.Size, cut) > width) (used, _) = (0, Begin(lines));
                        if (used == 0 && part.Trim(' ').Length == 0) continue;
                        Put(lines[^1], part, cut, run.To);
                        used += Typesetting.Width(part, style.Size, cut);
                    }
                }
            }
        }
        return lines;
    }

    public static double Width(IReadOnlyList<Bit> line, double size) => line.Sum(bit => Typesetting.Width(bit.Text, size, bit.Cut));

    private static int Begin(List<List<Bit>> lines)
    {
        lines.Add([]);
        return lines.Count;
    }

    private static void Put(List<Bit> line, string text, Cut cut, string? to)
    {
        if (line.Count > 0 && line[^1] is var last && last.Cut == cut && last.To == to) line[^1] = last with { Text = last.Text + text };
        else line.Add(new Bit(text, cut, to));
    }

    // A word with the spaces after it.
    private static IEnumerable<string> Words(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var end = text.IndexOf(' ', at);
            end = end < 0 ? text.Length : end;
            while (end < text.Length && text[end] == ' ') end++;
            yield return text[at..end];
            at = end;
        }
    }

    private static IEnumerable<string> Chopped(string word, double size, Cut cut, double width)
    {
        var from = 0;
        while (from < word.Length)
        {
            var (used, to) = (0.0, from);
            while (to < word.Length)
            {
                var next = to + (char.IsHighSurrogate(word[to]) && to + 1 < word.Length ? 2 : 1);
                used += Typesetting.Width(word[to..next], size, cut);
                if (used > width && to > from) break;
                to = next;
            }
            yield return word[from..to];
            from = to;
        }
    }
}
