using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>The first page: the house in the frame of a drawing sheet, its title block below.</summary>
internal static class CoverPage
{
    private static readonly Box frame = new(36, 36, Measures.Width - 72, Measures.Height - 72);
    private const double CellHeight = 42;

    public static void Draw(Canvas canvas, Tagging tagging, ReportModel model)
    {
        var cover = model.Cover;
        var rows = (cover.Cells.Count + 2) / 3;
        var seal = cover.Seal.Length > 0 ? 32 : 0;
        var block = frame.Bottom - 5 - rows * CellHeight - seal;
        tagging.Artifact(() => Lines(canvas, cover, block, rows));
        IReadOnlyList<Group> groups = [new Group("Sect")];
        var y = frame.Y + 40;
        y = Words(tagging, "Inspection report", new Style(11, 16), groups, y);
        Leaf title = new("H1");
        var size = Typesetting.Lines(cover.Address, 32, Cut.Bold, frame.Width - 60).Count > 2 ? 23 : 32;
        List<(Atom, double, double)> lines = [];
        foreach (var line in Balanced(cover.Address, size).Take(4))
        {
            lines.Add((One(title, groups, (sheet, x, top) => sheet.Text(line, x, top + size * 0.8, size, Cut.Bold)), frame.X + 30, y));
            y += size * 1.08;
        }
        tagging.Write(lines);
        if (cover.House.Length > 0) y = Words(tagging, cover.House, new Style(10.5, 15, Cut.Regular, Ink.Quiet), groups, y + 4);
        if (cover.Marks.Count > 0) y = Words(tagging, string.Join(". ", cover.Marks), new Style(10.5, 15, Cut.Bold), groups, y + 2);
        House(tagging, model.Front, groups, y + 8, block - 10);
        for (var index = 0; index < cover.Cells.Count; index++) Cell(tagging, cover.Cells[index], groups, frame.X + 5 + index % 3 * ((frame.Width - 10) / 3), block + index / 3 * CellHeight);
        if (seal > 0) Seal(tagging, cover.Seal, groups, frame.Bottom - 5 - seal);
    }

    // As many lines as needed, and those of like length.
    private static IReadOnlyList<string> Balanced(string text, double size)
    {
        var lines = Typesetting.Lines(text, size, Cut.Bold, frame.Width - 60);
        for (var width = frame.Width - 60; width > 160; width -= 12)
        {
            var narrower = Typesetting.Lines(text, size, Cut.Bold, width);
            if (narrower.Count > lines.Count) break;
            lines = narrower;
        }
        return lines;
    }

    private static void Lines(Canvas canvas, Cover cover, double block, int rows)
    {
        var inner = frame.Inset(5);
        canvas.Frame(frame, 2.4);
        canvas.Frame(inner, 0.7);
        canvas.Rule(inner.X, block, inner.Right, block, 1.4);
        for (var row = 1; row <= rows; row++) if (block + row * CellHeight < inner.Bottom - 1) canvas.Rule(inner.X, block + row * CellHeight, inner.Right, block + row * CellHeight, 0.7);
        for (var column = 1; column < 3; column++) canvas.Rule(inner.X + column * inner.Width / 3, block, inner.X + column * inner.Width / 3, block + rows * CellHeight, 0.7);
        if (cover.Marks.Count > 0) Stamp(canvas, inner);
    }

    // A hatched band at the head of the sheet: this is no issued report of a real house.
    private static void Stamp(Canvas canvas, Box inner)
    {
        Box band = new(inner.X, inner.Y, inner.Width, 9);
        SheetOnPaper.Put(canvas, new Mark.Stroke(Hatching.Lines(band.Corners, 45, 5), LineClass.Beyond, Ink.Line), 0, 0, 1);
        canvas.Rule(inner.X, band.Bottom, inner.Right, band.Bottom, 0.7);
    }

    private static double Words(Tagging tagging, string text, Style style, IReadOnlyList<Group> groups, double y)
    {
        var leaf = Leaf.Paragraph();
        List<(Atom, double, double)> lines = [];
        foreach (var line in Typesetting.Lines(text, style.Size, style.Cut, frame.Width - 60))
        {
            lines.Add((One(leaf, groups, (canvas, x, top) => canvas.Text(line, x, top + style.Size, style.Size, style.Cut, style.Ink)), frame.X + 30, y));
            y += style.Leading;
        }
        tagging.Write(lines);
        return y;
    }

    private static void House(Tagging tagging, Sheet sheet, IReadOnlyList<Group> groups, double top, double bottom)
    {
        var scale = Math.Min((frame.Width - 40) / sheet.Width, (bottom - top) / sheet.Height);
        double x = frame.Centre.X - sheet.Width * scale / 2, y = top + (bottom - top - sheet.Height * scale) / 2;
        Leaf figure = new("Figure") { Alt = Typesetting.Clean($"{sheet.Title}. {sheet.Description}"), Width = sheet.Width * scale, Height = sheet.Height * scale };
        tagging.Write([(One(figure, groups, (canvas, left, upper) => SheetOnPaper.Draw(canvas, sheet, left, upper, scale)), x, y)]);
    }

    private static void Cell(Tagging tagging, Part cell, IReadOnlyList<Group> groups, double x, double y)
    {
        var width = (frame.Width - 10) / 3 - 16;
        var lines = Typesetting.Lines(cell.Text, 9.4, Cut.Bold, width).Take(2).ToArray();
        tagging.Write([(One(Leaf.Paragraph(), groups, (canvas, left, top) =>
        {
            canvas.Text(cell.Label, left + 8, top + 11.5, 7.6, Cut.Regular, Ink.Quiet);
            for (var line = 0; line < lines.Length; line++) canvas.Text(lines[line], left + 8, top + 23.5 + line * 11, 9.4, Cut.Bold);
        }), x, y)]);
    }

    private static void Seal(Tagging tagging, string seal, IReadOnlyList<Group> groups, double y) =>
        tagging.Write([(One(Leaf.Paragraph(), groups, (canvas, x, top) =>
        {
            canvas.Text("Root of the record", x + 8, top + 11.5, 7.6, Cut.Regular, Ink.Quiet);
            canvas.Text(seal, x + 8, top + 24, Math.Min(9.4, 9.4 * (frame.Width - 30) / Typesetting.Width(seal, 9.4)));
        }), frame.X + 5, y)]);

    private static Atom One(Leaf leaf, IReadOnlyList<Group> groups, Action<Canvas, double, double> draw) => new() { Height = 0, Groups = groups, Strokes = [new Stroke(leaf, draw)] };
}
