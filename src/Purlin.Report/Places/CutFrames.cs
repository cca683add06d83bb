using System.Collections.Immutable;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>Places that are drawn in section: attic, crawl space, deck, stairs.</summary>
internal static class CutFrames
{
    private static readonly Spot[] Rafters = [new(14, 330), new(195, 70), new(376, 330)];

    /// <summary>An attic: rafters and roof boards cut, joists and insulation below.</summary>
    public static Frame Attic() => new()
    {
        Behind =
        [
            new Mark.Stroke(Trace.Through(Rafters), LineClass.Heavy, Ink.Line),
            new Mark.Stroke(Trace.Through(new Spot(34, 330), new Spot(195, 98), new Spot(356, 330)), LineClass.Beyond, Ink.Line),
            new Mark.Stroke(Trace.Between(195, 98, 195, 330).With(Trace.Between(115, 214, 275, 214)), LineClass.Fine, Ink.Faint),
            new Mark.Stroke(Hatching.Insulation(new Box(40, 338, 310, 26), 16), LineClass.Fine, Ink.Hatch),
            .. Enumerable.Range(0, 7).Select(index => new Mark.Stroke(Hatching.WoodEnd(new Box(34 + (index * 52), 336, 12, 30)), LineClass.Fine, Ink.Line)),
            new Mark.Stroke(Trace.Between(6, 368, 384, 368), LineClass.Cut, Ink.Line),
            new Mark.Stroke(Trace.Between(6, 374, 384, 374), LineClass.Beyond, Ink.Line),
        ],
        Slots = Frame.Read("""
            furnace: 206 270 110 56
            air handler: 206 270 110 56
            indoor coil: 170 284 40 40
            duct: 206 236 120 30
            condensate drain: 318 270 22 54
            vent: 236 110 80 120
            drain: 116 190 34 140
            chimney: _150 120 34 210
            bath fan: 70 306 32 30
            branch wiring: 96 304 44 28
            attic ventilation: 20 298 40 26; 178 76 36 22
            attic: 250 368 52 34
            pests: 140 306 40 24
            luminaire: 200 110 30 26
            skylight: 276 190 36 36
            water heater: _210 262 34 66
            range hood: 300 300 30 24
            moisture: 322 300 18 28
            wood-destroying insects: 60 278 20 34
            gas piping: 330 250 20 80
            receptacle: 182 300 22 18
            """),
        Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
        {
            ["roof deck"] = new([new(14, 330), new(195, 70), new(376, 330), new(366, 330), new(195, 84), new(24, 330)], new(76, 150)),
            ["roof framing"] = new([new(34, 330), new(195, 98), new(356, 330)], new(314, 150)),
            ["insulation"] = Surface.Of(new Box(20, 334, 350, 32), new Spot(120, 396)),
            ["framing"] = Surface.Of(new Box(20, 366, 350, 10), new Spot(330, 396)),
            ["roof covering"] = new([new(0, 330), new(195, 50), new(390, 330), new(376, 330), new(195, 70), new(14, 330)], new(195, 44)),
        },
    };

    /// <summary>A crawl space: joists and batts above, posts and piers, the ground sheet, foundation walls.</summary>
    public static Frame Crawl() => new()
    {
        Behind =
        [
            new Mark.Area(Trace.Around(new Box(0, 66, 390, 10)), Ink.Wash),
            new Mark.Stroke(Trace.Between(0, 66, 390, 66).With(Trace.Between(0, 76, 390, 76)), LineClass.Cut, Ink.Line),
            .. Enumerable.Range(0, 6).SelectMany(index => (Mark[])
            [
                new Mark.Stroke(Hatching.WoodEnd(new Box(40 + (index * 60), 76, 14, 38)), LineClass.Fine, Ink.Line),
                new Mark.Stroke(Hatching.Insulation(new Box(56 + (index * 60), 82, 42, 22), 14), LineClass.Fine, Ink.Hatch),
            ]),
            .. Wall(new Box(0, 76, 26, 300)), .. Wall(new Box(364, 76, 26, 300)),
            new Mark.Stroke(Trace.Between(26, 362, 364, 362), LineClass.Heavy, Ink.Line),
            new Mark.Stroke(Hatching.Earth(new Box(0, 378, 390, 44).Corners), LineClass.Fine, Ink.Faint),
        ],
        Slots = Frame.Read("""
            pier: _84 242 40 120; _268 242 40 120
            post: _188 132 14 230
            beam: 60 116 270 16
            drain: 206 124 54 80
            supply piping: 134 116 34 130
            duct: 216 206 130 34
            gas piping: 316 130 28 90
            branch wiring: 42 134 44 30
            insulation: 112 86 44 40
            wood-destroying insects: 30 250 24 44
            pests: 140 336 40 24
            moisture: 320 330 22 30
            water heater: _310 270 40 92
            furnace: _310 250 50 112
            sump pump: _216 340 44 50
            tub and shower: 250 24 90 38
            condensate drain: 300 270 20 86
            grounding: 30 330 24 26
            """),
        Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
        {
            ["framing"] = Surface.Of(new Box(26, 76, 338, 40), new Spot(330, 58)),
            ["floor"] = Surface.Of(new Box(0, 50, 390, 16), new Spot(60, 58)),
            ["foundation"] = Surface.Of(new Box(0, 76, 26, 300), new Spot(60, 232)),
            ["crawl space"] = Surface.Of(new Box(26, 300, 338, 62), new Spot(195, 396)),
        },
    };

