using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>
/// A place as a drawing: frame by its kind, things in the slots of the frame, each with its state as line, then pins and the name of the one
/// in hand. Nothing is placed by hand. What has no sign or no slot stands in the list beside the drawing alone.
/// </summary>
public static class PlaceDrawing
{
    private const double SmallestTouch = 44;

    /// <summary>Draws a place.</summary>
    /// <param name="facts">What the frame follows from.</param>
    /// <param name="things">Its things, in the order of the eye.</param>
    /// <param name="pins">Matters to be pinned to things that are drawn.</param>
    public static Sheet Draw(PlaceFrameFacts facts, IReadOnlyList<PlaceThing> things, IReadOnlyList<PlacePin> pins)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(pins);
        var frame = FrameOf(facts);
        var placed = Place(frame, things);
        var surfaces = things.Where(thing => frame.Surfaces.ContainsKey(thing.Component)).DistinctBy(thing => thing.Component).ToList();
        return new Sheet
        {
            Width = Frame.Width,
            Height = Frame.Height,
            Title = facts.Name,
            Description = Told(things),
            Marks =
            [
                .. frame.Behind,
                .. surfaces.SelectMany(thing => ThingMarks.Surface(thing, frame.Surfaces[thing.Component])),
                .. placed.OrderBy(one => one.Thing.InHand).SelectMany(one => ThingMarks.Of(one)),
                .. frame.Over,
                .. surfaces.SelectMany(thing => ThingMarks.Name(thing, frame.Surfaces[thing.Component].Name)),
                .. Pinning.Marks(pins, placed, surfaces.ToDictionary(thing => thing.Id, thing => frame.Surfaces[thing.Component])),
            ],
            Targets =
            [
                .. placed.OrderBy(one => one.Covers.Width * one.Covers.Height).Select(one => new Target(one.Thing.Id, Grown(one.Covers), Told(one.Thing))),
                .. surfaces.Select(thing => new Target(thing.Id, Around(frame.Surfaces[thing.Component]), Told(thing))),
            ],
        };
    }

    /// <summary>Whether a kind of thing is drawn in such a place at all.</summary>
    public static bool Draws(PlaceFrameFacts facts, string component)
    {
        var frame = FrameOf(facts);
        return frame.Surfaces.ContainsKey(component) || (frame.Slots.ContainsKey(component) && Glyphs.Of(component) is not null);
    }

    private static Frame FrameOf(PlaceFrameFacts facts) => facts.Kind switch
    {
        PlaceKind.Side => ElevationFrame.For(facts),
        PlaceKind.Outbuilding => ElevationFrame.For(facts with { Stories = 1 }),
        PlaceKind.Roof => PlanFrames.Roof(facts.RoofForm),
        PlaceKind.Site => PlanFrames.Site(),
        PlaceKind.Attic => CutFrames.Attic(),
        PlaceKind.CrawlSpace => CutFrames.Crawl(),
        PlaceKind.Deck => CutFrames.Deck(),
        PlaceKind.Stairs => CutFrames.Stairs(),
        PlaceKind.Mechanical or PlaceKind.Garage or PlaceKind.Basement => ShopFrame.For(facts.Kind),
        _ => RoomFrame.For(facts.Kind),
    };

    private static List<PlacedThing> Place(Frame frame, IReadOnlyList<PlaceThing> things)
    {
        List<PlacedThing> placed = [];
        Dictionary<string, int> taken = new(StringComparer.Ordinal);
        foreach (var thing in things)
        {
            if (frame.Surfaces.ContainsKey(thing.Component) || Glyphs.Of(thing.Component) is not { } glyph || !frame.Slots.TryGetValue(thing.Component, out var slots)) continue;
            var at = taken.GetValueOrDefault(thing.Component);
            if (at >= slots.Length) continue;
            taken[thing.Component] = at + 1;
            var (outline, detail, covers) = glyph.In(slots[at].Box, slots[at].Standing);
            placed.Add(new PlacedThing(thing, outline, detail, covers, slots[at].Above));
        }
        return placed;
    }

    private static Box Around(Surface surface)
    {
        double left = surface.Corners.Min(spot => spot.X), top = surface.Corners.Min(spot => spot.Y);
        return Grown(new Box(left, top, surface.Corners.Max(spot => spot.X) - left, surface.Corners.Max(spot => spot.Y) - top));
    }

    private static Box Grown(Box box)
    {
        double wide = Math.Max(SmallestTouch, box.Width), tall = Math.Max(SmallestTouch, box.Height);
        return new Box(Math.Clamp(box.Centre.X - (wide / 2), 0, Frame.Width - wide), Math.Clamp(box.Centre.Y - (tall / 2), 0, Frame.Height - tall), wide, tall);
    }

    private static string Told(PlaceThing thing) => thing.State switch
    {
        ThingState.Usual => $"{thing.Name}, usual here, not yet spoken of",
        ThingState.Sound => $"{thing.Name}, looked at",
        ThingState.NotSeen => $"{thing.Name}, could not be seen",
        _ => thing.Name,
    };

    private static string Told(IReadOnlyList<PlaceThing> things)
    {
        var here = things.Where(thing => thing.State != ThingState.Usual).Select(thing => thing.Name).ToList();
        return here.Count == 0 ? "" : string.Join(", ", here) + ".";
    }
}

/// <summary>A thing in its slot.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Outline">What it covers.</param>
/// <param name="Detail">Its fine lines.</param>
/// <param name="Covers">The box around it.</param>
/// <param name="Above">Whether it hangs above the plane of the cut.</param>
internal sealed record PlacedThing(PlaceThing Thing, Trace Outline, Trace Detail, Box Covers, bool Above);
