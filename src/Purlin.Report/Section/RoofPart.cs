using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>Roof and attic: rafters cut thick, webs of the trusses beyond, insulation on the attic floor, a chimney of masonry.</summary>
internal static class RoofPart
{
    private const double Overhang = 10;
    private const double Thick = 5;

    public static void Draw(Draughting sheet)
    {
        var plan = sheet.Plan;
        var ink = sheet.InkOf(plan.Roofs);
        if (plan.Shape.Chimney) Chimney(sheet, ink);
        var outer = Outline(plan.RoofBox, plan.Shape.RoofForm);
        IReadOnlyList<Spot> body = [.. outer, new(plan.RoofBox.Right, plan.RoofBox.Bottom), new(plan.RoofBox.X, plan.RoofBox.Bottom)];
        sheet.Fill(Trace.Polygon(body), Ink.Paper);
        Attic(sheet);
        Covering(sheet, outer, ink);
        foreach (var roof in plan.Roofs)
            Labels.Put(sheet, roof.Place.Name, sheet.Of(roof.Place).Looked, RoofLabel(plan, roof), roof.Box.Width * 0.6, plan.Measures.Letter);
        foreach (var attic in plan.Attics)
            Labels.Put(sheet, attic.Place.Name, sheet.Of(attic.Place).Looked, new Spot(attic.Box.Centre.X, attic.Box.Y + plan.Measures.Letter + 2), attic.Box.Width * 0.6, plan.Measures.Letter);
    }

    /// <summary>The upper edge of the roof from eave to eave.</summary>
    public static IReadOnlyList<Spot> Outline(Box roof, string form)
    {
        double left = roof.X - Overhang, right = roof.Right + Overhang, middle = roof.Centre.X;
        // The eaves hang below the wall's head by the slope of the overhang.
        var drop = Math.Min(7, Overhang * roof.Height / (roof.Width / 2));
        return form switch
        {
            "hip" => [new(left, roof.Bottom + drop), new(middle - roof.Width * 0.17, roof.Y), new(middle + roof.Width * 0.17, roof.Y), new(right, roof.Bottom + drop)],
            "flat" => [new(roof.X - 2, roof.Y + roof.Height * 0.38), new(right - Overhang + 2, roof.Y + roof.Height * 0.46)],
            "shed" => [new(left, roof.Bottom - roof.Height * 0.34), new(right, roof.Y)],
            "gambrel" => [new(left, roof.Bottom + drop), new(roof.X + roof.Width * 0.13, roof.Y + roof.Height * 0.36), new(middle, roof.Y), new(roof.Right - roof.Width * 0.13, roof.Y + roof.Height * 0.36), new(right, roof.Bottom + drop)],
            _ => [new(left, roof.Bottom + drop), new(middle, roof.Y), new(right, roof.Bottom + drop)],
        };
    }

    private static void Covering(Draughting sheet, IReadOnlyList<Spot> outer, Ink ink)
    {
        var lower = outer.Select(spot => spot with { Y = spot.Y + Thick + 1.5 }).Reverse().ToArray();
        sheet.Solid(Trace.Polygon([.. outer, .. lower]), ink);
        List<Trace> courses = [];
        for (var index = 0; index + 1 < outer.Count; index++) Courses(courses, outer[index], outer[index + 1]);
        if (sheet.Plan.Shape.RoofForm != "flat") sheet.Line(Trace.Join(courses), LineClass.Fine, ink);
        foreach (var eave in (Spot[])[outer[0], outer[^1]])
        {
            var out1 = eave.X < sheet.Plan.House.Centre.X ? -1 : 1;
            if (sheet.Plan.Shape.RoofForm == "flat") { sheet.Solid(Trace.Around(new Box(eave.X - 3, eave.Y - 8, 6, 16)), ink); continue; }
            sheet.Line(Trace.At(eave.X, eave.Y + 1).By(eave.X, eave.Y + 7, eave.X + out1 * 6, eave.Y + 7, eave.X + out1 * 6, eave.Y + 1), LineClass.Beyond, ink);
        }
        if (sheet.Plan.Shape.RoofForm is "shed" or "flat") Gables(sheet, outer, ink);
    }