    /// <summary>A deck: the house at the left, ledger, joists, posts and footings, guard and stairs.</summary>
    public static Frame Deck() => new()
    {
        Behind =
        [
            new Mark.Area(Trace.Around(new Box(0, 40, 44, 360)), Ink.Wash),
            new Mark.Stroke(Trace.Between(44, 40, 44, 400), LineClass.Heavy, Ink.Line),
            new Mark.Stroke(Hatching.WoodEnd(new Box(44, 190, 14, 30)), LineClass.Beyond, Ink.Line),
            .. Wood(new Box(44, 180, 236, 9)), .. Wood(new Box(58, 190, 222, 28)), .. Wood(new Box(210, 218, 60, 24)),
            .. Wood(new Box(232, 242, 18, 144)), .. Wall(new Box(220, 386, 42, 26)),
            new Mark.Stroke(Trace.Between(0, 400, 390, 400), LineClass.Heavy, Ink.Line),
            new Mark.Stroke(Hatching.Earth(new Box(0, 402, 390, 36).Corners), LineClass.Fine, Ink.Faint),
        ],
        Slots = Frame.Read("""
            guard: _62 116 214 64
            stairs: _280 184 100 216
            handrail: _284 128 98 180
            receptacle: 14 150 26 20
            luminaire: 8 84 34 28
            exterior door: _4 104 34 76
            wood-destroying insects: 256 320 22 44
            pier: _60 300 34 100
            porch: _62 46 214 134
            """),
        Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
        {
            ["deck"] = Surface.Of(new Box(44, 180, 236, 62), new Spot(140, 262)),
            ["flashing"] = Surface.Of(new Box(40, 168, 26, 16), new Spot(84, 172)),
            ["framing"] = Surface.Of(new Box(226, 242, 30, 150), new Spot(196, 330)),
        },
    };

    /// <summary>Stairs inside, in section.</summary>
    public static Frame Stairs()
    {
        Spot[] steps = [new(40, 400), .. Enumerable.Range(0, 9).SelectMany(step => (Spot[])[new(60 + (step * 30), 400 - (step * 28)), new(60 + (step * 30), 372 - (step * 28))]), new(370, 148)];
        return new()
        {
            Behind =
            [
                new Mark.Stroke(Trace.Through(new Spot(64, 404), new Spot(334, 152)), LineClass.Beyond, Ink.Hatch),
                new Mark.Stroke(Trace.Between(0, 404, 390, 404), LineClass.Heavy, Ink.Line),
                new Mark.Stroke(Trace.Between(0, 60, 210, 60).With(Trace.Between(0, 70, 210, 70)).With(Trace.Between(210, 60, 210, 70)), LineClass.Cut, Ink.Line),
            ],
            Slots = Frame.Read("""
                handrail: 60 96 280 240
                guard: _250 66 110 80
                luminaire: 100 74 36 30
                switch: 30 330 16 24
                window: 60 120 60 56
                smoke alarm: ^150 76 30 30
                interior door: _330 326 40 78
                """),
            Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
            {
                ["stairs"] = new([.. steps, new(370, 404)], new(250, 380)),
                ["wall"] = Surface.Of(new Box(0, 80, 60, 240), new Spot(40, 260)),
                ["ceiling"] = Surface.Of(new Box(0, 56, 210, 18), new Spot(60, 50)),
            },
            Over = [new Mark.Stroke(Trace.Through(steps), LineClass.Cut, Ink.Line)],
        };
    }

    private static ImmutableArray<Mark> Wall(Box box) =>
        [new Mark.Area(Trace.Around(box), Ink.Wash), new Mark.Stroke(Hatching.Concrete(box.Corners), LineClass.Fine, Ink.Hatch), new Mark.Stroke(Trace.Around(box), LineClass.Cut, Ink.Line)];

    private static ImmutableArray<Mark> Wood(Box box) =>
        [new Mark.Area(Trace.Around(box), Ink.Paper), new Mark.Stroke(Hatching.WoodGrain(box), LineClass.Fine, Ink.Faint), new Mark.Stroke(Trace.Around(box), LineClass.Beyond, Ink.Line)];
}
