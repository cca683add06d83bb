using System.Text;
using System.Text.RegularExpressions;

namespace Purlin.Report.Fonts;

/// <summary>A stretch of text that one face can set.</summary>
/// <param name="Text">The characters.</param>
/// <param name="Face">The face that has them; the wide one also takes what no face has.</param>
public sealed record Stretch(string Text, FontFace Face);

/// <summary>Measures and breaks text with our own fonts.</summary>
public static partial class Typesetting
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
            // Marks that turn the order of letters around make one read what was not recorded (UAX 9, section 2.2).
            else if (rune.Value is 0x202D or 0x202E) continue;
            else clean.Append(rune.ToString());
        }
        return clean.ToString();
    }

    /// <summary>A figure and its unit stay on one line: the space between them does not break.</summary>
    public static string Bound(string text) => Figure().Replace(text, "${figure}\u00A0${unit}");

    [GeneratedRegex(@"(?<=^|[\s(])(?<figure>[-\u2212]?[0-9][0-9.,/]*) (?<unit>%|°[CF]|in|ft²|ft|psi|gpm|A|V|VA|AWG|hours?|minutes?|seconds?|lb|tons?)(?=$|[\s.,;:)])", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Figure();

    // What no face has is set as an open box of the text face, and measured as that.
    private static int Shown(int character, FontFace own) => own.Has(character) || Faces.Wide.Has(character) || character is 0xA0 || Rune.IsWhiteSpace(new Rune(character)) ? character : Box;

    private const int Box = '?';

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
            var shown = Shown(rune.Value, own);
            var needed = own.Has(shown) || !Faces.Wide.Has(shown) ? own : Faces.Wide;
            if (Rune.IsWhiteSpace(rune)) needed = face;
            if (needed != face && run.Length > 0)
            {
                stretches.Add(new Stretch(run.ToString(), face));
                run.Clear();
            }
            face = needed;
            run.Append(new Rune(shown).ToString());
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
        foreach (var rune in text.EnumerateRunes())
        {
            var shown = Shown(rune.Value, own);
            ems += own.Has(shown) || !Faces.Wide.Has(shown) ? own.Advance(shown) : Faces.Wide.Advance(shown);
        }
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