    // Where the roof does not come down to the walls, they go up to it.
    private static void Gables(Draughting sheet, IReadOnlyList<Spot> outer, Ink ink)
    {
        var house = sheet.Plan.House;
        Spot from = outer[0], to = outer[^1];
        double At(double x) => from.Y + (x - from.X) / (to.X - from.X) * (to.Y - from.Y) + Thick;
        foreach (var x in (double[])[house.X, house.Right - sheet.Plan.Measures.Wall])
            sheet.Solid(Trace.Around(new Box(x, At(x), sheet.Plan.Measures.Wall, house.Y - At(x))), ink);
    }

    // Shingles: a short lip at every course, as a cut through overlapping courses shows.
    private static void Courses(List<Trace> courses, Spot from, Spot to)
    {
        double across = to.X - from.X, down = to.Y - from.Y, length = Math.Sqrt(across * across + down * down);
        if (length < 12) return;
        double unitX = across / length, unitY = down / length, up = across > 0 ? -1 : 1;
        var climbing = down < 0;
        for (var along = 4.0; along < length - 2; along += 6.5)
        {
            Spot at = new(from.X + unitX * along, from.Y + unitY * along), lip = new(at.X - unitY * up * -2.6, at.Y + unitX * up * 2.6);
            var back = climbing ? 4.6 : -4.6;
            courses.Add(Trace.Through(lip, new Spot(at.X + unitX * back, at.Y + unitY * back)));
        }
    }

    private static void Attic(Draughting sheet)
    {
        var plan = sheet.Plan;
        var ink = sheet.InkOf(plan.Attics);
        var roof = plan.RoofBox;
        if (plan.Attics.Count == 0 && !plan.Shape.AtticFinished && plan.Shape.RoofForm != "flat") ink = sheet.InkOf(plan.Roofs);
        if (plan.Attics.Count > 0 && plan.Shape.RoofForm is not ("flat" or "shed")) Webs(sheet, roof, Draughting.Lighter(ink));
        var joists = new Box(roof.X, roof.Bottom - 5, roof.Width, 5);
        sheet.Line(Hatching.Insulation(new Box(roof.X + 7, roof.Bottom - 15, roof.Width - 14, 9), 8.5), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Solid(Trace.Around(joists), ink);
    }

    private static void Webs(Draughting sheet, Box roof, Ink ink)
    {
        double middle = roof.Centre.X, floor = roof.Bottom - 5;
        double Under(double x) => roof.Y + Math.Abs(x - middle) / (roof.Width / 2) * roof.Height + 7;
        var quarter = roof.Width / 4;
        var webs = Trace.Between(middle, roof.Y + 8, middle, floor)
            .With(Trace.Through(new Spot(middle - quarter, Under(middle - quarter)), new Spot(middle - quarter * 0.55, floor), new Spot(middle, roof.Y + 8)))
            .With(Trace.Through(new Spot(middle + quarter, Under(middle + quarter)), new Spot(middle + quarter * 0.55, floor), new Spot(middle, roof.Y + 8)))
            .With(Trace.Through(new Spot(middle - quarter, Under(middle - quarter)), new Spot(middle - quarter * 1.4, floor)))
            .With(Trace.Through(new Spot(middle + quarter, Under(middle + quarter)), new Spot(middle + quarter * 1.4, floor)));
        sheet.Line(webs, LineClass.Fine, ink);
    }

    private static void Chimney(Draughting sheet, Ink ink)
    {
        var roof = sheet.Plan.RoofBox;
        Box stack = new(roof.X + roof.Width * 0.7, roof.Y - 10, 20, roof.Height * 0.75);
        sheet.Solid(Trace.Around(stack), ink, LineClass.Beyond);
        sheet.Line(Hatching.Masonry(stack, 4.5, 9), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Solid(Trace.Around(new Box(stack.X - 2.5, stack.Y - 3, stack.Width + 5, 3.5)), ink, LineClass.Beyond);
        sheet.Line(Trace.Around(new Box(stack.X + 6, stack.Y - 8, 8, 5)), LineClass.Beyond, ink);
    }

    private static Spot RoofLabel(SectionPlan plan, Cell roof) => plan.Shape.RoofForm switch
    {
        "flat" or "shed" => new Spot(roof.Box.Centre.X - roof.Box.Width * 0.2, plan.RoofBox.Y + 14),
        _ when plan.Roofs.Count > 1 => new Spot(roof.Box.Centre.X, plan.RoofBox.Y + plan.RoofBox.Height * 0.44),
        _ => new Spot(plan.RoofBox.X + plan.RoofBox.Width * 0.17, plan.RoofBox.Y + plan.RoofBox.Height * 0.26),
    };
}
