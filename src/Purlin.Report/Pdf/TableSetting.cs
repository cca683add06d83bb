using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets a table: its head is said again on each page, short rows stay whole.</summary>
internal static class TableSetting
{
    private const double Gap = 12;
    private const double Pad = 3.5;

    public static IReadOnlyList<Atom> Of(Block.Table table, IReadOnlyList<Group> groups, double width = Measures.Text)
    {
        List<Atom> atoms = [.. TextSetting.Paragraph(table.Caption, table.Fine ? Style.Fine with { Cut = Cut.Bold } : Style.Strong, width, groups, before: table.Fine ? 10 : 14, keep: true)];
        var columns = Columns(table, width);
        IReadOnlyList<Group> within = [.. groups, new Group("Table")];
        var head = Head(table, columns, within, width);
        atoms.Add(head);
        foreach (var row in table.Rows) atoms.AddRange(Row(row, columns, within, head, width, table.Fine ? Style.Fine : Style.Table));
        return atoms;
    }

    private static (double X, double Width)[] Columns(Block.Table table, double width)
    {
        var count = table.Columns.Count;
        var shares = table.Shares.Count == count ? table.Shares : [.. Enumerable.Repeat(1.0 / count, count)];
        var whole = shares.Sum();
        var x = 0.0;
        return [.. shares.Select(share =>
        {
            var column = (X: x, Width: share / whole * width - Gap);
            x += share / whole * width;
            return column;
        })];
    }

    private static Atom Head(Block.Table table, (double X, double Width)[] columns, IReadOnlyList<Group> groups, double width)
    {
        var cells = table.Columns.Select((column, index) => Typesetting.Lines(column, Style.Small.Size, Cut.Bold, columns[index].Width)).ToArray();
        var height = cells.Max(cell => cell.Count) * Style.Small.Leading + Pad + 3;
        List<Stroke> strokes = [];
        for (var index = 0; index < cells.Length; index++)
        {
            var (lines, at) = (cells[index], columns[index].X);
            var last = index == cells.Length - 1;
            strokes.Add(new Stroke(new Leaf("TH") { Scope = "Column" }, (canvas, x, y) =>
            {
                for (var line = 0; line < lines.Count; line++) canvas.Text(lines[line], x + at, y + (line + 0.76) * Style.Small.Leading, Style.Small.Size, Cut.Bold, Ink.Quiet);
                if (last) canvas.Rule(x, y + height - 1, x + width, y + height - 1, 1.4);
            }));
        }
        return new Atom { Height = height, Before = 4, Groups = [.. groups, new Group("TR")], Run = strokes, Keep = true, Strokes = strokes };
    }

    private static IEnumerable<Atom> Row(IReadOnlyList<string> row, (double X, double Width)[] columns, IReadOnlyList<Group> groups, Atom head, double width, Style style)
    {
        var cells = row.Take(columns.Length).Select((cell, index) => Typesetting.Lines(cell, style.Size, index == 0 ? Cut.Bold : Cut.Regular, columns[index].Width)).ToArray();
        Leaf[] leaves = [.. cells.Select((_, index) => index == 0 ? new Leaf("TH") { Scope = "Row" } : new Leaf("TD"))];
        IReadOnlyList<Group> within = [.. groups, new Group("TR")];
        var lines = cells.Max(cell => cell.Count);
        for (var line = 0; line < lines; line++)
        {
            int at = line;
            bool last = line == lines - 1;
            yield return new Atom
            {
                Height = style.Leading + (last ? Pad + 1 : 0),
                Before = line == 0 ? Pad : 0,
                Groups = within,
                Run = leaves,
                Head = head,
                Keep = !last && (lines <= 9 || line == 0 || line == lines - 2),
                Strokes = [.. Enumerable.Range(0, cells.Length).Where(cell => at < cells[cell].Count || at == 0 || last && cell == 0).Select(cell => new Stroke(leaves[cell], (canvas, x, y) =>
                {
                    if (at < cells[cell].Count) canvas.Text(cells[cell][at], x + columns[cell].X, y + style.Leading * 0.76, style.Size, cell == 0 ? Cut.Bold : Cut.Regular);
                    if (last && cell == 0) canvas.Rule(x, y + style.Leading + Pad, x + width, y + style.Leading + Pad, 0.5, Ink.Faint);
                }))],
            };
        }
    }
}
