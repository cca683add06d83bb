using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>A room: its plan with the four walls folded out, feet to the plan. The corners stay free for pins.</summary>
internal static class RoomFrame
{
    private static readonly Box Plan = new(104, 112, 182, 252);
    private const double Wall = 84;

    public static Frame For(string kind) => new()
    {
        Behind = Walls(),
        Slots = Frame.Read(Walled + (kind switch
        {
            PlaceKind.Bathroom => Bath,
            PlaceKind.Kitchen => Kitchen,
            PlaceKind.Laundry => Laundry,
            PlaceKind.Bedroom => Bedroom,
            PlaceKind.Hall => Hall,
            _ => Living,
        })),
        Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
        {
            ["wall"] = Surface.Of(new Box(20, 112, Wall, 252), new Spot(62, 352)),
            ["ceiling"] = Surface.Of(new Box(104, 28, 182, 22), new Spot(195, 44)),
            ["floor covering"] = Surface.Of(new Box(112, 292, 100, 66), new Spot(158, 350)),
            ["floor"] = Surface.Of(new Box(112, 226, 100, 60), new Spot(158, 280)),
        },
    };

    // Left wall, rear wall (top), right wall, hall wall (bottom): what every room may have.
    private const string Walled = """
        interior door: _120 364 44 78
        switch: 176 388 16 24
        receptacle: 334 330 26 20; 30 128 26 20; 120 64 26 20; 236 412 26 20
        branch wiring: 30 300 40 28
        window: 212 44 60 56; 140 52 56 48; 304 180 56 50
        luminaire: ^176 132 36 30
        thermostat: 214 396 24 24
        duct: 228 344 54 16; 112 344 54 16
        moisture: 48 250 22 32
        smoke alarm: ^226 128 34 34
        carbon monoxide alarm: ^226 176 34 34
        room heater: 30 176 60 20
        ceiling fan: ^165 190 60 60
        skylight: ^120 128 40 40
        attic: ^150 186 44 32
        """ + "\n";

    private const string Bath = """
        tub and shower: 108 116 174 78
        toilet: 222 214 60 50
        sink: 238 290 46 72
        cabinet and counter: 300 286 52 60
        bath fan: ^146 206 42 42
        window: 212 40 56 50
        receptacle: 304 354 26 20
        luminaire: 356 300 12 44
        supply piping: 30 128 30 58
        drain: 30 200 34 46
        """ + "\n";

    private const string Kitchen = """
        cabinet and counter: 238 116 46 244
        sink: 238 150 44 66
        drain: 304 160 30 42
        supply piping: 340 150 24 62
        disposer: 206 170 26 30
        dishwasher: 238 222 44 46
        range: 238 290 44 58
        range hood: 302 296 56 38
        gas piping: 344 238 20 54
        refrigerator: 108 116 56 56
        microwave: 302 254 40 26
        receptacle: 306 128 26 20; 344 128 22 18; 30 150 26 20; 236 412 26 20
        window: 180 42 64 56; 30 220 56 48
        exterior door: _24 288 44 74
        """ + "\n";

    private const string Laundry = """
        laundry hookup: 112 116 58 66
        dryer duct: 176 112 58 76
        supply piping: 116 50 26 56
        drain: 150 56 30 46
        receptacle: 190 76 26 20; 334 330 26 20
        gas piping: 222 40 18 66
        sink: 238 230 46 60
        water heater: _238 296 40 64
        panelboard: 310 180 36 54
        window: 30 180 56 50
        bath fan: ^146 206 42 42
        cabinet and counter: 300 286 40 60
        """ + "\n";

    private const string Bedroom = """
        ceiling fan: ^140 190 60 60
        window: 212 44 60 56; 24 200 60 54
        """ + "\n";

    private const string Living = """
        fireplace: 300 180 64 76
        wood stove: 300 150 50 80
        exterior door: _216 364 44 80
        window: 120 44 60 56; 210 44 60 56; 24 190 60 54
        smoke alarm: ^226 286 34 34
        stairs: 24 128 60 40
        """ + "\n";

    private const string Hall = """
        exterior door: _120 30 44 80
        smoke alarm: ^150 140 34 34
        carbon monoxide alarm: ^196 140 34 34
        attic: ^172 198 44 32
        air filter: 306 180 22 44
        panelboard: 306 240 40 60
        guard: 24 200 76 34
        interior door: _120 364 44 78; _210 364 44 78
        thermostat: 340 180 24 24
        """ + "\n";

    private static ImmutableArray<Mark> Walls()
    {
        Box[] walls = [new(Plan.X, Plan.Y - Wall, Plan.Width, Wall), new(Plan.X, Plan.Bottom, Plan.Width, Wall), new(Plan.X - Wall, Plan.Y, Wall, Plan.Height), new(Plan.Right, Plan.Y, Wall, Plan.Height)];
        return
        [
            .. walls.Select(wall => new Mark.Stroke(Trace.Around(wall), LineClass.Beyond, Ink.Line)),
            new Mark.Stroke(Trace.Around(Plan), LineClass.Heavy, Ink.Line),
            new Mark.Lettering("far wall", new Spot(195, 22), 12) { Ink = Ink.Quiet },
            new Mark.Lettering("door wall", new Spot(195, 464), 12) { Ink = Ink.Quiet },
        ];
    }
}
