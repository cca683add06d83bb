using System.Collections.Immutable;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>Places that are drawn from above: the roof and the site.</summary>
internal static class PlanFrames
{
    private static readonly Box Footprint = new(54, 96, 282, 260);

    /// <summary>The roof with its planes; gutters are the second line round it.</summary>
    public static Frame Roof(string? form)
    {
        var (ridges, planes) = Planes(form);
        return new Frame
        {
            Behind =
            [
                new Mark.Area(Trace.Around(Footprint), Ink.Paper),
                new Mark.Stroke(Trace.Around(Footprint), LineClass.Cut, Ink.Line),
                new Mark.Stroke(ridges, LineClass.Beyond, Ink.Line),
                .. planes.SelectMany(Slope),
                .. North(new Spot(362, 44)),
            ],
            Slots = Frame.Read("""
                gutter: 44 352 302 14; 44 86 302 14
                downspout: 40 344 18 26; 332 344 18 26; 40 84 18 26; 332 84 18 26
                chimney: 246 186 34 44
                drain: 120 176 26 30; 286 286 26 30
                vent: 206 150 26 34
                attic ventilation: 168 214 44 22
                skylight: 92 270 40 40
                flashing: 236 226 54 22
                eave: 54 366 282 8
                service: 64 116 24 60
                vegetation: _2 366 66 60
                outdoor unit: 190 280 44 40
                """),
            Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal) { ["roof covering"] = Surface.Of(Footprint, new Spot(195, 336)) },
        };
    }

    /// <summary>The ground with the house in the middle.</summary>
    public static Frame Site()
    {
        var house = new Box(128, 158, 134, 124);
        return new Frame
        {
            Behind =
            [
                new Mark.Stroke(Trace.Around(new Box(10, 24, 370, 420)), LineClass.Shift, Ink.Faint),
                new Mark.Area(Trace.Around(house), Ink.Wash),
                new Mark.Stroke(Hatching.Lines(house.Corners, 45, 9), LineClass.Fine, Ink.Faint),
                new Mark.Stroke(Trace.Around(house), LineClass.Heavy, Ink.Line),
                new Mark.Lettering("house", house.Centre, 14) { Halo = true, Ink = Ink.Quiet },
                new Mark.Lettering("street", new Spot(195, 466), 12) { Ink = Ink.Quiet },
                .. North(new Spot(358, 56)),
            ],
            Slots = Frame.Read("""
                driveway: 262 282 72 160
                walk: 180 286 28 154
                exterior steps: 172 280 44 20
                patio: 136 98 116 56
                deck: 136 98 116 56
                retaining wall: 24 118 90 16
                fence: 24 40 300 12
                pool: 250 60 90 50
                vegetation: 34 150 60 54; 296 200 60 54; 70 300 60 54
                septic system: 40 66 74 42
                well: 300 130 36 36
                surface drain: 110 292 28 28
                irrigation: 44 380 40 34
                outbuilding: 24 230 60 50
                drain: 212 386 26 40
                gas piping: 266 170 20 66
                fuel tank: 270 240 60 40
                house number: 212 300 30 18
                supply piping: 144 390 24 50
                hose faucet: 104 240 24 22
                """),
            Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
            {
                ["grading"] = Surface.Of(new Box(96, 126, 198, 188), new Spot(84, 340)),
                ["grounds"] = Surface.Of(new Box(10, 24, 370, 420), new Spot(60, 436)),
                ["foundation"] = Surface.Of(house, new Spot(195, 330)),
            },
        };
    }

    private static (Trace Ridges, (Spot From, Spot To)[] Slopes) Planes(string? form)
    {
        double x = Footprint.X, r = Footprint.Right, y = Footprint.Y, b = Footprint.Bottom, m = Footprint.Centre.Y, h = Footprint.Height / 2;
        return form switch
        {
            "flat" => (Trace.Around(Footprint.Inset(8)), [(new(150, m), new(240, m))]),
            "shed" => (new Trace([]), [(new(195, y + 40), new(195, b - 40))]),
            "hip" => (Trace.Between(x, y, x + h, m).With(Trace.Between(x, b, x + h, m)).With(Trace.Between(r, y, r - h, m)).With(Trace.Between(r, b, r - h, m)).With(Trace.Between(x + h, m, r - h, m)),
                [(new(195, m - 24), new(195, y + 30)), (new(195, m + 24), new(195, b - 30)), (new(x + 86, m), new(x + 24, m)), (new(r - 86, m), new(r - 24, m))]),
            _ => (Trace.Between(x, m, r, m), [(new(110, m - 24), new(110, y + 30)), (new(110, m + 24), new(110, b - 30))]),
        };
    }

    /// <summary>An arrow down the slope.</summary>
    private static IEnumerable<Mark> Slope((Spot From, Spot To) slope)
    {
        double across = slope.To.X - slope.From.X, down = slope.To.Y - slope.From.Y, length = Math.Sqrt((across * across) + (down * down));
        double ux = across / length, uy = down / length;
        Spot left = new(slope.To.X - (ux * 9) - (uy * 5), slope.To.Y - (uy * 9) + (ux * 5)), right = new(slope.To.X - (ux * 9) + (uy * 5), slope.To.Y - (uy * 9) - (ux * 5));
        yield return new Mark.Stroke(Trace.Through(slope.From, slope.To).With(Trace.Through(left, slope.To, right)), LineClass.Fine, Ink.Hatch);
    }

    private static ImmutableArray<Mark> North(Spot at) =>
    [
        new Mark.Stroke(Trace.Circle(at.X, at.Y, 13), LineClass.Fine, Ink.Hatch),
        new Mark.Area(Trace.Polygon([new(at.X, at.Y - 11), new(at.X + 4, at.Y + 6), new(at.X - 4, at.Y + 6)]), Ink.Hatch),
        new Mark.Lettering("N", new Spot(at.X, at.Y - 17), 11) { Ink = Ink.Quiet },
    ];
}
