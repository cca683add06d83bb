using SkiaSharp;

namespace Purlin.Demo.Pictures;

internal static class WaterScenes
{
    public static IReadOnlyList<Scene> All { get; } =
    [
        new("heater", "Water heater in the garage",
        sheet => { sheet.Plaster(new SKColor(202, 196, 186)); sheet.Concrete(0, 1010, Sheet.Width, 190); Connections(sheet); sheet.Tank(560,
        330, 480, 720); }),
        new("heater-joints", "Staining at the heater connections",
            sheet => { sheet.Plaster(new SKColor(196, 190, 180)); sheet.Lit(200, 860, 1200, 340, new SKColor(224, 220, 208),
            new SKColor(196, 192, 182)); sheet.Pipe(Things.Copper, 92, (520, 0), (520, 560)); sheet.Pipe(Things.Steel, 92, (520, 560),
            (520, 880)); sheet.Pipe(Things.Copper, 92, (1080, 0), (1080, 560)); sheet.Pipe(Things.Steel, 92, (1080, 560),
            (1080, 880)); sheet.Fill(448, 520, 144, 96, new SKColor(128, 122, 110)); sheet.Fill(1008, 520, 144, 96,
            new SKColor(128, 122, 110)); sheet.Stain(520, 610, 130, Things.Verdigris, 110); sheet.Stain(500, 840, 160, Things.Rust,
            120); sheet.Stain(1090, 600, 90, new SKColor(230, 228, 220), 70); }),
        new("heater-relief", "Relief valve and its pipe",
            sheet => { sheet.Plaster(new SKColor(200, 194, 184)); sheet.Tank(120, 140, 760, 1060); sheet.Fill(880, 330, 190, 90,
            new SKColor(188, 152, 72)); sheet.Pipe(Things.Copper, 60, (1030, 400), (1030, 640)); sheet.Disc(1030, 648, 26,
            Things.Black); }),
        new("heater-plate", "Water heater nameplate",
            sheet => sheet.Plate(["STORAGE WATER HEATER", "MODEL  GT-40-N", "SERIAL  0608 44127", "CAPACITY  40 GAL", "INPUT  38,000 BTU/H",
            "NATURAL GAS", "MAX PRESSURE  150 PSI", "MFD  06/2008"])),
        new("pressure", "Pressure gauge at the hose tap",
            sheet => { sheet.Boards(0, 0, Sheet.Width, Sheet.Height, new SKColor(170, 160, 134)); sheet.Fill(700, 880, 200, 180,
            new SKColor(178, 142, 66)); sheet.Gauge(800, 560, 330, 92.0 / 200, "92", "psi"); }),
        new("sink", "Under the kitchen sink",
            sheet => { Cupboard(sheet); sheet.Pipe(Things.Steel, 60, (420, 0), (420, 620), (640, 700)); sheet.Pipe(Things.White, 90,
            (900, 0), (900, 560), (1120, 640), (1120, 860), (1600, 820)); sheet.Stain(420, 620, 120, Things.Verdigris, 90); sheet.Stain(500,
            1090, 220, new SKColor(50, 36, 24), 90); }),
        new("bath", "Bathroom 2, valve at the basin",
            sheet => { Cupboard(sheet); sheet.Pipe(Things.Steel, 56, (560, 1000), (560, 520)); sheet.Disc(560, 520, 60,
            new SKColor(186, 186, 182)); sheet.Stain(560, 600, 110, new SKColor(206, 220, 210), 80); sheet.Stain(565, 680, 80, Things.Rust,
            50); }),
        new("shower", "Shower walls",
            sheet => { sheet.Plaster(new SKColor(214, 220, 220)); for (var x = 0; x < Sheet.Width; x += 200) sheet.Fill(x, 0, 6,
            Sheet.Height, new SKColor(176, 182, 182)); for (var y = 0; y < Sheet.Height; y += 200) sheet.Fill(0, y, Sheet.Width, 6,
            new SKColor(176, 182, 182)); sheet.Pipe(Things.Steel, 50, (800, 180), (900, 260)); sheet.Disc(920, 280, 80,
            new SKColor(190, 192, 190)); }),
    ];

    private static void Connections(Sheet sheet)
    {
        sheet.Pipe(Things.Copper, 44, (650, 0), (650, 340));
        sheet.Pipe(Things.Copper, 44, (950, 0), (950, 340));
        sheet.Pipe(new SKColor(170, 172, 172), 130, (800, 0), (800, 320));
        sheet.Stain(650, 300, 60, Things.Rust, 50);
    }

    private static void Cupboard(Sheet sheet)
    {
        sheet.Lit(0, 0, Sheet.Width, Sheet.Height, new SKColor(126, 106, 84), new SKColor(78, 64, 50));
        sheet.Wood(0, 1010, Sheet.Width, 190, new SKColor(166, 132, 92));
        sheet.Fill(0, 0, 70, Sheet.Height, new SKColor(190, 158, 116));
        sheet.Fill(1530, 0, 70, Sheet.Height, new SKColor(190, 158, 116));
    }
}
