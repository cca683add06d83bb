using System.Text;

namespace Purlin.Report.Fonts;

/// <summary>A stretch of text that one face can set.</summary>
/// <param name="Text">The characters.</param>
/// <param name="Face">The face that has them; the wide one also takes what no face has.</param>
public sealed record Stretch(string Text, FontFace Face);

/// <summary>Measures and breaks text with our own fonts.</summary>
public static class Typesetting
{
    /// <summary>
    /// Text that every writer can take: characters that XML forbids and halves of pairs become the replacement character, line ends become
    /// one kind, other control characters become spaces.
    /// </summary>
    public static string Clean(string? text)
    {
        if (string.IsNullOrEmpty(text)) return "";
        StringBuilder clean = new(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value == '\r') continue;
            if (rune.Value is '\n') clean.Append('\n');
            else if (rune.Value is < ' ' or (>= 0x7F and < 0xA0)) clean.Append(' ');
            else if (rune.Value is 0xFFFE or 0xFFFF) clean.Append('\uFFFD');
            else clean.Append(rune.ToString());
        }
        return clean.ToString();
    }

    /// <summary>Splits text where the face has to change.</summary>
    public static IReadOnlyList<Stretch> Stretches(string text, Cut cut)
    {
        ArgumentNullException.ThrowIfNull(text);
        var own = Faces.Of(cut);
        List<Stretch> stretches = [];
        StringBuilder run = new();
        var face = own;
        foreach (var rune in text.EnumerateRunes())
        {
            var needed = own.Has(rune.Value) || !Faces.Wide.Has(rune.Value) && rune.Value < 0x2000 ? own : Faces.Wide;
            if (Rune.IsWhiteSpace(rune)) needed = face;
            if (needed != face && run.Length > 0)
            {
                stretches.Add(new Stretch(run.ToString(), face));
                run.Clear();
            }
            face = needed;
            run.Append(rune.ToString());
        }
        if (run.Length > 0) stretches.Add(new Stretch(run.ToString(), face));
        return stretches;
    }

    /// <summary>Width of a line in the unit of the size.</summary>
    public static double Width(string text, double size, Cut cut = Cut.Regular)
    {
        ArgumentNullException.ThrowIfNull(text);
        var own = Faces.Of(cut);
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes()) ems += own.Has(rune.Value) ? own.Advance(rune.Value) : Faces.Wide.Advance(rune.Value);
        return ems * size;
    }

    /// <summary>Breaks text into lines no wider than allowed; a word wider than the line is broken inside.</summary>
    public static IReadOnlyList<string> Lines(string text, double size, Cut cut, double width)
    {
        List<string> lines = [];
        foreach (var paragraph in Clean(text).Split('\n')) Break(paragraph, size, cut, Math.Max(width, size), lines);
        return lines;
    }

    /// <summary>The text shortened with an ellipsis until it is no wider than allowed.</summary>
    public static string Fit(string text, double size, Cut cut, double width)
    {
        var clean = Clean(text).Replace('\n', ' ');
        if (Width(clean, size, cut) <= width) return clean;
        StringBuilder kept = new();
        var room = width - Width("…", size, cut);
        foreach (var rune in clean.EnumerateRunes())
        {
            room -= Width(rune.ToString(), size, cut);
            if (room < 0) break;
            kept.Append(rune.ToString());
        }
        return kept.ToString().TrimEnd() + "…";
    }

    private static void Break(string paragraph, double size, Cut cut, double width, List<string> lines)
    {
        var line = "";
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Width(longer, size, cut) <= width) { line = longer; continue; }
            if (line.Length > 0) lines.Add(line);
            line = word;
            while (Width(line, size, cut) > width) line = Chop(line, size, cut, width, lines);
        }
        lines.Add(line);
    }

    private static string Chop(string word, double size, Cut cut, double width, List<string> lines)
    {
        StringBuilder head = new();
        var used = 0.0;
        foreach (var rune in word.EnumerateRunes())
        {
            var one = Width(rune.ToString(), size, cut);
            if (head.Length > 0 && used + one > width) break;
            used += one;
            head.Append(rune.ToString());
        }
        lines.Add(head.ToString());
        return word[head.Length..];
    }
}
