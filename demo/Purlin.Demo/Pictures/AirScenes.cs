using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class AirScenes
{
    public static IReadOnlyList<Scene> All { get; } =
    [
        new("furnace", "Furnace in the closet",
        sheet => { sheet.Plaster(new SKColor(190, 186, 178)); sheet.Lit(480, 220, 640, 900, new SKColor(176, 178, 182),
        new SKColor(126, 128, 134)); sheet.Duct((800, 0), (800, 230)); sheet.Fill(520, 640, 560, 12,
        new SKColor(90, 92, 96)); sheet.Pipe(Things.Black, 34, (1120, 860), (1380, 860),
        (1380, 1200)); sheet.Pipe(new SKColor(188, 190, 190), 90, (1000, 230), (1000, 0)); }),
        new("furnace-plate", "Furnace nameplate",
            sheet => sheet.Plate(["GAS FURNACE  CATEGORY I", "MODEL  FU-080-12", "SERIAL  9911 20736", "INPUT  80,000 BTU/H",
            "OUTPUT  64,000 BTU/H", "TEMP RISE  40 - 70 °F", "115 V  60 HZ  1 PH", "MFD  11/1999"])),
        new("filter", "Return filter",
            sheet => { sheet.Plaster(new SKColor(196, 192, 184)); sheet.Fill(260, 240, 1080, 720,
            new SKColor(150, 132, 104)); sheet.Lit(310, 290, 980, 620, new SKColor(112, 106, 98),
            new SKColor(86, 82, 76)); for (var x = 330; x < 1280; x += 46) sheet.Fill(x, 296, 12, 608,
            new SKColor(70, 66, 60)); for (var blot = 0; blot < 12; blot++) sheet.Stain(sheet.Between(340, 1260), sheet.Between(320, 880),
            90, new SKColor(58, 54, 50), 30); }),
        new("outdoor-unit", "Outdoor unit",
            sheet => { sheet.Boards(0, 0, Sheet.Width, 860, new SKColor(170, 160, 134)); sheet.Grass(860, 340); sheet.Concrete(380, 900,
            860, 80); sheet.Lit(430, 300, 760, 600, new SKColor(170, 172, 168),
            new SKColor(120, 122, 120)); for (var y = 350; y < 860; y += 26) sheet.Fill(460, y, 700, 12,
            new SKColor(72, 76, 76)); sheet.Pipe(Things.Copper, 24, (1190, 760), (1330, 760),
            (1330, 420)); sheet.Pipe(new SKColor(30, 30, 32), 54, (1190, 700), (1390, 700), (1390, 420)); sheet.Stain(1300, 700, 60,
            new SKColor(190, 186, 176), 30); }),
        new("outdoor-plate", "Outdoor unit nameplate",
            sheet => sheet.Plate(["SPLIT SYSTEM  COOLING", "MODEL  CU-036-B", "SERIAL  0508 61190", "REFRIGERANT  R-22   96 OZ",
            "208/230 V  60 HZ  1 PH", "MIN CIRCUIT AMPS  18.6", "MAX FUSE OR BREAKER  30", "MFD  05/2008"])),
        new("probe", "Supply air, probe at the plenum",
            sheet => { sheet.Lit(0, 0, Sheet.Width, Sheet.Height, new SKColor(168, 170, 172),
            new SKColor(118, 120, 124)); sheet.Pipe(new SKColor(40, 40, 44), 18, (0, 500), (640, 560)); sheet.Meter(900, 320, "64.0",
            "°F"); }),
        new("flue", "Flue connector at the water heater",
            sheet => { sheet.Plaster(new SKColor(196, 190, 180)); sheet.Pipe(new SKColor(168, 170, 172), 150, (420, 1200), (420, 640),
            (900, 560), (1600, 540)); sheet.Stain(430, 660, 120, Things.Rust, 70); sheet.Shape(Things.Black, (352, 626), (500, 610),
            (500, 628), (352, 646)); }),
    ];
}
