using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>A way of setting text.</summary>
/// <param name="Size">Points.</param>
/// <param name="Leading">Points from line to line.</param>
/// <param name="Cut">Cut of the family.</param>
/// <param name="Ink">Ink.</param>
internal sealed record Style(double Size, double Leading, Cut Cut = Cut.Regular, Ink Ink = Ink.Text)
{
    public static Style Body { get; } = new(10.5, 13.7);

    public static Style Strong { get; } = new(10.5, 13.7, Cut.Bold);

    public static Style Lead { get; } = new(13, 18);

    public static Style Small { get; } = new(8.6, 11.6, Cut.Regular, Ink.Quiet);

    public static Style SmallStrong { get; } = new(8.6, 11.6, Cut.Bold);

    public static Style Table { get; } = new(9.4, 12.6);

    public static Style Fine { get; } = new(8.6, 11);

    public static Style Label { get; } = new(8.8, 13.7, Cut.Regular, Ink.Quiet);

    public static Style Chapter { get; } = new(25, 29, Cut.Bold);

    public static Style Heading { get; } = new(14, 18, Cut.Bold);

    public static Style Group { get; } = new(18, 22, Cut.Bold);
}

/// <summary>Sizes of the printed page, in points: US letter, one column of text with a margin for sources.</summary>
internal static class Measures
{
    public const double Width = 612;
    public const double Height = 792;
    public const double Left = 54;
    public const double Top = 74;
    public const double Bottom = 732;
    public const double Text = Width - 2 * Left;

    /// <summary>Where a matter's balloon hangs.</summary>
    public const double Gutter = 38;

    /// <summary>Width of a matter's text.</summary>
    public const double Column = 338;

    /// <summary>Where the margin begins, from the left edge of the text.</summary>
    public const double MarginLeft = 392;

    public const double MarginWidth = Text - MarginLeft;
}
