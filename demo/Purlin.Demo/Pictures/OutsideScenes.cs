using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class OutsideScenes
{
    private static readonly SKColor Siding = new(170, 160, 134);

    public static IReadOnlyList<Scene> All { get; } =
    [
        new("front", "Front of the house", sheet => Side(sheet, door: true, windows: 3)),
        new("left", "Left side", sheet => Side(sheet, door: false, windows: 2)),
        new("rear", "Rear of the house", sheet => { Side(sheet, door: true, windows: 2); Deck(sheet); }),
        new("right", "Right side",
            sheet => { Side(sheet, door: false, windows: 1); sheet.Brick(980, 120, 260, 860, new SKColor(142, 74, 56), 44); }),
        new("driveway", "Driveway, hairline crack",
            sheet => { sheet.Concrete(0, 0, Sheet.Width, Sheet.Height); sheet.Fill(796, 0, 10, Sheet.Height,
            new SKColor(110, 108, 102)); sheet.Crack(new SKColor(86, 82, 76), 4, (180, 1080), (720, 60), 26); }),
        new("grading", "Ground against the rear wall", Grading),
        new("foundation-crack", "Foundation wall at the rear corner",
            sheet => { sheet.Concrete(0, 180, Sheet.Width, 760); sheet.Boards(0, 0, Sheet.Width, 180, Siding); sheet.Soil(940,
            260); sheet.Crack(new SKColor(46, 42, 38), 11, (420, 196), (1060, 930), 30); sheet.Crack(new SKColor(70, 66, 60), 4, (820, 640),
            (1180, 560), 20); }),
        new("deck-ledger", "Deck ledger from below",
            sheet => { sheet.Soil(560, 640); sheet.Boards(0, 0, Sheet.Width, 420, Siding); sheet.Wood(0, 420, Sheet.Width, 210,
            Things.Wood); for (var x = 90; x < Sheet.Width; x += 250) { sheet.Wood(x, 520, 84, 560, Sheet.Shade(Things.Wood, 0.9),
            upright: true); sheet.Disc(x + 130, 480, 9, new SKColor(90, 88, 86)); sheet.Disc(x
            + 130, 560, 9, new SKColor(90, 88, 86)); } sheet.Stain(700, 440, 190, new SKColor(60, 46, 30), 70); }),
        new("deck-guard", "Guard at the deck edge with a tape",
            sheet => { sheet.Sky(620); sheet.Grass(620, 300); sheet.Wood(0, 900, Sheet.Width, 300, new SKColor(156, 122, 84)); sheet.Wood(0,
            380, Sheet.Width, 56, Things.Wood); for (var x = 60; x < Sheet.Width; x += 190) sheet.Wood(x, 420, 44, 500, Things.Wood,
            upright: true); sheet.Fill(800, 380, 46, 530,
            new SKColor(236, 196, 62)); for (var mark = 0; mark < 30; mark++) sheet.Line(Things.Black, mark % 5 == 0 ? 5
            : 2, (800, 905 - mark * 17.6f), (mark % 5 == 0 ? 836 : 820, 905 - mark * 17.6f)); sheet.Words("30", 804, 376, 44,
            Things.Black); }),
        new("deck-stairs", "Deck stairs",
            sheet => { sheet.Grass(0, Sheet.Height); float[] rises = [104, 132, 128,
            176]; var y = 1080f; for (var step = 0; step < 4; step++) { y -= rises[step]; sheet.Wood(260
            + step * 150, y, 1100 - step * 100, 44, Things.Wood); sheet.Fill(260 + step * 150, y
            + 44, 1100 - step * 100, rises[step] - 44, new SKColor(58, 48, 36)); } }),
    ];

    private static void Side(Sheet sheet, bool door, int windows)
    {
        sheet.Sky(1010);
        sheet.Shape(new SKColor(84, 80, 78), (60, 330), (320, 110), (1280, 110), (1540, 330));
        sheet.Boards(110, 330, 1380, 590, Siding, 54);
        sheet.Concrete(110, 920, 1380, 90);
        sheet.Grass(1010, 190);
        sheet.Fill(90, 316, 1420, 26, Things.White);
        for (var window = 0; window < windows; window++) sheet.Window(250 + window * 420, 450, 220, 240);
        if (door) sheet.Lit(1260, 520, 170, 400, new SKColor(92, 56, 44), new SKColor(64, 38, 30));
    }

    private static void Deck(Sheet sheet)
    {
        sheet.Wood(420, 880, 800, 60, Things.Wood);
        for (var x = 440; x < 1220; x += 190) sheet.Wood(x, 700, 26, 300, Things.Wood, upright: true);
        sheet.Wood(420, 690, 800, 26, Things.Wood);
    }

    private static void Grading(Sheet sheet)
    {
        sheet.Boards(0, 0, Sheet.Width, 360, Siding);
        sheet.Concrete(0, 360, Sheet.Width, 240);
        sheet.Soil(600, 600);
        sheet.Shape(new SKColor(122, 96, 68), (0, 640), (520, 760), (1600, 600), (1600, 1200), (0, 1200));
        sheet.Stain(560, 720, 260, new SKColor(30, 34, 40), 80);
        sheet.Fill(300, 610, 900, 40, new SKColor(206, 170, 60));
        sheet.Lit(690, 616, 120, 28, new SKColor(170, 214, 120), new SKColor(120, 170, 80));
        sheet.Disc(722, 630, 12, new SKColor(232, 246, 214));
    }
}
