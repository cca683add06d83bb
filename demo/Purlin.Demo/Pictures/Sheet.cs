using SkiaSharp;

namespace Purlin.Demo.Pictures;

/// <summary>
/// A drawn picture in place of a photograph: a canvas of 1600 by 1200 with the strokes and surfaces the scenes are made of.
/// Every picture bears a strip that says that it is invented. The same seed draws the same picture.
/// </summary>
internal sealed class Sheet : IDisposable
{
    public const int Width = 1600;
    public const int Height = 1200;

    // No font of the machine: the same picture comes out everywhere.
    private static readonly SKTypeface Face = SKTypeface.FromStream(typeof(Sheet).Assembly.GetManifestResourceStream("demo/plate.ttf")!);

    private readonly SKBitmap bitmap = new(Width, Height);

    public Sheet(int seed)
    {
        Canvas = new SKCanvas(bitmap);
        Chance = new Random(seed);
    }

    public SKCanvas Canvas { get; }

    public Random Chance { get; }

    public float Between(double low, double high) => (float)(low + Chance.NextDouble() * (high - low));

    public static SKColor Shade(SKColor color, double factor) => new(Part(color.Red, factor), Part(color.Green, factor), Part(color.Blue, factor), color.Alpha);

    public void Fill(float x, float y, float width, float height, SKColor color)
    {
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        Canvas.DrawRect(x, y, width, height, paint);
    }

    public void Lit(float x, float y, float width, float height, SKColor top, SKColor bottom, bool sideways = false)
    {
        using var shader = SKShader.CreateLinearGradient(new SKPoint(x, y), sideways ? new SKPoint(x + width, y) : new SKPoint(x, y + height), [top, bottom], SKShaderTileMode.Clamp);
        using var paint = new SKPaint { Shader = shader, IsAntialias = true };
        Canvas.DrawRect(x, y, width, height, paint);
    }

    /// <summary>A round body seen from the side: dark edges, a light band.</summary>
    public void Cylinder(float x, float y, float width, float height, SKColor color)
    {
        using var shader = SKShader.CreateLinearGradient(new SKPoint(x, y), new SKPoint(x + width, y), [Shade(color, 0.55), Shade(color, 1.15), Shade(color, 0.9), Shade(color, 0.5)], [0, 0.35f, 0.7f, 1], SKShaderTileMode.Clamp);
        using var paint = new SKPaint { Shader = shader, IsAntialias = true };
        Canvas.DrawRect(x, y, width, height, paint);
    }

    public void Pipe(SKColor color, float width, params (float X, float Y)[] points)
    {
        using var path = new SKPathBuilder();
        path.MoveTo(points[0].X, points[0].Y);
        foreach (var (x, y) in points.Skip(1)) path.LineTo(x, y);
        Stroke(path, Shade(color, 0.5), width);
        Stroke(path, color, width * 0.8f);
        Stroke(path, Shade(color, 1.3), width * 0.28f);
    }

    public void Line(SKColor color, float width, params (float X, float Y)[] points)
    {
        using var path = new SKPathBuilder();
        path.MoveTo(points[0].X, points[0].Y);
        foreach (var (x, y) in points.Skip(1)) path.LineTo(x, y);
        Stroke(path, color, width);
    }

    public void Shape(SKColor color, params (float X, float Y)[] points)
    {
        using var path = new SKPathBuilder();
        path.MoveTo(points[0].X, points[0].Y);
        foreach (var (x, y) in points.Skip(1)) path.LineTo(x, y);
        path.Close();
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        using var shape = path.Snapshot();
        Canvas.DrawPath(shape, paint);
    }

    public void Disc(float x, float y, float radius, SKColor color)
    {
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        Canvas.DrawCircle(x, y, radius, paint);
    }

    /// <summary>A stain, a cloud of soft blots around a point.</summary>
    public void Stain(float x, float y, float radius, SKColor color, int blots = 40)
    {
        using var blur = SKMaskFilter.CreateBlur(SKBlurStyle.Normal, radius * 0.12f);
        using var paint = new SKPaint { Color = color.WithAlpha((byte)Math.Min(60, (int)color.Alpha)), IsAntialias = true, MaskFilter = blur };
        for (var index = 0; index < blots; index++)
        {
            var angle = Between(0, Math.Tau);
            var away = radius * MathF.Sqrt(Between(0, 1));
            Canvas.DrawCircle(x + away * MathF.Cos(angle), y + away * MathF.Sin(angle) * 0.8f, radius * Between(0.1, 0.4), paint);
        }
    }

    /// <summary>A crack that wanders from one point to another.</summary>
    public void Crack(SKColor color, float width, (float X, float Y) from, (float X, float Y) to, float wander = 18)
    {
        using var path = new SKPathBuilder();
        path.MoveTo(from.X, from.Y);
        const int Steps = 26;
        for (var step = 1; step <= Steps; step++)
        {
            var share = step / (float)Steps;
            path.LineTo(from.X + (to.X - from.X) * share + Between(-wander, wander), from.Y + (to.Y - from.Y) * share + Between(-wander, wander) * 0.4f);
        }
        Stroke(path, color, width);
    }

    public void Words(string text, float x, float y, float size, SKColor color, bool centred = false)
    {
        using var font = new SKFont(Face, size);
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        Canvas.DrawText(text, x, y, centred ? SKTextAlign.Center : SKTextAlign.Left, font, paint);
    }

    /// <summary>The picture as JPEG. Evidence stays unmarked: only the strip that says it is invented is laid over it.</summary>
    public byte[] Finish(string label)
    {
        Grain();
        Fill(0, Height - 54, Width, 54, new SKColor(16, 24, 39));
        Words("INVENTED DEMO PICTURE   " + label.ToUpperInvariant(), 28, Height - 18, 27, SKColors.White);
        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Jpeg, 78);
        return data.ToArray();
    }

    public void Dispose()
    {
        Canvas.Dispose();
        bitmap.Dispose();
    }

    private void Stroke(SKPathBuilder path, SKColor color, float width)
    {
        using var paint = new SKPaint { Color = color, StrokeWidth = width, Style = SKPaintStyle.Stroke, IsAntialias = true, StrokeCap = SKStrokeCap.Round, StrokeJoin = SKStrokeJoin.Round };
        using var shape = path.Snapshot();
        Canvas.DrawPath(shape, paint);
    }

    /// <summary>Darker corners and fine grain, so that a flat drawing reads as a view into a place.</summary>
    private void Grain()
    {
        using var shader = SKShader.CreateRadialGradient(new SKPoint(Width * 0.48f, Height * 0.45f), Width * 0.75f, [SKColors.Transparent, new SKColor(0, 0, 0, 110)], [0.55f, 1], SKShaderTileMode.Clamp);
        using var dark = new SKPaint { Shader = shader };
        Canvas.DrawRect(0, 0, Width, Height, dark);
        using var fine = new SKPaint();
        for (var index = 0; index < 5000; index++)
        {
            var light = Chance.Next(2) == 0;
            fine.Color = light ? new SKColor(255, 255, 255, 16) : new SKColor(0, 0, 0, 18);
            Canvas.DrawRect(Chance.Next(Width), Chance.Next(Height), Chance.Next(2, 5), Chance.Next(2, 5), fine);
        }
    }

    private static byte Part(byte value, double factor) => (byte)Math.Clamp(value * factor, 0, 255);
}
