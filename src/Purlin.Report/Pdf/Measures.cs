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
    public static Style Body { get; } = new(10.5, 13.2);

    public static Style Strong { get; } = new(10.5, 13.2, Cut.Bold);

    public static Style Lead { get; } = new(11.5, 15);

    public static Style Small { get; } = new(8.6, 11, Cut.Regular, Ink.Quiet);

    public static Style SmallStrong { get; } = new(8.6, 11, Cut.Bold);

    public static Style Table { get; } = new(9.4, 12.2);

    public static Style Fine { get; } = new(8.8, 11.2);

    public static Style Chapter { get; } = new(19, 23, Cut.Bold);

    public static Style Heading { get; } = new(14.5, 17.5, Cut.Bold);

    public static Style Group { get; } = new(13, 16, Cut.Bold, Ink.Text);

    public static Style Name { get; } = new(24, 27, Cut.Bold);
}

/// <summary>The styles that one chapter is set in: larger across the page, smaller in the columns of reference and annex.</summary>
internal sealed record Voice(Style Body, Style Strong, Style Small, Style Fine, Style Chapter, Style Heading, double Width)
{
    /// <summary>Across the page.</summary>
    public static Voice Across { get; } = new(Style.Body, Style.Strong, Style.Small, Style.Fine, Style.Chapter, Style.Group, Measures.Text);

    /// <summary>Reference: two columns.</summary>
    public static Voice Reference { get; } = new(new(8.8, 11), new(8.8, 11, Cut.Bold), new(8, 10, Cut.Regular, Ink.Quiet), new(8.2, 10.1), new(15, 18, Cut.Bold), new(10, 13, Cut.Bold), Measures.Half);

    /// <summary>Annex: two columns, smallest.</summary>
    public static Voice Annex { get; } = new(new(8, 9.9), new(8, 9.9, Cut.Bold), new(7.6, 9.4, Cut.Regular, Ink.Quiet), new(7.8, 9.6), new(14, 17, Cut.Bold), new(8.8, 11, Cut.Bold), Measures.Half);
}

/// <summary>Sizes of the printed page, in points: US letter.</summary>
internal static class Measures
{
    public const double Width = 612;
    public const double Height = 792;
    public const double Left = 36;
    public const double Top = 60;
    public const double Bottom = 746;
    public const double Text = Width - 2 * Left;

    /// <summary>Between two columns.</summary>
    public const double Gap = 18;

    /// <summary>One of two columns.</summary>
    public const double Half = (Text - Gap) / 2;

    /// <summary>Beside a matter: its balloon, by when, whom, where.</summary>
    public const double Rail = 82;

    /// <summary>Where the picture of a matter begins.</summary>
    public const double First = Rail + 12;

    /// <summary>Width of the picture: 2.64 in.</summary>
    public const double Picture = 190;

    /// <summary>Where the text beside it begins.</summary>
    public const double Second = First + Picture + 14;

    /// <summary>Width of the text beside it.</summary>
    public const double Column = Text - Second;
}
