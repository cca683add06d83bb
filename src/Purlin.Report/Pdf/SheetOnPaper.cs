using PdfSharp.Drawing;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Draws a sheet on paper: the second writer of the same data.</summary>
internal static class SheetOnPaper
{
    public static void Draw(Canvas canvas, Sheet sheet, double x, double y, double scale)
    {
        foreach (var mark in sheet.Marks) Put(canvas, mark, x, y, scale);
    }

    public static void Put(Canvas canvas, Mark mark, double x, double y, double scale)
    {
        switch (mark)
        {
            case Mark.Stroke stroke:
                var pen = Pen(stroke, scale);
                foreach (var path in Paths(stroke.Trace, x, y, scale)) canvas.Graphics.DrawPath(pen, path);
                break;
            case Mark.Area area:
                foreach (var path in Paths(area.Trace, x, y, scale)) canvas.Graphics.DrawPath(canvas.Brush(area.Ink), path);
                break;
            case Mark.Lettering lettering: Letters(canvas, lettering, x, y, scale); break;
            case Mark.Balloon balloon: foreach (var part in balloon.Marks) Put(canvas, part, x, y, scale); break;
        }
    }

    private static XPen Pen(Mark.Stroke stroke, double scale)
    {
        XPen pen = new(Canvas.Colour(stroke.Ink), Canvas.Width(stroke.Line, stroke.Ink) * scale) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
        // The library counts dashes in line widths; ours are in the unit of the sheet.
        if (Theme.Dashes(stroke.Line) is { Count: > 0 } dashes) pen.DashPattern = [.. dashes.Select(dash => dash / Canvas.Width(stroke.Line, stroke.Ink))];
        return pen;
    }

    // One path a piece: the library joins the pieces of an open path by lines (PDFsharp 6.2.4, seen 2026-11).
    private static List<XGraphicsPath> Paths(Trace trace, double x, double y, double scale)
    {
        List<XGraphicsPath> paths = [];
        XGraphicsPath path = new();
        XPoint At(Spot spot) => new(x + spot.X * scale, y + spot.Y * scale);
        Spot last = default;
        foreach (var step in trace.Steps)
        {
            switch (step.Kind)
            {
                case TraceKind.Move: paths.Add(path = new XGraphicsPath { FillMode = XFillMode.Winding }); break;
                case TraceKind.Line: path.AddLine(At(last), At(step.To)); break;
                case TraceKind.Curve: path.AddBezier(At(last), At(step.First), At(step.Second), At(step.To)); break;
                default: path.CloseFigure(); break;
            }
            last = step.To;
        }
        return paths;
    }

    private static void Letters(Canvas canvas, Mark.Lettering lettering, double x, double y, double scale)
    {
        var text = Typesetting.Clean(lettering.Text);
        var size = lettering.Size * scale;
        var width = Typesetting.Width(text, size, lettering.Cut);
        var shift = lettering.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
        XPoint at = new(x + lettering.At.X * scale, y + lettering.At.Y * scale);
        var state = canvas.Graphics.Save();
        canvas.Graphics.TranslateTransform(at.X, at.Y);
        if (lettering.Upright) canvas.Graphics.RotateTransform(-90);
        // Paper under the letters, so that no line runs through them.
        if (lettering.Halo) canvas.Graphics.DrawRectangle(canvas.Brush(Ink.Paper), shift - 1.2, -size * 0.78, width + 2.4, size * 1.02);
        canvas.Text(text, shift, 0, size, lettering.Cut, lettering.Ink);
        canvas.Graphics.Restore(state);
    }
}
