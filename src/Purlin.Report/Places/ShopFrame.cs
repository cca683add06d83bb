using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>Where equipment stands: mechanical room, basement, garage. A floor line, joists above, the back wall.</summary>
internal static class ShopFrame
{
    private const double Floor = 410;

    public static Frame For(string kind) => new()
    {
        Behind = [.. Joists(), .. Slab(), .. kind == PlaceKind.Basement ? EarthWalls() : []],
        Slots = Frame.Read(kind == PlaceKind.Garage ? Garage : kind == PlaceKind.Basement ? Basement : Mechanical),
        Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
        {
            ["slab"] = Surface.Of(new Box(0, Floor, 390, 16), new Spot(40, Floor + 44)),
            ["framing"] = Surface.Of(new Box(0, 34, 390, 34), new Spot(330, 86)),
            ["foundation"] = Surface.Of(new Box(0, 74, 22, Floor - 74), new Spot(44, 100)),
            ["ceiling"] = Surface.Of(new Box(0, 34, 390, 34), new Spot(330, 86)),
            ["garage"] = Surface.Of(new Box(200, 80, 180, 70), new Spot(292, 100)),
            ["basement"] = Surface.Of(new Box(24, 320, 70, 80), new Spot(60, 396)),
            ["wall"] = Surface.Of(new Box(0, 100, 30, 200), new Spot(30, 300)),
        },
    };

    private const string Mechanical = """
        furnace: _78 244 74 166
        air handler: _78 244 74 166
        indoor coil: 76 192 78 52
        duct: 48 96 150 40
        air filter: 62 340 14 64
        humidifier: 30 196 34 44
        vent: 156 110 180 140
        water heater: _222 226 78 184
        tankless water heater: 226 190 56 80
        boiler: _222 300 84 110
        gas piping: 330 80 50 330
        supply piping: 236 76 54 146
        combustion air: 20 96 44 34
        condensate drain: 162 256 34 150
        drain: 172 398 24 22
        panelboard: 310 140 54 84
        service: 20 260 34 140
        switch: 166 214 20 28
        sump pump: _16 364 44 62
        radon: 6 100 26 300
        """;

    private const string Basement = """
        furnace: _70 252 70 158
        indoor coil: 66 200 78 52
        duct: 60 84 150 34
        air filter: 56 346 13 60
        humidifier: 28 206 34 40
        vent: 146 120 120 130
        water heater: _176 250 62 160
        boiler: _176 304 76 106
        gas piping: 240 84 34 326
        supply piping: 186 84 44 160
        drain: 150 330 34 76
        panelboard: 286 120 52 78
        service: 344 76 36 150
        grounding: 344 236 26 32
        branch wiring: 290 84 44 30
        post: _262 72 12 338
        stairs: _280 250 100 160
        handrail: _288 214 90 120
        sump pump: _24 372 44 56
        sewage ejector: _100 380 1 1
        laundry hookup: _236 344 44 66
        window: 24 84 40 30
        combustion air: 26 130 40 30
        radon: 26 160 18 110
        fuel tank: _282 360 96 50
        receptacle: 300 206 24 18
        smoke alarm: ^220 72 28 28
        moisture: 30 330 22 32
        wood-destroying insects: 24 60 20 34
        """;

    private const string Garage = """
        garage door: _28 170 190 240
        exterior door: _232 292 50 118
        water heater: _300 236 56 150
        furnace: _300 240 56 150
        vent: 320 100 62 130
        panelboard: 236 150 48 76
        receptacle: 236 240 26 20; 30 140 26 20
        branch wiring: 240 106 44 30
        gas piping: 360 200 24 200
        supply piping: 318 140 24 90
        duct: 220 78 150 26
        luminaire: ^96 76 36 26
        attic: ^30 72 52 30
        laundry hookup: _290 344 50 66
        air filter: 290 350 10 36
        smoke alarm: ^150 74 26 26
        stairs: _226 386 60 24
        moisture: 12 360 20 30
        """;

    private static ImmutableArray<Mark> Joists()
    {
        var deck = new Box(0, 34, 390, 10);
        return
        [
            new Mark.Area(Trace.Around(deck), Ink.Wash),
            new Mark.Stroke(Trace.Between(0, 34, 390, 34).With(Trace.Between(0, 44, 390, 44)), LineClass.Cut, Ink.Line),
            .. Enumerable.Range(0, 7).Select(index => new Mark.Stroke(Hatching.WoodEnd(new Box(10 + (index * 60), 44, 14, 22)), LineClass.Fine, Ink.Line)),
        ];
    }

    private static ImmutableArray<Mark> Slab()
    {
        var slab = new Box(0, Floor, 390, 14);
        return
        [
            new Mark.Area(Trace.Around(slab), Ink.Wash),
            new Mark.Stroke(Hatching.Concrete(slab.Corners), LineClass.Fine, Ink.Hatch),
            new Mark.Stroke(Trace.Between(0, Floor, 390, Floor), LineClass.Heavy, Ink.Line),
            new Mark.Stroke(Trace.Between(0, Floor + 14, 390, Floor + 14), LineClass.Beyond, Ink.Line),
            new Mark.Stroke(Hatching.Earth(new Box(0, Floor + 16, 390, 20).Corners), LineClass.Fine, Ink.Faint),
        ];
    }

    private static ImmutableArray<Mark> EarthWalls()
    {
        var wall = new Box(0, 44, 22, Floor - 44);
        return [new Mark.Area(Trace.Around(wall), Ink.Wash), new Mark.Stroke(Hatching.Concrete(wall.Corners), LineClass.Fine, Ink.Hatch), new Mark.Stroke(Trace.Around(wall), LineClass.Cut, Ink.Line)];
    }
}
