using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Sets photographs and drawings with their captions.</summary>
internal sealed class PictureSetting(Func<string, byte[]?> photoBySha, Phrase words)
{
    /// <summary>Turns of phrase in the language of the paper.</summary>
    public Phrase Words { get; } = words;

    public const double Gap = 12;

    /// <summary>Photographs in rows of so many.</summary>
    public IReadOnlyList<Atom> Of(IReadOnlyList<Picture> pictures, int across, double width, IReadOnlyList<Group> groups, Style caption, double tallest = 330)
    {
        var each = (width - Gap * (across - 1)) / across;
        return [.. pictures.Chunk(across).Select(row => Row([.. row.Select(picture => new FramedPhoto(photoBySha, picture, each, tallest, caption, Words))], each, groups))];
    }

    /// <summary>A drawing as wide as allowed, with its caption.</summary>
    public static Atom Drawing(Sheet sheet, string caption, double width, IReadOnlyList<Group> groups, Style style, double tallest = 600)
    {
        var lines = caption.Length == 0 ? [] : Lines.Of(caption, style, width);
        var scale = Math.Min(width / sheet.Width, tallest / sheet.Height);
        double height = sheet.Height * scale, inset = (width - sheet.Width * scale) / 2;
        Leaf figure = new("Figure") { Alt = Typesetting.Clean($"{sheet.Title}. {sheet.Description}"), Width = sheet.Width * scale, Height = height };
        return new Atom
        {
            Height = height + (lines.Count > 0 ? lines.Count * style.Leading + 6 : 0),
            Before = 10,
            Groups = groups,
            Run = figure,
            Strokes = [new Stroke(figure, (canvas, x, y) =>
            {
                SheetOnPaper.Draw(canvas, sheet, x + inset, y, scale);
                Caption(canvas, lines, x, y + height + 4, style);
            })],
        };
    }

    /// <summary>The words under a picture, inside its element: they belong to it.</summary>
    internal static void Caption(Canvas canvas, IReadOnlyList<IReadOnlyList<Bit>> lines, double x, double y, Style style)
    {
        if (lines.Count == 0) return;
        canvas.Tags.BeginBlockLevelElement("Caption");
        for (var line = 0; line < lines.Count; line++) canvas.Bits(lines[line], x, y + (line + 0.78) * style.Leading, style);
        canvas.Tags.End();
    }

    private static Atom Row(IReadOnlyList<FramedPhoto> framed, double each, IReadOnlyList<Group> groups) => new()
    {
        Height = framed.Max(one => one.Height) + 3,
        Before = 8,
        Groups = groups,
        Run = framed,
        Entry = new Landmark(0, "", framed[0].Anchor),
        Strokes = [.. framed.Select((one, index) => one.Stroke(index * (each + Gap)))],
    };
}
