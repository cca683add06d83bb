using Purlin.Report.Drawing;

namespace Purlin.Report.Pdf;

/// <summary>Sets a table: its head is said again on each page, short rows stay whole, and a row that goes on says again whose it is.</summary>
internal static class TableSetting
{
    private const double Gap = 10;
    private const double Pad = 2.6;

    public static IReadOnlyList<Atom> Of(Block.Table table, Voice voice, IReadOnlyList<Group> groups)
    {
        var style = table.Fine ? voice.Fine : voice.Body;
        List<Atom> atoms = table.Caption.Length == 0 ? [] : [.. TextSetting.Paragraph(table.Caption, style with { Cut = Fonts.Cut.Bold }, voice.Width, groups, before: 8, keep: true)];
        var columns = Columns(table, voice.Width);
        IReadOnlyList<Group> within = [.. groups, new Group("Table")];
        Atom? head = null;
        if (table.Columns.Any(column => column.Length > 0)) atoms.Add(head = Head(table, columns, within, voice));
        foreach (var row in table.Rows) atoms.AddRange(Row(row, columns, within, head, voice.Width, style));
        return atoms;
    }

    private static (double X, double Width)[] Columns(Block.Table table, double width)
    {
        var count = table.Columns.Count;
        var shares = table.Shares.Count == count ? table.Shares : [.. Enumerable.Repeat(1.0 / count, count)];
        var (whole, x) = (shares.Sum(), 0.0);
        return [.. shares.Select((share, index) =>
        {
            var column = (X: x, Width: share / whole * width - (index == count - 1 ? 0 : Gap));
            x += share / whole * width;
            return column;
        })];
    }

    private static Atom Head(Block.Table table, (double X, double Width)[] columns, IReadOnlyList<Group> groups, Voice voice)
    {
        var style = voice.Small with { Cut = Fonts.Cut.Bold };
        var cells = table.Columns.Select((column, index) => Lines.Of(column, style, columns[index].Width)).ToArray();
        var height = cells.Max(cell => cell.Count) * style.Leading + Pad + 2;
        List<Stroke> strokes = [];
        for (var index = 0; index < cells.Length; index++)
        {
            var (lines, at, last) = (cells[index], columns[index].X, index == cells.Length - 1);
            strokes.Add(new Stroke(new Leaf("TH") { Scope = "Column" }, (canvas, x, y) =>
            {
                for (var line = 0; line < lines.Count; line++) canvas.Bits(lines[line], x + at, y + (line + 0.78) * style.Leading, style);
                if (last) canvas.Rule(x, y + height - 1, x + voice.Width, y + height - 1, 1.2);
            }));
        }
        return new Atom { Height = height, Before = 3, Groups = [.. groups, new Group("TR")], Run = strokes, Keep = true, Strokes = strokes };
    }

    private static IEnumerable<Atom> Row(IReadOnlyList<Prose> row, (double X, double Width)[] columns, IReadOnlyList<Group> groups, Atom? head, double width, Style style)
    {
        var cells = row.Take(columns.Length).Select((cell, index) => Lines.Of(cell, index == 0 ? style with { Cut = Fonts.Cut.Bold } : style, columns[index].Width)).ToArray();
        Leaf[] leaves = [.. cells.Select((_, index) => index == 0 ? new Leaf("TH") { Scope = "Row" } : new Leaf("TD"))];
        IReadOnlyList<Group> within = [.. groups, new Group("TR")];
        var lines = cells.Max(cell => cell.Count);
        for (var line = 0; line < lines; line++)
        {
            int at = line;
            bool last = line == lines - 1;
            yield return new Atom
            {
                Height = style.Leading + (last ? Pad + 0.8 : 0),
                Before = line == 0 ? Pad : 0,
                Groups = within,
                Run = leaves,
                Head = head,
                Keep = !last && (lines <= 9 || line == 0 || line == lines - 2),
                Strokes = [.. Enumerable.Range(0, cells.Length).Where(cell => at < cells[cell].Count || at == 0 || last && cell == 0).Select(cell => new Stroke(leaves[cell], (canvas, x, y) =>
                {
                    if (at < cells[cell].Count) canvas.Bits(cells[cell][at], x + columns[cell].X, y + style.Leading * 0.78, cell == 0 ? style with { Cut = Fonts.Cut.Bold } : style);
                    if (last && cell == 0) canvas.Rule(x, y + style.Leading + Pad, x + width, y + style.Leading + Pad, 0.4, Ink.Faint);
                }))],
            };
        }
    }
}
