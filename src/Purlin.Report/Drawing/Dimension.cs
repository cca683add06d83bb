namespace Purlin.Report.Drawing;

/// <summary>Dimension lines: thin, with slashes at the ends and the figure on the line.</summary>
public static class Dimension
{
    /// <summary>A level dimension line with its figure above.</summary>
    public static IReadOnlyList<Mark> Level(double x1, double x2, double y, string figure, double size, Ink ink = Ink.Quiet) =>
    [
        new Mark.Stroke(Trace.Between(x1, y, x2, y).With(Slash(x1, y)).With(Slash(x2, y)), LineClass.Fine, ink),
        new Mark.Lettering(figure, new Spot((x1 + x2) / 2, y - 3), size) { Ink = ink, Halo = true },
    ];

    /// <summary>An upright dimension line with its figure to the left, read from the right edge of the sheet.</summary>
    public static IReadOnlyList<Mark> Upright(double x, double y1, double y2, string figure, double size, Ink ink = Ink.Quiet) =>
    [
        new Mark.Stroke(Trace.Between(x, y1, x, y2).With(Slash(x, y1)).With(Slash(x, y2)), LineClass.Fine, ink),
        new Mark.Lettering(figure, new Spot(x - 3, (y1 + y2) / 2), size) { Ink = ink, Upright = true, Halo = true },
    ];

    private static Trace Slash(double x, double y) => Trace.Between(x - 2.4, y + 2.4, x + 2.4, y - 2.4);
}
