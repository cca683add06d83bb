using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class RoofScenes
{
    private static readonly SKColor Shingle = new(102, 96, 92);

    public static IReadOnlyList<Scene> All { get; } =
    [
        new("roof", "Roof, rear slope from a ladder",
        sheet => { sheet.Sky(190); sheet.Shingles(190, 1010,
        Shingle); for (var blot = 0; blot < 7; blot++) sheet.Stain(sheet.Between(100, 1500), sheet.Between(300, 1100), 120,
        new SKColor(44, 40, 38), 26); }),
        new("roof-torn", "Shingles lifted by wind",
            sheet => { sheet.Shingles(0, Sheet.Height, Shingle); sheet.Shape(new SKColor(150, 118, 80), (640, 420), (1010, 430), (990, 640),
            (660, 620)); sheet.Shape(Sheet.Shade(Shingle, 1.3), (1000, 660), (1240, 560), (1320, 690), (1070, 790)); }),
        new("chimney-flashing", "Flashing at the chimney",
            sheet => { sheet.Shingles(0, Sheet.Height, Shingle); sheet.Brick(520, 0, 620, 760,
            new SKColor(142, 74, 56)); sheet.Shape(new SKColor(156, 158, 158), (470, 700), (1190, 700), (1240, 830),
            (430, 830)); sheet.Shape(new SKColor(24, 22, 22), (540, 704), (900, 704), (880, 742), (560, 736)); sheet.Stain(700, 780, 130,
            new SKColor(20, 20, 22), 50); }),
        new("gutter", "Gutter at the rear eave",
            sheet => { sheet.Sky(420); sheet.Shingles(420, 330, Shingle); sheet.Shape(new SKColor(222, 220, 212), (0, 760), (1600, 830),
            (1600, 930), (0, 860)); for (var leaf = 0; leaf < 160; leaf++) sheet.Disc(sheet.Between(0, 1600), sheet.Between(752, 826),
            sheet.Between(6, 16), new SKColor(122, 84, 40)); sheet.Boards(0, 930, Sheet.Width, 270, new SKColor(170, 160, 134)); }),
        new("attic-fan", "Bath fan duct in the attic",
            sheet => { sheet.Framing(Things.Wood); sheet.Insulation(760, 440); sheet.Duct((240, 860), (760, 700),
            (1120, 560)); sheet.Disc(1120, 560, 78, new SKColor(20, 20, 20)); sheet.Stain(1220, 360, 240, new SKColor(36, 32, 28), 90); }),
        new("attic-dark", "Darkened sheathing, north slope",
            sheet => { sheet.Framing(Things.Wood); for (var blot = 0; blot < 9; blot++) sheet.Stain(sheet.Between(100, 1500),
            sheet.Between(80, 1000), 190, new SKColor(30, 30, 28), 60); }),
        new("attic-stain", "Attic side below the chimney",
            sheet => { sheet.Framing(Things.Wood); sheet.Brick(620, 0, 430, 1200, new SKColor(136, 72, 54)); sheet.Stain(560, 560, 260,
            new SKColor(72, 42, 20), 120); sheet.Stain(1090, 420, 160, new SKColor(72, 42, 20), 70); }),
        new("attic-end", "North end, joists under insulation",
            sheet => { sheet.Framing(Sheet.Shade(Things.Wood, 0.7), 420); sheet.Insulation(480, 720); sheet.Lit(0, 0, Sheet.Width,
            Sheet.Height, new SKColor(0, 0, 0, 10), new SKColor(0, 0, 0, 120)); }),
        new("attic-depth", "Insulation depth with a rule",
            sheet => { sheet.Framing(Things.Wood, 520); sheet.Insulation(600, 600); sheet.Fill(760, 260, 70, 560,
            new SKColor(236, 196, 62)); for (var inch = 0; inch < 12; inch++) { sheet.Line(Things.Black, 4, (760, 800 - inch * 46),
            (800, 800 - inch * 46)); } sheet.Words("5", 800, 590, 46, Things.Black); }),
    ];
}
