using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class InsideScenes
{
    public static IReadOnlyList<Scene> All { get; } =
    [
        new("ceiling", "Ceiling of bedroom 2",
        sheet => { sheet.Plaster(new SKColor(234, 232, 226)); sheet.Stain(820, 520, 300, new SKColor(150, 104, 50), 130); sheet.Stain(820,
        520, 200, new SKColor(170, 128, 72), 80); sheet.Crack(new SKColor(150, 140, 126), 3, (200, 1100), (800, 640), 10); }),
        new("moisture", "Moisture meter on the stain",
            sheet => { sheet.Plaster(new SKColor(232, 228, 220)); sheet.Stain(520, 420, 300, new SKColor(150, 104, 50),
            110); sheet.Line(new SKColor(180, 180, 180), 9, (770, 520), (900, 600)); sheet.Line(new SKColor(180, 180, 180), 9, (750, 560),
            (900, 640)); sheet.Meter(880, 520, "24", "% WME"); }),
        new("pane", "Window in bedroom 1",
            sheet => { sheet.Room(new SKColor(206, 204, 196), new SKColor(150, 112, 74), 1000); sheet.Window(420, 180, 760,
            600); sheet.Crack(new SKColor(240, 244, 246), 5, (470, 760), (790, 240), 12); }),
        new("floor-level", "Floor level survey in the living room",
            sheet => { sheet.Room(new SKColor(212, 204, 192), new SKColor(160, 120, 78), 520); sheet.Meter(660, 620, "-1.4",
            "in"); sheet.Line(new SKColor(230, 230, 230), 10, (660, 900), (380, 1020), (0, 1060)); }),
        new("door", "Door frame out of square, hall",
            sheet => { sheet.Room(new SKColor(214, 208, 198), new SKColor(150, 112, 74), 1060); sheet.Shape(new SKColor(238, 234, 226),
            (480, 130), (1130, 160), (1140, 1060), (470, 1060)); sheet.Shape(new SKColor(160, 122, 82), (530, 180), (1080, 180),
            (1080, 1060), (520, 1060)); sheet.Shape(new SKColor(24, 22, 20), (530, 170), (1080, 192), (1080, 206),
            (530, 178)); sheet.Crack(new SKColor(110, 102, 92), 4, (1130, 160), (1390, 20), 12); }),
        new("garage-goods", "Boxes along the garage wall",
            sheet => { sheet.Plaster(new SKColor(206, 202, 194)); sheet.Concrete(0, 1000, Sheet.Width,
            200); for (var row = 0; row < 4; row++) for (var box = 0; box < 6; box++) { var x = 40 + box * 262
            + sheet.Between(-14, 14); var y = 770 - row * 236; sheet.Lit(x, y, 246, 232,
            Sheet.Shade(new SKColor(178, 136, 88), sheet.Between(0.85, 1.15)), new SKColor(128, 96, 60)); sheet.Fill(x, y
            + 100, 246, 22, new SKColor(206, 186, 146)); } }),
        new("garage-door", "Door between garage and house",
            sheet => { sheet.Plaster(new SKColor(204, 200, 192)); sheet.Lit(520, 120, 560, 1000, new SKColor(176, 134, 88),
            new SKColor(130, 96, 62)); foreach (var (x, y) in (ReadOnlySpan<(float, float)>)[(570, 200), (820, 200), (570, 560),
            (820, 560)]) sheet.Fill(x, y, 210, 300, new SKColor(150, 112, 74)); sheet.Disc(1030, 660, 22, new SKColor(190, 168, 98)); }),
        new("fireplace", "Fireplace in the living room",
            sheet => { sheet.Room(new SKColor(206, 198, 186), new SKColor(150, 112, 74), 1000); sheet.Brick(340, 200, 920, 800,
            new SKColor(142, 74, 56), 54); sheet.Lit(560, 470, 480, 530, new SKColor(12, 12, 12), new SKColor(50, 40, 34)); sheet.Wood(300,
            150, 1000, 56, Things.Wood); }),
        new("laundry", "Laundry connections",
            sheet => { sheet.Room(new SKColor(214, 214, 208), new SKColor(168, 164, 156), 980); sheet.Fill(480, 260, 640, 240,
            new SKColor(236, 236, 232)); foreach (var x in (ReadOnlySpan<float>)[600, 900]) { sheet.Disc(x, 360, 40,
            new SKColor(176, 142, 66)); sheet.Pipe(Things.Black, 34, (x, 400), (x + 30, 700), (x + 10, 1100)); } }),
    ];
}
