using SkiaSharp;

namespace Purlin.Demo.Pictures;

/// <summary>Grounds on which a scene stands: walls, boards, shingles, joists, soil.</summary>
internal static class Surfaces
{
    public static void Plaster(this Sheet sheet, SKColor color)
    {
        sheet.Lit(0, 0, Sheet.Width, Sheet.Height, Sheet.Shade(color, 1.06), Sheet.Shade(color, 0.86));
        for (var index = 0; index < 260; index++)
            sheet.Stain(sheet.Between(0, Sheet.Width), sheet.Between(0, Sheet.Height), 40, Sheet.Shade(color, sheet.Between(0.9, 1.08))
                .WithAlpha(14), 2);
    }

    public static void Brick(this Sheet sheet, float x, float y, float width, float height, SKColor color, float course = 62)
    {
        sheet.Fill(x, y, width, height, new SKColor(176, 170, 160));
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(new SKRect(x, y, x + width, y + height));
        var row = 0;
        for (var top = y; top < y + height; top += course, row++)
            for (var left = x - (row % 2 == 0 ? 0 : course * 1.3f); left < x + width; left += course * 2.6f)
                sheet.Fill(left + 4, top + 4, course * 2.6f - 8, course - 8, Sheet.Shade(color, sheet.Between(0.82, 1.12)));
        sheet.Canvas.Restore();
    }

    public static void Boards(this Sheet sheet, float x, float y, float width, float height, SKColor color, float board = 92)
    {
        for (var top = y; top < y + height; top += board)
        {
            sheet.Lit(x, top, width, Math.Min(board, y + height - top), Sheet.Shade(color, sheet.Between(1.02, 1.1)),
                Sheet.Shade(color, 0.86));
            sheet.Fill(x, Math.Min(top + board - 6, y + height - 6), width, 6, Sheet.Shade(color, 0.55));
        }
    }

    public static void Shingles(this Sheet sheet, float y, float height, SKColor color, float course = 74)
    {
        var row = 0;
        for (var top = y; top < y + height; top += course, row++)
        {
            for (var left = -(row % 3) * 60f; left < Sheet.Width; left += 178)
                sheet.Lit(left, top, 174, course, Sheet.Shade(color, sheet.Between(0.85, 1.15)),
                    Sheet.Shade(color, sheet.Between(0.7, 0.85)));
            sheet.Fill(0, top + course - 7, Sheet.Width, 7, Sheet.Shade(color, 0.4));
        }
        for (var index = 0; index < 2600; index++)
            sheet.Disc(sheet.Between(0, Sheet.Width), y
                + sheet.Between(0, height), sheet.Between(1, 2.6), Sheet.Shade(color, sheet.Between(0.5, 1.5)).WithAlpha(120));
    }

    public static void Wood(this Sheet sheet, float x, float y, float width, float height, SKColor color, bool upright = false)
    {
        sheet.Lit(x, y, width, height, Sheet.Shade(color, 1.12), Sheet.Shade(color, 0.72), upright);
        var lines = (int)((upright ? width : height) / 9);
        for (var index = 0; index < lines; index++)
        {
            var at = sheet.Between(0, upright ? width : height);
            var tone = Sheet.Shade(color, sheet.Between(0.62, 0.95)).WithAlpha(90);
            if (upright) sheet.Line(tone, 2, (x + at, y), (x + at + sheet.Between(-8, 8), y + height));
            else sheet.Line(tone, 2, (x, y + at), (x + width, y + at + sheet.Between(-8, 8)));
        }
    }

    public static void Concrete(this Sheet sheet, float x, float y, float width, float height, SKColor? tone = null)
    {
        var color = tone ?? new SKColor(158, 155, 148);
        sheet.Lit(x, y, width, height, Sheet.Shade(color, 1.08), Sheet.Shade(color, 0.84));
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(new SKRect(x, y, x + width, y + height));
        for (var index = 0; index < 700; index++)
            sheet.Disc(x + sheet.Between(0, width), y
                + sheet.Between(0, height), sheet.Between(1, 4), Sheet.Shade(color, sheet.Between(0.7, 1.2)).WithAlpha(90));
        sheet.Canvas.Restore();
    }

    public static void Soil(this Sheet sheet, float y, float height)
    {
        SKColor color = new(96, 74, 54);
        sheet.Lit(0, y, Sheet.Width, height, Sheet.Shade(color, 1.1), Sheet.Shade(color, 0.6));
        for (var index = 0; index < 1500; index++)
            sheet.Disc(sheet.Between(0, Sheet.Width), y
                + sheet.Between(0, height), sheet.Between(2, 9), Sheet.Shade(color, sheet.Between(0.5, 1.5)).WithAlpha(130));
    }

    public static void Grass(this Sheet sheet, float y, float height)
    {
        sheet.Lit(0, y, Sheet.Width, height, new SKColor(96, 124, 72), new SKColor(58, 82, 44));
        for (var index = 0; index < 2600; index++)
        {
            var (x, top) = (sheet.Between(0, Sheet.Width), y + sheet.Between(0, height));
            sheet.Line(new SKColor(120, 152, 86, 120), 2, (x, top), (x + sheet.Between(-6, 6), top - sheet.Between(8, 26)));
        }
    }

    public static void Insulation(this Sheet sheet, float y, float height)
    {
        SKColor color = new(206, 186, 168);
        sheet.Lit(0, y, Sheet.Width, height, Sheet.Shade(color, 1.05), Sheet.Shade(color, 0.7));
        for (var index = 0; index < 2200; index++)
            sheet.Disc(sheet.Between(0, Sheet.Width), y
                + sheet.Between(0, height), sheet.Between(6, 22), Sheet.Shade(color, sheet.Between(0.75, 1.15)).WithAlpha(70));
    }

    /// <summary>A room seen flat: wall, floor line and skirting.</summary>
    public static void Room(this Sheet sheet, SKColor wall, SKColor floor, float line = 860)
    {
        sheet.Plaster(wall);
        sheet.Wood(0, line, Sheet.Width, Sheet.Height - line, floor);
        sheet.Fill(0, line - 46, Sheet.Width, 46, new SKColor(238, 234, 226));
        sheet.Fill(0, line - 4, Sheet.Width, 4, new SKColor(120, 112, 100));
    }

    /// <summary>The underside of a roof or floor: decking with framing across it.</summary>
    public static void Framing(this Sheet sheet, SKColor wood, float spacing = 330, float member = 92)
    {
        sheet.Wood(0, 0, Sheet.Width, Sheet.Height, Sheet.Shade(wood, 0.72));
        for (var x = 60f; x < Sheet.Width; x += spacing) sheet.Wood(x, 0, member, Sheet.Height, wood, upright: true);
    }

    public static void Sky(this Sheet sheet, float height) =>
        sheet.Lit(0, 0, Sheet.Width, height, new SKColor(158, 184, 206), new SKColor(216, 224, 228));
}
