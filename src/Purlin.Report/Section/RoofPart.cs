using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>Roof and attic: rafters cut thick, webs of the trusses beyond, insulation on the attic floor, a chimney of masonry.</summary>
internal static class RoofPart
{
    private const double Overhang = 10;
    private const double Thick = 5;

    public static void Draw(Draughting sheet)
    {
        // Lean-tos stand against the walls of the higher ones, so those are drawn over them.
        foreach (var body in sheet.Plan.Bodies.Where(body => !body.IsRoofed).OrderByDescending(body => body.RoofBox.Y)) Draw(sheet, body);
        foreach (var body in sheet.Plan.Bodies.Where(body => body.IsRoofed)) Names(sheet, body);
    }

    private static void Draw(Draughting sheet, Body body)
    {
        var ink = sheet.InkOf(body.Roofs.Count > 0 ? body.Roofs : sheet.Plan.Main.Roofs);
        if (body.Shape.Chimney) Chimney(sheet, body.RoofBox, ink);
        var outer = body.RoofLine;
        IReadOnlyList<Spot> cover = [.. outer, new(body.RoofBox.Right, body.RoofBox.Bottom), new(body.RoofBox.X, body.RoofBox.Bottom)];
        sheet.Fill(Trace.Polygon(cover), Ink.Paper);
        Attic(sheet, body, ink);
        Covering(sheet, body, outer, ink);
        Names(sheet, body);
    }

    private static void Names(Draughting sheet, Body body)
    {
        foreach (var roof in body.Roofs)
            Labels.Put(sheet, roof.Place.Name, sheet.Of(roof.Place).Looked, RoofLabel(sheet.Plan, body, roof), Math.Max(44, roof.Box.Width * 0.6), sheet.Plan.Measures.Letter);
        foreach (var attic in body.Attics)
            Labels.Put(sheet, attic.Place.Name, sheet.Of(attic.Place).Looked, new Spot(attic.Box.Centre.X, attic.Box.Y + sheet.Plan.Measures.Letter + 2), attic.Box.Width * 0.6, sheet.Plan.Measures.Letter);
    }

    /// <summary>The upper edge of the roof from eave to eave.</summary>
    /// <param name="roof">From ridge to eaves.</param>
    /// <param name="form">Its form.</param>
    /// <param name="fallsRight">Whether a lean-to falls to the right; else to the left.</param>
    public static IReadOnlyList<Spot> Outline(Box roof, string form, bool fallsRight = false)
    {
        double left = roof.X - Overhang, right = roof.Right + Overhang, middle = roof.Centre.X;
        // The eaves hang below the wall's head by the slope of the overhang.
        var drop = Math.Min(7, Overhang * roof.Height / (roof.Width / 2));
        return form switch
        {
            "hip" => [new(left, roof.Bottom + drop), new(middle - roof.Width * 0.17, roof.Y), new(middle + roof.Width * 0.17, roof.Y), new(right, roof.Bottom + drop)],
            "flat" => [new(roof.X - 2, roof.Y + roof.Height * 0.38), new(right - Overhang + 2, roof.Y + roof.Height * 0.46)],
            "shed" when fallsRight => [new(roof.X, roof.Y), new(right, roof.Bottom - roof.Height * 0.2)],
            "shed" => [new(left, roof.Bottom - roof.Height * 0.34), new(right, roof.Y)],
            "gambrel" => [new(left, roof.Bottom + drop), new(roof.X + roof.Width * 0.13, roof.Y + roof.Height * 0.36), new(middle, roof.Y), new(roof.Right - roof.Width * 0.13, roof.Y + roof.Height * 0.36), new(right, roof.Bottom + drop)],
            _ => [new(left, roof.Bottom + drop), new(middle, roof.Y), new(right, roof.Bottom + drop)],
        };
    }

