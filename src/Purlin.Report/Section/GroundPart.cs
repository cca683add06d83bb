using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>What carries the house: slab, piers, crawl space or basement, the footings, and the earth around them.</summary>
internal static class GroundPart
{
    public static void Draw(Draughting sheet)
    {
        Earth(sheet);
        foreach (var body in sheet.Plan.Bodies)
        {
            var ink = body.BelowRows.Count > 0 ? sheet.InkOf(body.BelowRows.SelectMany(row => row))
                : sheet.InkOf(body.Storeys[^1].Rows.SelectMany(row => row));
            if (body.IsOnSlab) Slab(sheet, body, ink);
            else Room(sheet, body, ink);
        }
        Spans(sheet);
    }

    /// <summary>Concrete that is cut.</summary>
    public static void Concrete(Draughting sheet, Box box, Ink ink)
    {
        sheet.Solid(Trace.Around(box), ink);
        sheet.Line(Hatching.Concrete(box.Corners), LineClass.Fine, Draughting.Lighter(ink));
    }

    private static void Room(Draughting sheet, Body body, Ink ink)
    {
        var below = body.Below;
        Box inside = new(below.X, below.Y + sheet.Plan.Measures.FloorThickness - 7, below.Width, below.Height);
        sheet.Fill(Trace.Around(inside), Ink.Paper);
        foreach (var row in body.BelowRows) StoreyPart.Row(sheet, row);
        var piers = body.Shape.Foundation == "piers" && body.BelowRows.SelectMany(row => row).All(cell =>
            cell.Place.Kind == Journal.PlaceKind.CrawlSpace);
        if (body.Shape.Foundation == "basement") Concrete(sheet, new Box(below.X - 2, below.Bottom, below.Width + 4, 5), ink);
        if (body.Shape.IsManufactured) Frame(sheet, below, ink);
        foreach (var (x, width) in ((double, double)[])[(below.X, 9), (below.Right - 9, 9)])
        {
            Box wall = new(x, below.Y, width, below.Height);
            if (body.Shape.IsManufactured) Skirt(sheet, wall, ink);
            else if (piers)
            {
                sheet.Solid(Trace.Around(wall), ink); sheet.Line(Hatching.Masonry(wall, 6, 9), LineClass.Fine,
                Draughting.Lighter(ink));
            }
            else Concrete(sheet, wall, ink);
            if (!body.Shape.IsManufactured) Concrete(sheet, new Box(x - 5, below.Bottom, width + 10, 8), ink);
        }
    }

    // The steel beams that a manufactured home came on: two along it, seen from their ends.
    private static void Frame(Draughting sheet, Box below, Ink ink)
    {
        foreach (var share in (double[])[0.27, 0.73])
        {
            double x = below.X + (below.Width * share), top = below.Y + 1;
            sheet.Line(Trace.Between(x - 7, top, x + 7, top).With(Trace.Between(x, top, x, top + 10)).With(Trace.Between(x - 7, top + 10,
                x + 7, top + 10)), LineClass.Cut, ink);
        }
    }

    // A skirt of thin panels hides the piers and bears nothing.
    private static void Skirt(Draughting sheet, Box wall, Ink ink)
    {
        var x = wall.Centre.X;
        sheet.Line(Trace.Between(x - 1, wall.Y, x - 1, wall.Bottom).With(Trace.Between(x + 1, wall.Y, x + 1, wall.Bottom)),
            LineClass.Beyond, ink);
    }

    private static void Slab(Draughting sheet, Body body, Ink ink)
    {
        var below = body.Below;
        IReadOnlyList<Spot> section =
        [
            new(below.X - 2, below.Y), new(below.Right + 2, below.Y), new(below.Right + 2, below.Bottom + 9),
                new(below.Right - 14, below.Bottom + 9), new(below.Right - 20, below.Bottom - 3),
            new(below.X + 20, below.Bottom - 3), new(below.X + 14, below.Bottom + 9), new(below.X - 2, below.Bottom + 9),
        ];
        sheet.Solid(Trace.Polygon(section), ink);
        sheet.Line(Hatching.Concrete(section), LineClass.Fine, Draughting.Lighter(ink));
    }

    private static void Earth(Draughting sheet)
    {
        var plan = sheet.Plan;
        var ink = sheet.InkOf(plan.Sites);
        double left = plan.Measures.Left - 6, right = plan.Measures.Width - plan.Measures.Right + 4, from = plan.House.X,
            to = plan.House.Right;
        List<Spot> earth = [new(left, plan.Ground), new(from, plan.Ground)];
        foreach (var body in plan.Bodies) earth.AddRange([new(body.House.X, body.Under(plan.Ground)),
            new(body.House.Right, body.Under(plan.Ground))]);
        earth.Add(new(to, plan.Ground));
        if (plan.Pool is { } pool) earth.AddRange([new(pool.Box.X, plan.Ground), new(pool.Box.X, pool.Box.Bottom),
            new(right, pool.Box.Bottom)]);
        else earth.Add(new(right, plan.Ground));
        earth.AddRange([new(right, plan.Earth.Bottom), new(left, plan.Earth.Bottom)]);
        sheet.Line(Hatching.Earth(earth), LineClass.Fine, Draughting.Lighter(ink));
        var line = Trace.Between(left, plan.Ground, from, plan.Ground).With(Trace.Between(to, plan.Ground, plan.Pool?.Box.X ?? right,
            plan.Ground));
        foreach (var body in plan.Bodies.Where(body => body.BelowRows.Count > 0 && body.Shape.Foundation is "crawl space" or "piers"))
            line = line.With(Trace.Between(body.House.X, body.Below.Bottom, body.House.Right, body.Below.Bottom));
        sheet.Line(line, LineClass.Heavy, ink);
        foreach (var site in plan.Sites) SiteLabel(sheet, site);
    }

    /// <summary>The parts of the house with their years, on a line of dimensions.</summary>
    private static void Spans(Draughting sheet)
    {
        var plan = sheet.Plan;
        foreach (var span in plan.Spans)
        {
            var size = plan.Measures.Letter;
            var words = span.Tries.FirstOrDefault(one => Labels.For(one, size, span.To - span.From - 6, sheet.Words, 1) is [var line]
                && !line.EndsWith('…')) ?? "";
            foreach (var mark in Dimension.Level(span.From + 1, span.To - 1, plan.Earth.Bottom + 20, words, size,
                Ink.Text)) sheet.Mark(mark);
        }
    }

    private static void SiteLabel(Draughting sheet, Cell site)
    {
        var looked = sheet.Of(site.Place).Looked;
        var size = sheet.Plan.Measures.Letter;
        var wide = Fonts.Typesetting.Width(site.Place.Name, size, Fonts.Cut.Bold) + 16;
        sheet.Fill(Trace.Around(new Box(site.Box.Centre.X - wide / 2, site.Box.Centre.Y - size + 2, wide, size + 6)), Ink.Paper);
        Labels.Put(sheet, site.Place.Name, looked, new Spot(site.Box.Centre.X, site.Box.Centre.Y + 4), site.Box.Width - 8, size);
    }
}
