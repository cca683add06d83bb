using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Breaks paragraphs into lines that can stand on pages.</summary>
internal static class TextSetting
{
    /// <summary>A paragraph. Two lines at least stay together at either end.</summary>
    public static IReadOnlyList<Atom> Paragraph(string text, Style style, double width, IReadOnlyList<Group> groups, double left = 0, double before = 7, bool keep = false, Leaf? leaf = null)
    {
        var lines = Typesetting.Lines(text, style.Size, style.Cut, width);
        leaf ??= Leaf.Paragraph();
        return [.. lines.Select((line, index) => new Atom
        {
            Height = style.Leading, Before = index == 0 ? before : 0, Left = left, Groups = groups, Run = leaf,
            Keep = keep || index < lines.Count - 1 && (index == 0 || index == lines.Count - 2 || lines.Count <= 3),
            Strokes = [new Stroke(leaf, (canvas, x, y) => canvas.Text(line, x, y + style.Leading * 0.76, style.Size, style.Cut, style.Ink))],
        })];
    }

    /// <summary>A heading that stands with what follows.</summary>
    public static IReadOnlyList<Atom> Heading(string text, string kind, Style style, int level, string anchor, IReadOnlyList<Group> groups, double width = Measures.Text, double left = 0, double before = 18)
    {
        Leaf leaf = new(kind);
        var lines = Typesetting.Lines(text, style.Size, style.Cut, width);
        return [.. lines.Select((line, index) => new Atom
        {
            Height = style.Leading + (index == lines.Count - 1 ? 3 : 0), Before = index == 0 ? before : 0, Left = left, Groups = groups, Run = leaf, Keep = true,
            Entry = index == 0 ? new Landmark(level, Typesetting.Clean(text), anchor) : null,
            Strokes = [new Stroke(leaf, (canvas, x, y) => canvas.Text(line, x, y + style.Leading * 0.76, style.Size, style.Cut, style.Ink))],
        })];
    }

    /// <summary>A list, each line hanging after its mark.</summary>
    public static IReadOnlyList<Atom> Items(IReadOnlyList<string> lines, bool numbered, Style style, double width, IReadOnlyList<Group> groups, double left = 0, double before = 5)
    {
        List<Atom> atoms = [];
        Group list = new("L");
        var indent = numbered ? style.Size * 2 : style.Size * 1.1;
        for (var index = 0; index < lines.Count; index++)
        {
            var mark = numbered ? $"{index + 1}." : "•";
            Leaf label = new("Lbl"), body = new("LBody");
            IReadOnlyList<Group> within = [.. groups, list, new Group("LI")];
            var broken = Typesetting.Lines(lines[index], style.Size, style.Cut, width - indent);
            atoms.AddRange(broken.Select((line, at) => new Atom
            {
                Height = style.Leading,
                Before = at == 0 ? before : 0,
                Left = left,
                Groups = within,
                Run = body,
                Keep = at < broken.Count - 1 && (at == 0 || at == broken.Count - 2),
                Strokes =
                [
                    .. at == 0 ? (Stroke[])[new Stroke(label, (canvas, x, y) => canvas.Text(mark, x, y + style.Leading * 0.76, style.Size, style.Cut, style.Ink))] : [],
                    new Stroke(body, (canvas, x, y) => canvas.Text(line, x + indent, y + style.Leading * 0.76, style.Size, style.Cut, style.Ink)),
                ],
            }));
        }
        return atoms;
    }
}
