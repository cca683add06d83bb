using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets paragraphs, headings and lists into atoms: lines that can stand on pages.</summary>
internal static class TextSetting
{
    /// <summary>A paragraph. Two lines at least stay together at either end.</summary>
    public static IReadOnlyList<Atom> Paragraph(Prose text, Style style, double width, IReadOnlyList<Group> groups, double left = 0, double before = 6, bool keep = false, string? anchor = null)
    {
        var lines = Lines.Of(text, style, width);
        var leaf = Leaf.Paragraph();
        return [.. lines.Select((line, index) => new Atom
        {
            Height = style.Leading, Before = index == 0 ? before : 0, Left = left, Groups = groups, Run = leaf,
            Keep = keep || index < lines.Count - 1 && (index == 0 || index == lines.Count - 2 || lines.Count <= 3),
            Entry = anchor is not null && index == 0 ? new Landmark(0, "", anchor) : null,
            Strokes = [Line(leaf, line, style)],
        })];
    }

    /// <summary>A heading that stands with what follows.</summary>
    public static IReadOnlyList<Atom> Heading(string text, string kind, Style style, int level, string anchor, IReadOnlyList<Group> groups, double width, double left = 0, double before = 14)
    {
        Leaf leaf = new(kind);
        var lines = Lines.Of(text, style, width);
        return [.. lines.Select((line, index) => new Atom
        {
            Height = style.Leading + (index == lines.Count - 1 ? 2 : 0), Before = index == 0 ? before : 0, Left = left, Groups = groups, Run = leaf, Keep = true,
            Entry = index == 0 ? new Landmark(level, Typesetting.Clean(text), anchor) : null,
            Strokes = [Line(leaf, line, style)],
        })];
    }

    /// <summary>A list, each line hanging after its mark.</summary>
    public static IReadOnlyList<Atom> Items(Block.Items items, Style style, double width, IReadOnlyList<Group> groups, double before)
    {
        List<Atom> atoms = [];
        Group list = new("L");
        var marks = items.Lines.Select((_, index) => items.Numbered || items.Mark.Length > 0 ? $"{items.Mark}{index + 1}{(items.Mark.Length > 0 ? "" : ".")} " : "• ").ToArray();
        var indent = marks.Length == 0 ? 0 : marks.Max(mark => Typesetting.Width(mark, style.Size, style.Cut)) + 2;
        for (var index = 0; index < items.Lines.Count; index++)
        {
            var mark = marks[index];
            Leaf label = new("Lbl"), body = new("LBody");
            IReadOnlyList<Group> within = [.. groups, list, new Group("LI")];
            var broken = Lines.Of(items.Lines[index], style, width - indent);
            var anchor = items.Mark.Length > 0 ? $"{items.Mark}{index + 1}" : null;
            atoms.AddRange(broken.Select((line, at) => new Atom
            {
                Height = style.Leading,
                Before = at == 0 ? before : 0,
                Groups = within,
                Run = body,
                Keep = at < broken.Count - 1 && (at == 0 || at == broken.Count - 2),
                Entry = anchor is not null && at == 0 ? new Landmark(0, "", anchor) : null,
                Strokes =
                [
                    .. at == 0 ? (Stroke[])[new Stroke(label, (canvas, x, y) => canvas.Text(mark, x, y + style.Leading * 0.78, style.Size, style.Cut, style.Ink))] : [],
                    new Stroke(body, (canvas, x, y) => canvas.Bits(line, x + indent, y + style.Leading * 0.78, style)),
                ],
            }));
        }
        return atoms;
    }

    private static Stroke Line(Leaf leaf, IReadOnlyList<Bit> line, Style style) => new(leaf, (canvas, x, y) => canvas.Bits(line, x, y + style.Leading * 0.78, style));
}
