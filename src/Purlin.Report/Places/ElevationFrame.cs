using System.Collections.Immutable;
using System.Globalization;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>A side of the house as an elevation: a body of so many stories on its foundation, the roof beyond, the ground before it.</summary>
internal static class ElevationFrame
{
    private const double Ground = 404;
    private const double Story = 84;
    private const double Left = 58;
    private const double Right = 332;
    private const double Foot = 14;

    public static Frame For(PlaceFrameFacts facts)
    {
        var eave = Ground - Foot - (Story * Math.Clamp(facts.Stories, 1, 3)) - 8;
        var body = new Box(Left, eave, Right - Left, Ground - Foot - eave);
        return new Frame
        {
            Behind = [.. Roof(facts.RoofForm, eave), .. Body(body)],
            Over = [new Mark.Stroke(Trace.Between(6, Ground, 384, Ground), LineClass.Heavy, Ink.Line), new Mark.Stroke(Hatching.Earth(new Box(10, Ground, 370, 34).Corners), LineClass.Fine, Ink.Faint)],
            Slots = Frame.Read(Slots(eave)),
            Surfaces = new Dictionary<string, Surface>(StringComparer.Ordinal)
            {
                ["siding"] = Surface.Of(body, new Spot(body.Centre.X - 20, eave + 22)),
                ["foundation"] = Surface.Of(new Box(Left, Ground - Foot, body.Width, Foot), new Spot(195, Ground + 52)),
                ["grading"] = Surface.Of(new Box(6, Ground, 378, 38), new Spot(60, Ground + 52)),
                ["roof covering"] = new([new(Left - 14, eave), new(Right + 14, eave), new(Right - 60, eave - 56), new(Left + 60, eave - 56)], new Spot(195, eave - 26)),
                ["trim"] = Surface.Of(new Box(Right - 16, eave, 16, body.Height), new Spot(360, eave + 30)),
            },
        };
    }

    private static string Slots(double eave)
    {
        string At(double value) => value.ToString(CultureInfo.InvariantCulture);
        var low = Ground - Foot - Story;
        return $"""
            window: 92 {At(low + 14)} 56 50; 262 {At(low + 14)} 52 50; 92 {At(eave + 34)} 56 50; 262 {At(eave + 34)} 52 50; 178 {At(eave + 34)} 50 46
            exterior door: _172 {At(Ground - Foot - 76)} 42 76
            exterior steps: _166 {At(Ground - 26)} 66 26
            porch: _150 {At(Ground - 112)} 96 112
            handrail: _226 {At(Ground - 46)} 30 46
            guard: _240 {At(Ground - 40)} 60 40
            deck: _236 {At(Ground - 66)} 92 66
            balcony: 160 {At(eave + 50)} 80 32
            garage door: _236 {At(Ground - 80)} 92 78
            luminaire: 220 {At(Ground - 96)} 22 20
            receptacle: 226 {At(Ground - 50)} 22 16
            hose faucet: 126 {At(Ground - 44)} 28 24
            house number: 220 {At(Ground - 70)} 26 16
            outdoor unit: _296 {At(Ground - 50)} 52 50
            heat pump: _296 {At(Ground - 50)} 52 50
            service: 256 {At(eave + 6)} 30 {At(Ground - eave - 50)}
            panelboard: 234 {At(Ground - 112)} 34 52
            grounding: 276 {At(Ground - 30)} 22 28
            gas piping: 66 {At(Ground - 74)} 26 72
            chimney: _274 {At(eave - 88)} 32 88
            downspout: 66 {At(eave + 8)} 18 {At(Ground - eave - 6)}; 314 {At(eave + 8)} 18 {At(Ground - eave - 6)}
            gutter: 38 {At(eave - 2)} 314 12
            eave: 38 {At(eave + 12)} 314 8
            vegetation: _4 {At(Ground - 46)} 50 46; _336 {At(Ground - 46)} 50 46
            window well: 96 {At(Ground - 12)} 44 22
            attic ventilation: 178 {At(eave - 36)} 38 22
            wood-destroying insects: 70 {At(Ground - 52)} 22 40
            supply piping: 128 {At(Ground - 84)} 22 40
            fuel tank: _4 {At(Ground - 50)} 74 50
            """;
    }

    private static ImmutableArray<Mark> Body(Box body)
    {
        var strip = new Box(body.X, body.Bottom, body.Width, Foot);
        return
        [
            new Mark.Area(Trace.Around(body), Ink.Paper),
            new Mark.Stroke(Trace.Around(body), LineClass.Cut, Ink.Line),
            new Mark.Area(Trace.Around(strip), Ink.Paper),
            new Mark.Stroke(Hatching.Concrete(strip.Corners), LineClass.Fine, Ink.Hatch),
            new Mark.Stroke(Trace.Around(strip), LineClass.Beyond, Ink.Line),
        ];
    }

    private static ImmutableArray<Mark> Roof(string? form, double eave)
    {
        double left = Left - 18, right = Right + 18, top = eave - 70;
        Spot[] outline = form switch
        {
            "flat" => [new(left + 12, eave - 14), new(right - 12, eave - 14), new(right - 12, eave), new(left + 12, eave)],
            "hip" => [new(left, eave), new(left + 78, top), new(right - 78, top), new(right, eave)],
            "shed" => [new(left, eave), new(left, eave - 22), new(right, top), new(right, eave)],
            "gambrel" => [new(left, eave), new(left + 34, eave - 48), new(195, top), new(right - 34, eave - 48), new(right, eave)],
            _ => [new(left, eave), new(195, top), new(right, eave)],
        };
        var courses = Trace.Join(Enumerable.Range(1, 6).Select(row => Across(outline, eave - (row * 11))));
        return [new Mark.Stroke(courses, LineClass.Fine, Ink.Faint), new Mark.Stroke(Trace.Polygon(outline), LineClass.Beyond, Ink.Hatch)];
    }

    private static Trace Across(Spot[] outline, double y) => Hatching.Lines([.. outline.Select(spot => spot with { Y = spot.Y - y })], 0, 4000) is { Steps.Length: > 1 } line ? line.Moved(1, 0, y) : new Trace([]);
}
