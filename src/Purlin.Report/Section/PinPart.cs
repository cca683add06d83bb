using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>Pins of findings and knots of loose ends. On the upright sheet balloons stand in their places, on the wide one in the margins with leaders.</summary>
internal static class PinPart
{
    private const double Pitch = 29;

    /// <summary>More leaders than this cross one another; then balloons stand in their places instead.</summary>
    public const int MostLeaders = 24;

    private const double Between = 1.2;

    private static readonly double[] Sizes = [Callout.Radius, 10.6, 9.2, 8, 7, 6];

    public static void Knots(Draughting sheet)
    {
        foreach (var cell in sheet.Plan.All.Where(cell => sheet.Of(cell.Place).OpenEnds > 0)) Knot(sheet, OnLine(sheet.Plan, cell));
    }

    public static void InPlace(Draughting sheet)
    {
        foreach (var cell in sheet.Plan.All)
        {
            var pins = sheet.Of(cell.Place).Pins;
            if (pins.Count > 0) InPlace(sheet, pins, Strip(sheet.Plan, cell), Tallest(sheet.Plan, cell));
        }
    }

    /// <summary>One balloon a place, the heaviest; another edge behind it says that there are more.</summary>
    public static void Heaviest(Draughting sheet)
    {
        foreach (var cell in sheet.Plan.All)
        {
            var pins = sheet.Of(cell.Place).Pins;
            if (pins.Count == 0) continue;
            var strip = Strip(sheet.Plan, cell);
            // On a side it stands high, so that its name stays free.
            Spot at = new(strip.Centre.X, sheet.Plan.Tiles.Contains(cell) ? cell.Box.Y + Callout.Radius + 5 : strip.Bottom - Callout.Radius);
            if (pins.Count > 1) sheet.Float(new Mark.Stroke(Trace.Circle(at.X + 2.6, at.Y - 1.6, Callout.Radius), LineClass.Beyond, Ink.Line));
            sheet.Float(Callout.Balloon(pins[0].Number, pins[0].Bars, at, pins[0].Words));
        }
    }

    // As large as all of them fit; a number that is not there cannot be looked for.
    private static void InPlace(Draughting sheet, IReadOnlyList<Pin> pins, Box strip, double tall)
    {
        var radius = Sizes.FirstOrDefault(size => Across(strip, size) * Math.Max(1, (int)((tall + Between) / (2 * size + Between))) >= pins.Count, Sizes[^1]);
        var across = Across(strip, radius);
        var rows = (pins.Count + across - 1) / across;
        for (var index = 0; index < pins.Count; index++)
        {
            int row = index / across, inRow = Math.Min(across, pins.Count - row * across);
            Spot at = new(strip.Centre.X + (index % across - (inRow - 1) / 2.0) * (2 * radius + Between), strip.Bottom - radius - (rows - 1 - row) * (2 * radius + Between));
            sheet.Float(Callout.Balloon(pins[index].Number, pins[index].Bars, at, pins[index].Words, radius));
        }
    }

    private static int Across(Box strip, double radius) => Math.Max(1, (int)((strip.Width + Between) / (2 * radius + Between)));

    // From the foot of the place up to its name.
    private static double Tallest(SectionPlan plan, Cell cell) => plan.Roofs.Contains(cell) || plan.Sites.Contains(cell) || plan.Attics.Contains(cell) || plan.Tiles.Contains(cell)
        ? Strip(plan, cell).Height
        : Math.Max(2 * Callout.Radius, cell.Box.Height - plan.Measures.Letter * 2.4);

    public static void InMargins(Draughting sheet, IReadOnlyList<Pin> pins)
    {
        var cells = sheet.Plan.All.ToArray();
        List<(Pin Pin, IReadOnlyList<Spot> Tips)> left = [], right = [];
        Dictionary<EntryName, int> used = [];
        foreach (var pin in pins)
        {
            IReadOnlyList<Spot> tips = [.. cells.Where(cell => pin.Places.Contains(cell.Place.Id)).Take(4).Select(cell => Tip(sheet, cell, used))];
            var middle = tips.Count == 0 ? 0 : tips.Average(tip => tip.X);
            var most = Most(sheet.Plan.Height);
            var goesLeft = middle < sheet.Plan.House.Centre.X ? left.Count < most : right.Count >= most;
            (goesLeft ? left : right).Add((pin, tips));
        }
        Column(sheet, left, 22);
        Column(sheet, right, sheet.Plan.Measures.Width - 22);
    }

    private static int Most(double height) => Math.Max(1, (int)((height - 20) / Pitch));

