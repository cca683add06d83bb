using SkiaSharp;

namespace Purlin.Demo.Pictures;

/// <summary>Things that appear in several scenes.</summary>
internal static class Things
{
    public static readonly SKColor Copper = new(184, 110, 66);
    public static readonly SKColor Steel = new(150, 152, 150);
    public static readonly SKColor Black = new(34, 34, 36);
    public static readonly SKColor White = new(240, 238, 232);
    public static readonly SKColor Rust = new(134, 66, 28);
    public static readonly SKColor Verdigris = new(88, 158, 132);
    public static readonly SKColor Wood = new(188, 148, 98);

    public static void Window(this Sheet sheet, float x, float y, float width, float height)
    {
        sheet.Fill(x - 22, y - 22, width + 44, height + 44, new SKColor(236, 232, 222));
        sheet.Lit(x, y, width, height, new SKColor(112, 138, 158), new SKColor(190, 206, 212));
        sheet.Fill(x + width / 2 - 8, y, 16, height, new SKColor(236, 232, 222));
        sheet.Fill(x - 34, y + height + 18, width + 68, 26, new SKColor(222, 216, 204));
    }

    public static void Outlet(this Sheet sheet, float x, float y, bool grounded = true)
    {
        sheet.Lit(x, y, 190, 300, new SKColor(246, 242, 232), new SKColor(214, 208, 196));
        foreach (var top in (ReadOnlySpan<float>)[y + 46, y + 176])
        {
            sheet.Fill(x + 36, top - 14, 118, 96, new SKColor(228, 222, 210));
            sheet.Fill(x + 64, top + 4, 10, 42, Black);
            sheet.Fill(x + 112, top + 4, 12, 36, Black);
            if (grounded) sheet.Disc(x + 94, top + 62, 12, Black);
        }
        sheet.Disc(x + 95, y + 150, 8, new SKColor(150, 146, 138));
    }

    public static void Breaker(this Sheet sheet, float x, float y, string rating)
    {
        sheet.Lit(x, y, 210, 64, new SKColor(52, 52, 56), new SKColor(26, 26, 30));
        sheet.Fill(x + 76, y + 16, 62, 32, new SKColor(88, 88, 92));
        sheet.Words(rating, x + 18, y + 43, 28, White);
    }

    /// <summary>An open panel: enclosure, bus, two columns of breakers, neutral bar on the right.</summary>
    public static void Panel(this Sheet sheet, string[] left, string[] right)
    {
        sheet.Plaster(new SKColor(206, 200, 190));
        sheet.Fill(330, 60, 940, 1060, new SKColor(118, 122, 126));
        sheet.Lit(360, 90, 880, 1000, new SKColor(70, 74, 80), new SKColor(46, 48, 54));
        sheet.Fill(760, 150, 80, 860, new SKColor(176, 178, 178));
        for (var index = 0; index < left.Length; index++) sheet.Breaker(540, 180 + index * 78, left[index]);
        for (var index = 0; index < right.Length; index++) sheet.Breaker(850, 180 + index * 78, right[index]);
        sheet.Fill(1140, 300, 46, 620, new SKColor(190, 192, 190));
        for (var y = 320; y < 910; y += 42) sheet.Disc(1163, y, 13, new SKColor(120, 122, 120));
        sheet.Pipe(new SKColor(24, 24, 26), 34, (700, 90), (700, 150), (760, 180));
        sheet.Pipe(new SKColor(24, 24, 26), 34, (900, 90), (900, 150), (840, 180));
    }

    public static void Plate(this Sheet sheet, string[] lines)
    {
        sheet.Lit(0, 0, Sheet.Width, Sheet.Height, new SKColor(146, 148, 146), new SKColor(104, 106, 106));
        sheet.Lit(190, 150, 1220, 880, new SKColor(222, 222, 216), new SKColor(188, 188, 182));
        foreach (var (x, y) in (ReadOnlySpan<(float, float)>)[(228, 188), (1372, 188), (228, 992), (1372, 992)])
            sheet.Disc(x, y, 15, new SKColor(92, 92, 92));
        for (var index = 0; index < lines.Length; index++) sheet.Words(lines[index], 270, 270 + index * 82, 48, new SKColor(26, 28, 32));
    }

    public static void Tank(this Sheet sheet, float x, float y, float width, float height)
    {
        sheet.Cylinder(x, y, width, height, new SKColor(226, 222, 210));
        sheet.Lit(x, y - 26, width, 30, new SKColor(206, 202, 190), new SKColor(170, 166, 156));
        sheet.Fill(x + width * 0.34f, y + height - 240, width * 0.3f, 150, new SKColor(72, 72, 76));
    }

    public static void Meter(this Sheet sheet, float x, float y, string figures, string unit)
    {
        sheet.Lit(x, y, 330, 470, new SKColor(56, 60, 66), new SKColor(30, 32, 36));
        sheet.Lit(x + 36, y + 46, 258, 140, new SKColor(196, 208, 178), new SKColor(164, 178, 150));
        sheet.Words(figures, x + 165, y + 150, 96, new SKColor(24, 30, 22), centred: true);
        sheet.Words(unit, x + 165, y + 240, 40, White, centred: true);
        sheet.Disc(x + 165, y + 350, 56, new SKColor(112, 116, 122));
    }

    public static void Gauge(this Sheet sheet, float x, float y, float radius, double share, string figures, string unit)
    {
        sheet.Disc(x, y, radius + 22, new SKColor(64, 64, 66));
        sheet.Disc(x, y, radius, new SKColor(242, 240, 234));
        for (var tick = 0; tick <= 20; tick++)
        {
            var angle = (float)(Math.PI * (0.75 + 1.5 * tick / 20));
            sheet.Line(Black, 5, (x + radius * 0.82f * MathF.Cos(angle), y + radius * 0.82f * MathF.Sin(angle)),
                (x + radius * 0.95f * MathF.Cos(angle), y + radius * 0.95f * MathF.Sin(angle)));
        }
        var needle = (float)(Math.PI * (0.75 + 1.5 * share));
        sheet.Line(new SKColor(176, 52, 30), 11, (x, y), (x + radius * 0.78f * MathF.Cos(needle), y + radius * 0.78f * MathF.Sin(needle)));
        sheet.Disc(x, y, 20, Black);
        sheet.Words(figures, x, y + radius * 0.52f, radius * 0.2f, Black, centred: true);
        sheet.Words(unit, x, y + radius * 0.7f, radius * 0.13f, Black, centred: true);
    }

    public static void Duct(this Sheet sheet, params (float X, float Y)[] points)
    {
        sheet.Pipe(new SKColor(178, 180, 182), 150, points);
        for (var index = 0; index < points.Length - 1; index++)
            for (var share = 0f; share < 1; share += 0.05f)
            {
                var (x, y) = (points[index].X + (points[index + 1].X - points[index].X) * share, points[index].Y
                    + (points[index + 1].Y - points[index].Y) * share);
                sheet.Line(new SKColor(120, 122, 126, 160), 4, (x - 30, y - 52), (x + 30, y + 52));
            }
    }
}
