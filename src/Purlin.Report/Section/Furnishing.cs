using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>What stands in a room as seen beyond the cut: enough to know the room by, drawn fine.</summary>
internal static class Furnishing
{
    // The height of room the pieces below were drawn for; a taller room gets them larger.
    private const double DrawnFor = 46;

    public static void Draw(Draughting sheet, string kind, Box at, Ink ink)
    {
        var scale = Math.Clamp(at.Height / DrawnFor, 1, 1.6);
        Box room = new(0, 0, at.Width / scale, at.Height / scale);
        var trace = kind switch
        {
            PlaceKind.Kitchen => Kitchen(room),
            PlaceKind.Bathroom => Bathroom(room),
            PlaceKind.Bedroom => Bedroom(room),
            PlaceKind.Laundry => Laundry(room),
            PlaceKind.Mechanical => Mechanical(room),
            PlaceKind.Hall => Door(room.Centre.X, room.Bottom, Math.Min(15, room.Width * 0.4), Math.Min(room.Height - 2, 38)),
            PlaceKind.Stairs => Stairs(room),
            PlaceKind.Basement => Basement(room),
            PlaceKind.CrawlSpace => CrawlSpace(room),
            _ => Living(room),
        };
        sheet.Line(trace.Moved(scale, at.X, at.Y), LineClass.Fine, ink);
    }

    /// <summary>A sash window of four panes.</summary>
    public static Trace Window(double x, double y, double width, double height) =>
        Trace.Around(new Box(x, y, width, height)).With(Trace.Between(x + width / 2, y, x + width / 2, y + height)).With(Trace.Between(x, y + height / 2, x + width, y + height / 2));

    /// <summary>A door with two panels, standing on the floor.</summary>
    public static Trace Door(double middle, double floor, double width, double height)
    {
        Box leaf = new(middle - width / 2, floor - height, width, height);
        return Trace.Around(leaf)
            .With(Trace.Around(new Box(leaf.X + 3, leaf.Y + 3, width - 6, height * 0.36)))
            .With(Trace.Around(new Box(leaf.X + 3, leaf.Y + height * 0.52, width - 6, height * 0.4)))
            .With(Trace.Circle(leaf.Right - 1.8, floor - height * 0.46, 0.7));
    }

    private static Trace Kitchen(Box room)
    {
        double width = Math.Min(room.Width - 4, 74), x = room.Centre.X - width / 2, floor = room.Bottom, counter = floor - 16;
        var doors = Math.Max(2, (int)(width / 14));
        var trace = Trace.Around(new Box(x, counter, width, 16)).With(Trace.Around(new Box(x - 1.5, counter - 2, width + 3, 2)));
        for (var door = 1; door < doors; door++) trace = trace.With(Trace.Between(x + door * width / doors, counter, x + door * width / doors, floor - 2));
        trace = trace.With(Trace.At(x + width * 0.3, counter - 2).To(x + width * 0.3, counter - 8).By(x + width * 0.3, counter - 11, x + width * 0.3 + 6, counter - 11, x + width * 0.3 + 6, counter - 7));
        if (room.Height < 44) return trace;
        var upper = floor - room.Height + 1;
        return trace.With(Trace.Around(new Box(x, upper, width * 0.26, 13))).With(Trace.Around(new Box(x + width * 0.74, upper, width * 0.26, 13))).With(Window(x + width * 0.38, upper, width * 0.24, 12));
    }

    private static Trace Bathroom(Box room)
    {
        double floor = room.Bottom, x = room.Centre.X - Math.Min(room.Width, 66) / 2;
        var toilet = Trace.Around(new Box(x + 1, floor - 20, 5, 12)).With(Trace.At(x + 6, floor - 12).To(x + 17, floor - 12).By(x + 17, floor - 7, x + 13, floor - 6, x + 12, floor).To(x + 5, floor).To(x + 5, floor - 8));
        if (room.Width < 52) return toilet.With(Trace.At(x + 21, floor - 17).To(x + 35, floor - 17).To(x + 33, floor - 12).To(x + 23, floor - 12).Lift(x + 28, floor - 12).To(x + 28, floor));
        double tub = x + 24, wide = Math.Min(room.Width - 26, 44);
        return toilet.With(Trace.At(tub, floor - 12).To(tub + wide, floor - 12).By(tub + wide - 1, floor - 3, tub + wide - 3, floor - 1, tub + wide - 7, floor - 1).To(tub + 7, floor - 1).By(tub + 3, floor - 1, tub + 1, floor - 3, tub, floor - 12))
            .With(Trace.At(tub + wide - 4, floor - 13).To(tub + wide - 4, floor - 33).To(tub + wide - 11, floor - 33).To(tub + wide - 11, floor - 30));
    }

