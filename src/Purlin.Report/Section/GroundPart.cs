using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>What carries the house: slab, piers, crawl space or basement, the footings, and the earth around them.</summary>
internal static class GroundPart
{
    public static void Draw(Draughting sheet)
    {
        Earth(sheet);
        var plan = sheet.Plan;
        var ink = plan.BelowRows.Count > 0 ? sheet.InkOf(plan.BelowRows.SelectMany(row => row)) : sheet.InkOf(plan.Storeys[^1].Rows.SelectMany(row => row));
        if (plan.Shape.Foundation == "slab" && plan.BelowRows.Count == 0) Slab(sheet, ink);
        else Room(sheet, ink);
    }

    private static void Room(Draughting sheet, Ink ink)
    {
        var plan = sheet.Plan;
        var below = plan.Below;
        Box inside = new(below.X, below.Y + plan.Measures.FloorThickness - 7, below.Width, below.Height);
        sheet.Fill(Trace.Around(inside), Ink.Paper);
        foreach (var row in plan.BelowRows) StoreyPart.Row(sheet, row);
        var piers = plan.Shape.Foundation == "piers" && plan.BelowRows.SelectMany(row => row).All(cell => cell.Place.Kind == Journal.PlaceKind.CrawlSpace);
        if (plan.Shape.Foundation == "basement") Concrete(sheet, new Box(below.X - 2, below.Bottom, below.Width + 4, 5), ink);
        foreach (var (x, width) in ((double, double)[])[(below.X, 9), (below.Right - 9, 9)])
        {
            Box wall = new(x, below.Y, width, below.Height);
            if (piers) { sheet.Solid(Trace.Around(wall), ink); sheet.Line(Hatching.Masonry(wall, 6, 9), LineClass.Fine, Draughting.Lighter(ink)); }
            else Concrete(sheet, wall, ink);
            Concrete(sheet, new Box(x - 5, below.Bottom, width + 10, 8), ink);
        }
    }

    private static void Slab(Draughting sheet, Ink ink)
    {
        var below = sheet.Plan.Below;
        IReadOnlyList<Spot> section =
        [
            new(below.X - 2, below.Y), new(below.Right + 2, below.Y), new(below.Right + 2, below.Bottom + 9), new(below.Right - 14, below.Bottom + 9), new(below.Right - 20, below.Bottom - 3),
            new(below.X + 20, below.Bottom - 3), new(below.X + 14, below.Bottom + 9), new(below.X - 2, below.Bottom + 9),
        ];
        sheet.Solid(Trace.Polygon(section), ink);
        sheet.Line(Hatching.Concrete(section), LineClass.Fine, Draughting.Lighter(ink));
    }

    private static void Concrete(Draughting sheet, Box box, Ink ink)
    {
        sheet.Solid(Trace.Around(box), ink);
        sheet.Line(Hatching.Concrete(box.Corners), LineClass.Fine, Draughting.Lighter(ink));
    }

    private static void Earth(Draughting sheet)
    {
        var plan = sheet.Plan;
        var ink = sheet.InkOf(plan.Sites);
        double left = plan.Measures.Left - 6, right = plan.Measures.Width - plan.Measures.Right + 4, under = plan.Below.Bottom;
        IReadOnlyList<Spot> earth = plan.Shape.Foundation == "slab" && plan.BelowRows.Count == 0
            ? new Box(left, plan.Ground, right - left, plan.Earth.Bottom - plan.Ground).Corners
            :
            [
                new(left, plan.Ground), new(plan.House.X, plan.Ground), new(plan.House.X, under), new(plan.House.Right, under), new(plan.House.Right, plan.Ground),
                new(right, plan.Ground), new(right, plan.Earth.Bottom), new(left, plan.Earth.Bottom),
            ];
        sheet.Line(Hatching.Earth(earth), LineClass.Fine, Draughting.Lighter(ink));
        var line = Trace.Between(left, plan.Ground, plan.House.X, plan.Ground).With(Trace.Between(plan.House.Right, plan.Ground, right, plan.Ground));
        if (plan.BelowRows.Count > 0 && plan.Shape.Foundation is "crawl space" or "piers") line = line.With(Trace.Between(plan.House.X, under, plan.House.Right, under));
        sheet.Line(line, LineClass.Heavy, ink);
        foreach (var site in plan.Sites) SiteLabel(sheet, site);
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