    private static void Column(Draughting sheet, List<(Pin Pin, IReadOnlyList<Spot> Tips)> pins, double x)
    {
        var sorted = pins.OrderBy(pin => pin.Tips.Count == 0 ? sheet.Plan.Height : pin.Tips.Average(tip => tip.Y)).ToArray();
        var pitch = Math.Min(Pitch, (sheet.Plan.Height - 20) / Math.Max(1, sorted.Length));
        var at = new double[sorted.Length];
        var last = 16 - pitch;
        for (var index = 0; index < sorted.Length; index++)
        {
            var wanted = sorted[index].Tips.Count == 0 ? sheet.Plan.Height : sorted[index].Tips.Average(tip => tip.Y) - 6;
            last = at[index] = Math.Max(last + pitch, wanted);
        }
        var limit = sheet.Plan.Height - 16;
        for (var index = sorted.Length - 1; index >= 0; index--) limit = (at[index] = Math.Min(at[index], limit)) - pitch;
        for (var index = 0; index < sorted.Length; index++)
        {
            var (pin, tips) = sorted[index];
            Spot stand = new(x, at[index]);
            sheet.Pin(Callout.Balloon(pin.Number, pin.Bars, stand, pin.Words), tips.SelectMany(tip => Callout.Leader(pin.Bars, stand, tip)));
        }
    }

    // Several leaders into one room end beside one another, not on one another.
    private static Spot Tip(Draughting sheet, Cell cell, Dictionary<EntryName, int> used)
    {
        var index = used[cell.Place.Id] = used.GetValueOrDefault(cell.Place.Id) + 1;
        var share = index switch { 1 => 0.5, 2 => 0.25, 3 => 0.75, 4 => 0.12, 5 => 0.88, _ => 0.37 + index % 3 * 0.13 };
        if (sheet.Plan.Roofs.Contains(cell)) return OnSlope(sheet.Plan.BodyOf(cell), 0.56 + share * 0.4);
        var strip = Strip(sheet.Plan, cell);
        return new Spot(strip.X + strip.Width * share, strip.Y + strip.Height * (index % 2 == 1 ? 0.35 : 0.65));
    }

    private static Spot OnSlope(Body body, double share)
    {
        var outline = body.RoofLine;
        var x = body.RoofBox.X + body.RoofBox.Width * share;
        for (var index = 0; index + 1 < outline.Count; index++)
        {
            Spot from = outline[index], to = outline[index + 1];
            if (x >= from.X && x <= to.X) return new Spot(x, from.Y + (x - from.X) / (to.X - from.X) * (to.Y - from.Y) + 3);
        }
        return new Spot(x, body.RoofBox.Bottom);
    }

    /// <summary>Where in a place its pins stand, clear of its name.</summary>
    private static Box Strip(SectionPlan plan, Cell cell)
    {
        var tall = 2 * Callout.Radius;
        if (plan.Roofs.Contains(cell) && plan.Bodies.Count == 1) return new Box(plan.House.X + plan.House.Width * 0.7 + 24, plan.Main.RoofBox.Y + plan.Main.RoofBox.Height * 0.05, plan.Measures.Width - plan.Measures.Right - plan.House.X - plan.House.Width * 0.7 - 24, tall * 1.9);
        if (plan.Roofs.Contains(cell)) return new Box(cell.Box.X + cell.Box.Width * 0.55, cell.Box.Y, cell.Box.Width * 0.5, tall);
        if (plan.Attics.Contains(cell)) return new Box(cell.Box.X + cell.Box.Width * 0.14, cell.Box.Bottom - tall - 2, cell.Box.Width * 0.72, tall);
        if (plan.Sites.Contains(cell)) return new Box(cell.Box.X + 6, cell.Box.Bottom - tall - 4, cell.Box.Width * 0.38, tall);
        if (plan.Tiles.Contains(cell)) return new Box(cell.Box.X + 1, cell.Box.Y + 10, cell.Box.Width - 2, tall * 1.75);
        return new Box(cell.Box.X + 2, cell.Box.Bottom - tall - 3, cell.Box.Width - 4, tall);
    }

    /// <summary>The line of a place on which its knot hangs.</summary>
    private static Spot OnLine(SectionPlan plan, Cell cell) => cell switch
    {
        _ when plan.Roofs.Contains(cell) => OnSlope(plan.BodyOf(cell), 0.2),
        _ when plan.Deck == cell => new Spot(cell.Box.X + 2, plan.Ground + 1),
        _ when plan.Sites.Contains(cell) => new Spot(cell.Box.Right - 16, plan.Ground),
        _ when plan.Tiles.Contains(cell) => new Spot(cell.Box.Right - 9, cell.Box.Bottom - plan.Measures.Letter - 8),
        _ => new Spot(cell.Box.Right - 12, cell.Box.Bottom - 1),
    };

    // A thread that was picked up and not tied: it loops once and hangs.
    private static void Knot(Draughting sheet, Spot at)
    {
        var thread = Trace.At(at.X - 8, at.Y + 1)
            .By(at.X - 3, at.Y - 6, at.X + 5, at.Y - 6, at.X + 4, at.Y - 0.5)
            .By(at.X + 3, at.Y + 4, at.X - 4, at.Y + 3, at.X - 3, at.Y - 2)
            .By(at.X - 2, at.Y - 7, at.X + 7, at.Y - 2, at.X + 6, at.Y + 8);
        sheet.Float(new Mark.Stroke(thread, LineClass.Halo, Ink.Paper));
        sheet.Float(new Mark.Stroke(thread, LineClass.Cut, Ink.Line));
    }
}