    private static Trace Bedroom(Box room)
    {
        double floor = room.Bottom, width = Math.Min(room.Width - 4, 50), x = room.Centre.X - width / 2;
        var bed = Trace.Around(new Box(x, floor - 19, 3.5, 19)).With(Trace.Around(new Box(x + width - 3, floor - 11, 3, 11)))
            .With(Trace.Around(new Box(x + 3.5, floor - 10, width - 6.5, 6)))
            .With(Trace.At(x + 4, floor - 10).By(x + 4, floor - 15, x + 14, floor - 15, x + 14, floor - 10));
        return room.Height >= 44 && width > 40 ? bed.With(Window(x + width * 0.48, floor - room.Height + 3, 17, 15)) : bed;
    }

    private static Trace Laundry(Box room)
    {
        var count = room.Width >= 40 ? 2 : 1;
        var trace = new Trace([]);
        for (var index = 0; index < count; index++)
        {
            var x = room.Centre.X - count * 9.5 + index * 19;
            trace = trace.With(Trace.Around(new Box(x, room.Bottom - 21, 18, 21))).With(Trace.Circle(x + 9, room.Bottom - 9.5, 6)).With(Trace.Circle(x + 9, room.Bottom - 9.5, 4)).With(Trace.Between(x, room.Bottom - 17.5, x + 18, room.Bottom - 17.5));
        }
        return trace;
    }

    private static Trace Mechanical(Box room)
    {
        double x = room.Centre.X - 14, floor = room.Bottom, top = floor - Math.Min(31, room.Height - 8);
        return Trace.At(x, floor - 2).To(x, top + 3).By(x, top, x + 15, top, x + 15, top + 3).To(x + 15, floor - 2).By(x + 15, floor, x, floor, x, floor - 2)
            .With(Trace.Between(x + 4, top, x + 4, top - 7)).With(Trace.Between(x + 11, top, x + 11, top - 7))
            .With(Trace.At(x + 15, top + 6).To(x + 18, top + 6).To(x + 18, floor - 3)).With(Trace.Circle(x + 7.5, floor - 6, 2))
            .With(Trace.Around(new Box(x + 22, floor - 30, 10, 15))).With(Trace.Between(x + 27, floor - 30, x + 27, floor - 15)).With(Trace.Between(x + 27, floor - 30, x + 27, floor - 38));
    }

    private static Trace Stairs(Box room)
    {
        var steps = 6;
        double width = Math.Min(room.Width - 4, 46), x = room.Centre.X - width / 2, run = width / steps, rise = Math.Min(6.4, (room.Height - 6) / steps);
        var flight = Trace.At(x, room.Bottom);
        for (var step = 1; step <= steps; step++) flight = flight.To(x + (step - 1) * run, room.Bottom - step * rise).To(x + step * run, room.Bottom - step * rise);
        return flight.With(Trace.Between(x + run, room.Bottom, x + width, room.Bottom - (steps - 1) * rise)).With(Trace.Between(x, room.Bottom - rise - 11, x + width - run, room.Bottom - steps * rise - 9 + rise * 0.4));
    }

    private static Trace Basement(Box room)
    {
        double x = room.X + room.Width * 0.72, top = room.Bottom - room.Height;
        return Trace.Around(new Box(x, top - 6, 5, room.Height + 6)).With(Trace.Around(new Box(x - 3, top - 9, 11, 3)))
            .With(Trace.Around(new Box(room.X + 8, room.Bottom - 25, 34, 2.5))).With(Trace.Between(room.X + 11, room.Bottom - 22, room.X + 11, room.Bottom)).With(Trace.Between(room.X + 39, room.Bottom - 22, room.X + 39, room.Bottom));
    }

    private static Trace CrawlSpace(Box room)
    {
        var trace = new Trace([]);
        var count = Math.Max(2, (int)(room.Width / 78));
        for (var index = 0; index < count; index++)
        {
            Box pier = new(room.X + (index + 0.5) * room.Width / count - 6, room.Y - 8, 12, room.Height + 8);
            trace = trace.With(Trace.Around(pier)).With(Hatching.Masonry(pier, 6, 12));
        }
        return trace;
    }

    private static Trace Living(Box room)
    {
        double floor = room.Bottom, width = Math.Min(room.Width - 6, 54), x = room.Centre.X - width / 2;
        var sofa = Trace.At(x, floor - 2).To(x, floor - 13).By(x, floor - 17, x + 8, floor - 17, x + 8, floor - 13).To(x + 8, floor - 20).To(x + width - 8, floor - 20).To(x + width - 8, floor - 13)
            .By(x + width - 8, floor - 17, x + width, floor - 17, x + width, floor - 13).To(x + width, floor - 2).Shut()
            .With(Trace.Between(x + 8, floor - 9, x + width - 8, floor - 9)).With(Trace.Between(x + width / 2, floor - 20, x + width / 2, floor - 9)).With(Trace.Between(x + 8, floor - 13, x + 8, floor - 9)).With(Trace.Between(x + width - 8, floor - 13, x + width - 8, floor - 9));
        return room.Height >= 44 && room.Width >= 48 ? sofa.With(Window(room.Centre.X - 11, floor - room.Height + 2, 22, 17)) : sofa;
    }
}
