using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class BelowScenes
{
    public static IReadOnlyList<Scene> All { get; } =
    [
        new("crawl", "Crawl space from the hatch",
        sheet => { Space(sheet); sheet.Shape(new SKColor(42, 42, 46, 210), (0, 900), (900, 880), (1080, 1150), (0, 1150)); }),
        new("crawl-post", "Post at the middle girder",
            sheet => { Space(sheet); sheet.Wood(0, 330, Sheet.Width, 150, Sheet.Shade(Things.Wood, 0.75)); sheet.Wood(720, 480, 150, 420,
            Sheet.Shade(Things.Wood, 0.8), upright: true); sheet.Shape(new SKColor(140, 136, 128), (650, 890), (960, 930), (940, 1010),
            (630, 970)); sheet.Fill(716, 470, 160, 14, Things.Black); }),
        new("crawl-joist", "Joist end at the rear wall",
            sheet => { Space(sheet); sheet.Wood(300, 120, 1000, 210, new SKColor(142, 104, 66)); sheet.Stain(420, 240, 240,
            new SKColor(40, 28, 18), 120); sheet.Crack(new SKColor(30, 22, 14), 6, (320, 210), (780, 250), 14); }),
        new("crawl-wet", "Wet soil along the rear wall",
            sheet => { Space(sheet); sheet.Concrete(0, 420, Sheet.Width, 330); sheet.Stain(800, 760, 420, new SKColor(16, 20, 26),
            160); for (var white = 0; white < 5; white++) sheet.Stain(sheet.Between(100, 1500), 640, 110, new SKColor(226, 224, 216),
            40); }),
        new("crawl-corner", "North-east corner, too low to enter",
            sheet => { Space(sheet); sheet.Shape(new SKColor(60, 46, 34), (400, 360), (1600, 300), (1600, 1200), (200, 1200)); sheet.Lit(0,
            0, Sheet.Width, Sheet.Height, new SKColor(0, 0, 0, 20), new SKColor(0, 0, 0, 150), sideways: true); }),
        new("crawl-pipe", "Steel to copper joint in the crawl space",
            sheet => { Space(sheet); sheet.Pipe(Things.Steel, 70, (0, 520), (800, 540)); sheet.Pipe(Things.Copper, 54, (860, 540),
            (1600, 520)); sheet.Fill(780, 490, 120, 100, new SKColor(122, 116, 104)); sheet.Stain(830, 560, 120, Things.Verdigris,
            80); sheet.Stain(760, 600, 110, Things.Rust, 70); }),
    ];

    private static void Space(Sheet sheet)
    {
        sheet.Wood(0, 0, Sheet.Width, 420, Sheet.Shade(Things.Wood, 0.55));
        for (var x = 40f; x < Sheet.Width; x += 260) sheet.Wood(x, 0, 70, 360, Sheet.Shade(Things.Wood, 0.7), upright: true);
        sheet.Lit(0, 360, Sheet.Width, 400, new SKColor(40, 36, 32), new SKColor(72, 60, 48));
        sheet.Soil(740, 460);
    }
}
