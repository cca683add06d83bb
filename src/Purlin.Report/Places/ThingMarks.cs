using System.Collections.Immutable;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Places;

/// <summary>A thing as marks: its state is line and tone, never a color.</summary>
internal static class ThingMarks
{
    private const double NameSize = 13;

    public static IEnumerable<Mark> Of(PlacedThing placed)
    {
        var thing = placed.Thing;
        yield return new Mark.Stroke(placed.Outline, LineClass.Halo, Ink.Paper);
        if (thing.State == ThingState.Usual && !thing.InHand)
        {
            yield return new Mark.Area(placed.Outline, Ink.Paper);
            yield return new Mark.Stroke(placed.Outline, LineClass.Hidden, Ink.Faint);
            yield return new Mark.Stroke(placed.Detail, LineClass.Fine, Ink.Faint);
            yield break;
        }
        yield return new Mark.Area(placed.Outline, thing.State == ThingState.Sound || thing.InHand ? Ink.Wash : Ink.Paper);
        yield return new Mark.Stroke(placed.Outline, thing.InHand ? LineClass.Heavy : placed.Above ? LineClass.Shift : LineClass.Cut, Ink.Line);
        yield return new Mark.Stroke(placed.Detail, LineClass.Beyond, Ink.Line);
        if (thing.State == ThingState.NotSeen) yield return new Mark.Stroke(Cross(placed.Covers), LineClass.Hidden, Ink.Line);
        if (thing.Asked) yield return Knot(new Spot(placed.Covers.Right - 2, placed.Covers.Y + 2));
        if (thing.InHand) foreach (var mark in Tag(thing.Name, placed.Covers)) yield return mark;
    }

    public static IEnumerable<Mark> Surface(PlaceThing thing, Surface surface)
    {
        var outline = Trace.Polygon(surface.Corners);
        double left = surface.Corners.Min(spot => spot.X), top = surface.Corners.Min(spot => spot.Y);
        var box = new Box(left, top, surface.Corners.Max(spot => spot.X) - left, surface.Corners.Max(spot => spot.Y) - top);
        if (thing.State == ThingState.Sound || thing.InHand) yield return new Mark.Area(outline, Ink.Wash);
        if (surface.Corners.Length == 4 && Materials.Hatch(thing.Material, box) is { } hatch) yield return new Mark.Stroke(hatch, LineClass.Fine, Ink.Faint);
        if (thing.InHand) yield return new Mark.Stroke(outline, LineClass.Heavy, Ink.Line);
        if (thing.State == ThingState.NotSeen) yield return new Mark.Stroke(Cross(box), LineClass.Hidden, Ink.Line);
    }

    /// <summary>The name of a surface: bold and inked when it is on record, quiet while it is only usual.</summary>
    public static IEnumerable<Mark> Name(PlaceThing thing, Spot at)
    {
        if (thing.InHand)
        {
            foreach (var mark in Tag(thing.Name, new Box(at.X, at.Y, 1, 1))) yield return mark;
            yield break;
        }
        var usual = thing.State == ThingState.Usual;
        yield return new Mark.Lettering(thing.Material ?? thing.Name, at, NameSize) { Cut = usual ? Cut.Regular : Cut.Bold, Ink = usual ? Ink.Quiet : Ink.Text, Halo = true };
        if (thing.Asked) yield return Knot(new Spot(at.X + (Typesetting.Width(thing.Material ?? thing.Name, NameSize, Cut.Bold) / 2) + 10, at.Y - 8));
    }

    /// <summary>The solid tag of the one in hand, over it where there is room, else under it.</summary>
    private static ImmutableArray<Mark> Tag(string name, Box covers)
    {
        var text = Typesetting.Fit(name, NameSize, Cut.Bold, 180);
        var wide = Typesetting.Width(text, NameSize, Cut.Bold) + 20;
        var x = Math.Clamp(covers.Centre.X - (wide / 2), 4, Frame.Width - wide - 4);
        var y = covers.Y > 40 ? covers.Y - 34 : covers.Bottom + 8;
        var box = new Box(x, Math.Clamp(y, 4, Frame.Height - 30), wide, 26);
        return [new Mark.Area(Trace.Around(box), Ink.Line), new Mark.Lettering(text, new Spot(box.Centre.X, box.Y + 17.5), NameSize) { Cut = Cut.Bold, Ink = Ink.Paper }];
    }

    private static Trace Cross(Box box) => Trace.Between(box.X, box.Y, box.Right, box.Bottom).With(Trace.Between(box.Right, box.Y, box.X, box.Bottom));

    /// <summary>The small unfinished knot of an open question.</summary>
    private static Mark.Stroke Knot(Spot at) =>
        new(Trace.At(at.X - 9, at.Y + 5).By(at.X + 3, at.Y + 6, at.X + 7, at.Y - 8, at.X, at.Y - 8).By(at.X - 7, at.Y - 8, at.X - 3, at.Y + 4, at.X + 9, at.Y + 3), LineClass.Heavy, Ink.Line);
}
