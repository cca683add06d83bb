using PdfSharp.Drawing;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Photos;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>One photograph with its caption, in the size it gets. The bytes of a JPEG go into the file as they are.</summary>
internal sealed class FramedPhoto
{
    private readonly Func<string, byte[]?> photoBySha;
    private readonly Picture picture;
    private readonly double width;
    private readonly double tall;
    private readonly string missing;
    private readonly Style style;
    private readonly IReadOnlyList<IReadOnlyList<Bit>> lines;

    public FramedPhoto(Func<string, byte[]?> photoBySha, Picture picture, double each, double tallest, Style caption, Phrase words)
    {
        (this.photoBySha, this.picture, style) = (photoBySha, picture, caption);
        var photo = PhotoBytes.Read(photoBySha(picture.Sha));
        missing = photo switch
        {
            null => words.Say("paper.photograph.missing"),
            { Format: PhotoFormat.WebP } => words.Say("paper.photograph.webp"),
            _ when !Prints(photo) => words.Say("paper.photograph.unread"),
            _ => "",
        };
        double across = photo is { Turned: true } ? photo.Height : photo?.Width ?? 4, down = photo is { Turned: true } ? photo.Width : photo?.Height ?? 3;
        if (missing.Length > 0) (across, down) = (4, 1.2);
        var scale = Math.Min(each / across, tallest / down);
        (width, tall) = (across * scale, down * scale);
        lines = Lines.Of(new Prose(new Run($"{picture.Number}. ", Strong: true), new Run(picture.Caption)), caption, each);
    }

    /// <summary>With its caption.</summary>
    public double Height => tall + lines.Count * style.Leading + 4;

    public string Anchor => $"photograph-{picture.Number}";

    public Stroke Stroke(double across) => missing.Length > 0
        ? new Stroke(new Leaf("Div"), (canvas, x, y) =>
        {
            canvas.Frame(new Box(x + across, y, width, tall), 0.6, Ink.Faint);
            var said = Lines.Of(missing, style, width - 16);
            for (var line = 0; line < said.Count; line++) canvas.Bits(said[line], x + across + 8, y + 14 + line * style.Leading, style);
            PictureSetting.Caption(canvas, lines, x + across, y + tall + 3, style);
        })
        : new Stroke(new Leaf("Figure") { Alt = Typesetting.Clean(picture.Alt), Width = width, Height = tall }, (canvas, x, y) =>
        {
            Draw(canvas, x + across, y);
            PictureSetting.Caption(canvas, lines, x + across, y + tall + 3, style);
        });

    private void Draw(Canvas canvas, double x, double y)
    {
        if (PhotoBytes.Read(photoBySha(picture.Sha)) is not { } photo) return;
        using MemoryStream stream = new(photo.Bytes.ToArray());
        using var image = XImage.FromStream(stream);
        var state = canvas.Graphics.Save();
        Turn(canvas.Graphics, photo.Orientation, x, y, width, tall);
        var (across, down) = photo.Turned ? (tall, width) : (width, tall);
        canvas.Graphics.DrawImage(image, -across / 2, -down / 2, across, down);
        canvas.Graphics.Restore(state);
        canvas.Frame(new Box(x, y, width, tall), 0.5);
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
