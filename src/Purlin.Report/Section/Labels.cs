using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Section;

/// <summary>Names of places as they stand in the drawing: whole where they fit, else in the short forms of building drawings.</summary>
internal static class Labels
{
    private static readonly (string Long, string Short)[] shortForms =
    [
        ("Mechanical closet", "Mech."), ("Mechanical room", "Mech."), ("Entry and hall", "Entry hall"), ("Bathroom", "Bath"), ("Bedroom", "Bed"), ("Laundry", "Laun."),
        ("Living room", "Living"), ("Dining room", "Dining"), ("Family room", "Family"), ("Mechanical", "Mech."), ("Kitchen", "Kit."), ("Primary", "Prim."), ("Hallway", "Hall"), ("Crawl space", "Crawl"),
    ];

    /// <summary>One or two lines for a width.</summary>
    public static IReadOnlyList<string> For(string name, double size, double width, int most = 2)
    {
        var brief = Shorten(name);
        // A number alone on a second line reads worse than a short form on one.
        (string Text, int Most)[] tries = char.IsAsciiDigit(name.LastOrDefault()) ? [(name, 1), (brief, 1), (name, most), (brief, most)] : [(name, most), (brief, most)];
        foreach (var (text, lines) in tries)
        {
            var broken = Typesetting.Lines(text, size, Cut.Bold, width);
            if (broken.Count <= lines && text.Split(' ').All(word => Typesetting.Width(word, size, Cut.Bold) <= width)) return broken;
        }
        var cut = Typesetting.Lines(brief, size, Cut.Bold, width).Take(most).ToList();
        if (cut.Count > 0) cut[^1] = Typesetting.Fit(cut[^1] + "…", size, Cut.Bold, width);
        return cut;
    }

    /// <summary>Whether a name fits whole or in its short form; cut off it tells nobody anything.</summary>
    public static bool Fits(string name, double size, double width) => For(name, size, width).All(line => !line.EndsWith('…'));

    /// <summary>Sets a name in lines around a middle, from its first line down.</summary>
    public static void Put(Draughting sheet, string name, bool looked, Spot first, double width, double size)
    {
        var y = first.Y;
        foreach (var line in For(name, size, width))
        {
            sheet.Letter(new Mark.Lettering(line, new Spot(first.X, y), size) { Ink = looked ? Ink.Text : Ink.Quiet, Cut = looked ? Cut.Bold : Cut.Regular, Halo = true });
            y += size * 1.08;
        }
    }

    /// <summary>What a storey is called.</summary>
    public static string Storey(int number) => number switch { 0 => "First floor", 1 => "Second floor", 2 => "Third floor", _ => $"Floor {number + 1}" };

    private static string Shorten(string name)
    {
        foreach (var (whole, brief) in shortForms) name = name.Replace(whole, brief, StringComparison.OrdinalIgnoreCase);
        return name;
    }
}
