using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>The contents: chapters, weights and matters with their pages, each line a link.</summary>
internal static class ContentsSetting
{
    public const string Title = "Contents";

    /// <summary>Lines for these entries; pages are asked for when a line is drawn, by then every page is known.</summary>
    public static IReadOnlyList<Atom> Of(IReadOnlyList<Landmark> entries, Func<string, int?> pageOf)
    {
        IReadOnlyList<Group> groups = [new Group("Sect")];
        List<Atom> atoms = [.. TextSetting.Heading(Title, "H1", Style.Chapter, 1, "contents", groups)];
        Group list = new("TOC");
        foreach (var entry in entries.Where(entry => entry.Level == 1 || entry.Anchor.StartsWith("matter-", StringComparison.Ordinal))) atoms.Add(Line(entry, [.. groups, list], pageOf));
        foreach (var atom in atoms) atom.Section = Title;
        return atoms;
    }

    private static Atom Line(Landmark entry, IReadOnlyList<Group> groups, Func<string, int?> pageOf)
    {
        var chapter = entry.Level == 1;
        var style = chapter ? Style.Strong : Style.Table;
        var indent = chapter ? 0 : 18;
        var text = Typesetting.Fit(entry.Text, style.Size, style.Cut, Measures.Text - indent - 50);
        Leaf link = new("Reference") { Link = entry.Anchor, Width = Measures.Text, Height = style.Leading };
        return new Atom
        {
            Height = style.Leading,
            Before = chapter ? 8 : 0.4,
            Groups = groups,
            Run = link,
            Keep = chapter,
            Strokes = [new Stroke(link, (canvas, x, y) =>
            {
                var line = y + style.Leading * 0.76;
                canvas.Text(text, x + indent, line, style.Size, style.Cut);
                var page = $"{pageOf(entry.Anchor)}";
                canvas.TextRight(page, x + Measures.Text, line, style.Size, style.Cut);
                double from = x + indent + Typesetting.Width(text, style.Size, style.Cut) + 6, to = x + Measures.Text - Typesetting.Width(page, style.Size, style.Cut) - 6;
                if (to > from) canvas.Rule(from, line - 0.5, to, line - 0.5, 0.4, Ink.Faint);
            })],
        };
    }
}
