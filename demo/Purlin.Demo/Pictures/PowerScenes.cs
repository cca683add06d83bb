using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class PowerScenes
{
    private static readonly string[] Left = ["15", "15", "20", "30", "15", "20", "20", "15", "15"];
    private static readonly string[] Right = ["40", "40", "30", "30", "20", "15", "15", "20", "15"];

    public static IReadOnlyList<Scene> All { get; } =
    [
        new("panel", "Panelboard with its cover off", sheet => sheet.Panel(Left, Right)),
        new("panel-neutrals", "Two neutrals under one screw",
            sheet => { sheet.Lit(0, 0, Sheet.Width, Sheet.Height, new SKColor(64, 66, 72), new SKColor(40, 42, 48)); sheet.Fill(640, 0, 220,
            Sheet.Height, new SKColor(190, 192, 190)); for (var y = 120; y < 1150; y += 190) { sheet.Disc(750, y, 62,
            new SKColor(126, 128, 126)); sheet.Line(new SKColor(60, 60, 60), 10, (712, y - 30), (788, y + 30)); sheet.Pipe(Things.White, 40,
            (690, y), (300, y + 40), (0, y + 90)); } sheet.Pipe(Things.White, 40, (690, 520), (320, 470),
            (0, 440)); sheet.Pipe(Things.White, 40, (690, 900), (320, 860), (0, 820)); }),
        new("panel-breaker", "30 A breaker on a 12 AWG wire",
            sheet => { sheet.Lit(0, 0, Sheet.Width, Sheet.Height, new SKColor(70, 74, 80),
            new SKColor(44, 46, 52)); foreach (var (y, word) in (ReadOnlySpan<(float, string)>)[(180, "20"), (480, "30"),
            (780, "15")]) { sheet.Lit(420, y, 800, 240, new SKColor(56, 56, 60), new SKColor(24, 24, 28)); sheet.Fill(720, y
            + 60, 220, 120, new SKColor(92, 92, 96)); sheet.Words(word, 500, y
            + 150, 96, Things.White); sheet.Pipe(new SKColor(28, 28, 30), 34, (420, y + 120), (180, y + 160), (0, y + 120)); } }),
        new("aluminium", "Silver-coloured wire at a receptacle",
            sheet => { sheet.Plaster(new SKColor(206, 202, 192)); sheet.Fill(480, 260, 640, 720,
            new SKColor(52, 82, 120)); sheet.Outlet(700, 440, grounded: true); sheet.Pipe(new SKColor(206, 208, 210), 24, (520, 300),
            (640, 460), (700, 500)); sheet.Pipe(new SKColor(206, 208, 210), 24, (540, 940), (640, 760), (700, 700)); sheet.Stain(700, 500,
            40, new SKColor(40, 34, 30), 30); }),
        new("kitchen-outlet", "Receptacle beside the sink",
            sheet => { sheet.Room(new SKColor(214, 208, 188), new SKColor(150, 112, 74), 900); sheet.Lit(0, 820, Sheet.Width, 90,
            new SKColor(88, 84, 82), new SKColor(60, 58, 56)); sheet.Outlet(560, 420); sheet.Shape(new SKColor(190, 194, 196), (1000, 800),
            (1400, 800), (1370, 850), (1030, 850)); sheet.Pipe(new SKColor(196, 198, 198), 36, (1190, 800), (1190, 560), (1300, 560),
            (1300, 640)); }),
        new("tester", "Receptacle tester in bedroom 3",
            sheet => { sheet.Room(new SKColor(202, 206, 204), new SKColor(150, 112, 74), 980); sheet.Outlet(700, 460,
            grounded: false); sheet.Lit(716, 480, 150, 190, new SKColor(214, 158, 40), new SKColor(180, 128, 30)); sheet.Disc(756, 560, 16,
            new SKColor(240, 220, 150)); sheet.Disc(796, 560, 16, new SKColor(90, 70, 30)); sheet.Disc(836, 560, 16,
            new SKColor(90, 70, 30)); }),
        new("alarm", "Hall ceiling, old alarm bracket",
            sheet => { sheet.Plaster(new SKColor(232, 230, 224)); sheet.Disc(800, 560, 190, new SKColor(216, 212, 200)); sheet.Disc(800,
            560, 150, new SKColor(238, 236, 230)); foreach (var x in (ReadOnlySpan<float>)[720, 880]) sheet.Disc(x, 560, 16,
            new SKColor(120, 116, 108)); sheet.Line(new SKColor(170, 40, 30), 7, (800, 600), (840, 720)); }),
        new("meter-base", "Service entrance",
            sheet => { sheet.Boards(0, 0, Sheet.Width, Sheet.Height, new SKColor(170, 160, 134)); sheet.Pipe(new SKColor(150, 152, 154),
            100, (800, 0), (800, 380)); sheet.Lit(600, 380, 400, 560, new SKColor(170, 172, 174),
            new SKColor(126, 128, 132)); sheet.Disc(800, 600, 150, new SKColor(210, 220, 224)); sheet.Disc(800, 600, 110,
            new SKColor(240, 242, 240)); }),
    ];
}
