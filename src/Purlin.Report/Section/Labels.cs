using Purlin.Report.Drawing;
using Purlin.Report.Writing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Section;

/// <summary>Names of places as they stand in the drawing: whole where they fit, else in the short forms of building drawings.</summary>
internal static class Labels
{
    /// <summary>One or two lines for a width.</summary>
    public static IReadOnlyList<string> For(string name, double size, double width, Phrase words, int most = 2)
    {
        var brief = Shorten(name, words);
        // What stands in its own part of the drawing needs not be told apart there: "Roof, addition" is a roof.
        var first = Shorten(name.Split(',')[0], words);
        // A number alone on a second line reads worse than a short form on one.
        (string Text, int Most)[] tries = name.Contains(',', StringComparison.Ordinal) ? [(name, 1), (brief, 1), (first, most)]
            : char.IsAsciiDigit(name.LastOrDefault()) ? [(name, 1), (brief, 1), (name, most), (brief, most)]
            : [(name, most), (brief, most)];
        foreach (var (text, lines) in tries)
        {
            var broken = Typesetting.Lines(text, size, Cut.Bold, width);
            if (broken.Count <= lines && text.Split(' ').All(word => Typesetting.Width(word, size, Cut.Bold) <= width)) return broken;
        }
        var cut = Typesetting.Lines(first, size, Cut.Bold, width).Take(most).ToList();
        if (cut.Count > 0) cut[^1] = Typesetting.Fit(cut[^1] + "…", size, Cut.Bold, width);
        return cut;
    }

    /// <summary>Whether a name fits whole or in its short form; cut off it tells nobody anything.</summary>
    public static bool Fits(string name, double size, double width, Phrase words) => For(words.Place(name), size, width, words).All(line => !line.EndsWith('…'));

    /// <summary>Sets a name in lines around a middle, from its first line down.</summary>
    public static void Put(Draughting sheet, string name, bool looked, Spot first, double width, double size)
    {
        var y = first.Y;
        foreach (var line in For(sheet.Words.Place(name), size, width, sheet.Words))
        {
            sheet.Letter(new Mark.Lettering(line, new Spot(first.X, y), size) { Ink = looked ? Ink.Text : Ink.Quiet, Cut = looked ? Cut.Bold : Cut.Regular, Halo = true });
            y += size * 1.08;
        }
    }

    /// <summary>What a storey is called.</summary>
    public static string Storey(int number, Phrase words) => words.Say("drawing.storey", ("number", number + 1));

    private static string Shorten(string name, Phrase words)
    {
        // Pairs of the whole and its short form, in the order in which they are tried.
        foreach (var pair in words.Say("drawing.short").Split("; "))
            if (pair.Split(": ") is [var whole, var brief]) name = name.Replace(whole, brief, StringComparison.OrdinalIgnoreCase);
        return name;
    }
}