    private static void Covering(Draughting sheet, Body body, IReadOnlyList<Spot> outer, Ink ink)
    {
        var lower = outer.Select(spot => spot with { Y = spot.Y + Thick + 1.5 }).Reverse().ToArray();
        sheet.Solid(Trace.Polygon([.. outer, .. lower]), ink);
        List<Trace> courses = [];
        for (var index = 0; index + 1 < outer.Count; index++) Courses(courses, outer[index], outer[index + 1]);
        if (body.Shape.RoofForm != "flat") sheet.Line(Trace.Join(courses), LineClass.Fine, ink);
        foreach (var eave in (Spot[])[outer[0], outer[^1]])
        {
            var out1 = eave.X < body.RoofBox.Centre.X ? -1 : 1;
            // Against a higher wall there is no eave.
            if (body.Shape.RoofForm == "shed" && eave == (body.FallsRight ? outer[0] : outer[^1]) && (body.FallsRight ? body.HasLeft : body.HasRight)) continue;
            if (body.Shape.RoofForm == "flat") { sheet.Solid(Trace.Around(new Box(eave.X - 3, eave.Y - 8, 6, 16)), ink); continue; }
            sheet.Line(Trace.At(eave.X, eave.Y + 1).By(eave.X, eave.Y + 7, eave.X + out1 * 6, eave.Y + 7, eave.X + out1 * 6, eave.Y + 1), LineClass.Beyond, ink);
        }
        if (body.Shape.RoofForm is "shed" or "flat") Gables(sheet, body, outer, ink);
    }

    // Where the roof does not come down to the walls, they go up to it.
    private static void Gables(Draughting sheet, Body body, IReadOnlyList<Spot> outer, Ink ink)
    {
        var house = body.House;
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

    private static void Attic(Draughting sheet, Body body, Ink roofs)
    {
        var ink = sheet.InkOf(body.Attics);
        var roof = body.RoofBox;
        if (body.Attics.Count == 0 && body.Shape.RoofForm != "flat") ink = roofs;
        // Rooms stand where the webs would.
        if (body.Stack.Levels[^1].IsUnderRoof) return;
        if (body.Attics.Count > 0 && body.Shape.RoofForm is not ("flat" or "shed")) Webs(sheet, roof, Draughting.Lighter(ink));
        Box joists = new(roof.X, roof.Bottom - 5, roof.Width, 5);
        if (roof.Height > 26) sheet.Line(Hatching.Insulation(new Box(roof.X + 7, roof.Bottom - 15, roof.Width - 14, 9), 8.5), LineClass.Fine, Draughting.Lighter(ink));
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

    private static void Chimney(Draughting sheet, Box roof, Ink ink)
    {
        Box stack = new(roof.X + roof.Width * 0.7, roof.Y - 10, 20, roof.Height * 0.75);
        sheet.Solid(Trace.Around(stack), ink, LineClass.Beyond);
        sheet.Line(Hatching.Masonry(stack, 4.5, 9), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Solid(Trace.Around(new Box(stack.X - 2.5, stack.Y - 3, stack.Width + 5, 3.5)), ink, LineClass.Beyond);
        sheet.Line(Trace.Around(new Box(stack.X + 6, stack.Y - 8, 8, 5)), LineClass.Beyond, ink);
    }

    private static Spot RoofLabel(SectionPlan plan, Body body, Cell roof) => body.Shape.RoofForm switch
    {
        "flat" or "shed" => new Spot(roof.Box.Centre.X - roof.Box.Width * 0.2, body.RoofBox.Y + 14),
        _ when plan.Bodies.Count > 1 => new Spot(roof.Box.X + 18, Math.Max(12, roof.Box.Y + 14)),
        _ when body.Roofs.Count > 1 => new Spot(roof.Box.Centre.X, body.RoofBox.Y + body.RoofBox.Height * 0.44),
        _ => new Spot(body.RoofBox.X + body.RoofBox.Width * 0.17, body.RoofBox.Y + body.RoofBox.Height * 0.26),
    };
}
