using PdfSharp.Drawing;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Photos;

namespace Purlin.Report.Pdf;

/// <summary>Sets photographs with their captions. The bytes of a JPEG go into the file as they are.</summary>
internal sealed class PictureSetting(Func<string, byte[]?> photoBySha)
{
    private readonly Func<string, byte[]?> photoBySha = photoBySha;
    private const double Gap = 14;

    /// <summary>Photographs one under another, or several beside one another.</summary>
    public IReadOnlyList<Atom> Of(IReadOnlyList<Picture> pictures, int across, double width, IReadOnlyList<Group> groups, double left = 0, double tallest = 330)
    {
        var each = (width - Gap * (across - 1)) / across;
        return [.. pictures.Chunk(across).Select(row => Row([.. row.Select(picture => new Framed(this, picture, each, tallest))], each, groups, left))];
    }

    /// <summary>A drawing as wide as allowed, with its caption.</summary>
    public static Atom Drawing(Sheet sheet, string caption, double width, IReadOnlyList<Group> groups, double left = 0, double tallest = 600)
    {
        var scale = Math.Min(width / sheet.Width, tallest / sheet.Height);
        double height = sheet.Height * scale, inset = (width - sheet.Width * scale) / 2;
        var lines = Typesetting.Lines(caption, Style.Small.Size, Style.Small.Cut, width);
        Leaf figure = new("Figure") { Alt = Typesetting.Clean($"{sheet.Title}. {sheet.Description}"), Width = sheet.Width * scale, Height = height }, words = new("Caption");
        return new Atom
        {
            Height = height + lines.Count * Style.Small.Leading + 8,
            Before = 12,
            Left = left,
            Groups = groups,
            Run = figure,
            Strokes = [new Stroke(figure, (canvas, x, y) => SheetOnPaper.Draw(canvas, sheet, x + inset, y, scale)), Caption(words, lines, 0, height + 5)],
        };
    }

    private static Atom Row(IReadOnlyList<Framed> framed, double each, IReadOnlyList<Group> groups, double left)
    {
        var picture = framed.Max(one => one.Height);
        return new Atom
        {
            Height = picture + framed.Max(one => one.Lines.Count) * Style.Small.Leading + 8,
            Before = 12,
            Left = left,
            Groups = groups,
            Run = framed,
            Strokes = [.. framed.SelectMany((one, index) => one.Strokes(index * (each + Gap), picture))],
        };
    }

    private static Stroke Caption(Leaf leaf, IReadOnlyList<string> lines, double across, double down) => new(leaf, (canvas, x, y) =>
    {
        for (var line = 0; line < lines.Count; line++) canvas.Text(lines[line], x + across, y + down + (line + 0.76) * Style.Small.Leading, Style.Small.Size, Style.Small.Cut, Style.Small.Ink);
    });

    private sealed class Framed
    {
        private readonly PictureSetting setting;
        private readonly Picture picture;
        private readonly double width;
        private readonly string missing;

        public Framed(PictureSetting setting, Picture picture, double each, double tallest)
        {
            (this.setting, this.picture) = (setting, picture);
            var photo = PhotoBytes.Read(setting.photoBySha(picture.Sha));
            missing = photo switch
            {
                null => "This photograph is not in this copy of the report.",
                { Format: PhotoFormat.WebP } => "This photograph is stored as WebP, which cannot be printed here. It is in the page.",
                _ when !Prints(photo) => "This photograph could not be read for printing. It is in the page.",
                _ => "",
            };
            double across = photo is { Turned: true } ? photo.Height : photo?.Width ?? 4, down = photo is { Turned: true } ? photo.Width : photo?.Height ?? 3;
            if (missing.Length > 0) (across, down) = (4, 1.2);
            var scale = Math.Min(each / across, tallest / down);
            (width, Height) = (across * scale, down * scale);
            Lines = Typesetting.Lines($"{picture.Number}. {picture.Caption}", Style.Small.Size, Style.Small.Cut, each);
        }

        public double Height { get; }

        public IReadOnlyList<string> Lines { get; }

        public IEnumerable<Stroke> Strokes(double across, double bottom)
        {
            Leaf words = new("Caption");
            if (missing.Length > 0)
                yield return new Stroke(Leaf.Paragraph(), (canvas, x, y) =>
                {
                    canvas.Frame(new Box(x + across, y, width, Height), 0.6, Ink.Faint);
                    var lines = Typesetting.Lines(missing, Style.Small.Size, Style.Small.Cut, width - 20);
                    for (var line = 0; line < lines.Count; line++) canvas.Text(lines[line], x + across + 10, y + 18 + line * Style.Small.Leading, Style.Small.Size, Style.Small.Cut, Style.Small.Ink);
                });
            else yield return new Stroke(new Leaf("Figure") { Alt = Typesetting.Clean(picture.Alt), Width = width, Height = Height }, (canvas, x, y) => Draw(canvas, x + across, y));
            yield return Caption(words, Lines, across, bottom + 4);
        }

        private void Draw(Canvas canvas, double x, double y)
        {
            if (PhotoBytes.Read(setting.photoBySha(picture.Sha)) is not { } photo) return;
            using MemoryStream stream = new(photo.Bytes.ToArray());
            using var image = XImage.FromStream(stream);
            var state = canvas.Graphics.Save();
            Turn(canvas.Graphics, photo.Orientation, x, y, width, Height);
            var (across, down) = photo.Turned ? (Height, width) : (width, Height);
            canvas.Graphics.DrawImage(image, -across / 2, -down / 2, across, down);
            canvas.Graphics.Restore(state);
            canvas.Frame(new Box(x, y, width, Height), 0.5);
        }

        // Exif 2.32, section 4.6.4, tag 274: 3 is upside down, 6 a quarter turn to the right, 8 to the left; even ones among the rest are mirrored.
        private static void Turn(XGraphics graphics, int orientation, double x, double y, double width, double height)
        {
            graphics.TranslateTransform(x + width / 2, y + height / 2);
            graphics.RotateTransform(orientation switch { 3 or 4 => 180, 5 or 6 => 90, 7 or 8 => -90, _ => 0 });
            if (orientation is 2 or 4 or 5 or 7) graphics.ScaleTransform(-1, 1);
        }

        private static bool Prints(PhotoBytes photo)
        {
            try
            {
                using MemoryStream stream = new(photo.Bytes.ToArray());
                using var image = XImage.FromStream(stream);
                return image.PixelWidth > 0;
            }
            catch (Exception unreadable) when (unreadable is InvalidOperationException or NotSupportedException or NotImplementedException or ArgumentException or IndexOutOfRangeException or IOException)
            {
                return false;
            }
        }
    }
}
