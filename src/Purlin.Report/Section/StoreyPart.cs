using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>The storeys: walls and floors cut thick, rooms side by side with their furnishings seen beyond.</summary>
internal static class StoreyPart
{
    public static void Draw(Draughting sheet)
    {
        foreach (var storey in sheet.Plan.Storeys) Draw(sheet, storey);
        Walls(sheet);
    }

    /// <summary>Rooms of one row: their furnishings, the walls between them, their names.</summary>
    public static void Row(Draughting sheet, IReadOnlyList<Cell> row)
    {
        foreach (var cell in row)
        {
            var ink = sheet.InkOf(cell);
            Furnishing.Draw(sheet, cell.Place.Kind, new Box(cell.Box.X + 4, cell.Box.Y + 30, cell.Box.Width - 8, cell.Box.Height - 31), Draughting.Lighter(ink));
            // A small drawing names only what it can name whole.
            var inset = sheet.Plan.Measures.IsSmall ? 3 : 11;
            if (sheet.Plan.Measures.IsSmall && !Labels.Fits(cell.Place.Name, sheet.Plan.Measures.Letter, cell.Box.Width - inset, sheet.Words)) continue;
            Labels.Put(sheet, cell.Place.Name, ink == Ink.Line, new Spot(cell.Box.Centre.X, cell.Box.Y + sheet.Plan.Measures.Letter + 3.5), cell.Box.Width - inset, sheet.Plan.Measures.Letter);
        }
        for (var index = 1; index < row.Count; index++)
        {
            var ink = sheet.InkOf(row[index - 1], row[index]);
            Box wall = new(row[index].Box.X - 1.5, row[index].Box.Y, 3, row[index].Box.Height);
            sheet.Solid(Trace.Around(wall), ink, LineClass.Beyond);
        }
    }

    private static void Draw(Draughting sheet, StoreyBand storey)
    {
        foreach (var row in storey.Rows) Row(sheet, row);
        for (var index = 1; index < storey.Rows.Count; index++)
        {
            var y = storey.Rows[index][0].Box.Y;
            sheet.Fill(Trace.Around(new Box(storey.Box.X, y - 1, storey.Box.Width, 2)), Ink.Paper);
            sheet.Line(Trace.Between(storey.Box.X, y, storey.Box.Right, y), LineClass.Shift, sheet.InkOf(storey.Rows[index - 1].Concat(storey.Rows[index])));
        }
        var ink = sheet.InkOf(storey.Rows.SelectMany(row => row));
        Floor(sheet, new Box(storey.Box.X, storey.Box.Bottom, storey.Box.Width, sheet.Plan.Measures.FloorThickness), ink);
        sheet.Letter(new Mark.Lettering(Labels.Storey(storey.Number, sheet.Words), new Spot(sheet.Plan.Measures.Wide() ? sheet.Plan.Measures.Left - 14 : 11, storey.Box.Centre.Y), 10) { Ink = Ink.Quiet, Upright = true, Halo = true });
    }

    private static void Floor(Draughting sheet, Box floor, Ink ink)
    {
        sheet.Solid(Trace.Around(floor), ink);
        if (ink != Ink.Line || floor.Bottom >= sheet.Plan.Floor && sheet.Plan.Shape.Foundation == "slab") return;
        List<Trace> joists = [];
        for (var x = floor.X + 14; x < floor.Right - 8; x += 16) joists.Add(Hatching.WoodEnd(new Box(x, floor.Y + 1, 3.4, floor.Height - 2)));
        sheet.Line(Trace.Join(joists), LineClass.Fine, Ink.Hatch);
    }

    private static void Walls(Draughting sheet)
    {
        var house = sheet.Plan.House;
        var wall = sheet.Plan.Measures.Wall;
        var ink = sheet.InkOf(sheet.Plan.Tiles);
        if (ink == Ink.Faint) ink = sheet.InkOf(sheet.Plan.Storeys.SelectMany(storey => storey.Rows).Select(row => row[0]));
        foreach (var x in (double[])[house.X, house.Right - wall])
        {
            Box box = new(x, house.Y, wall, house.Height);
            sheet.Solid(Trace.Around(box), ink);
            if (ink == Ink.Line) sheet.Line(Hatching.Lines(box.Corners, 45, 4), LineClass.Fine, Ink.Hatch);
        }
    }

    private static bool Wide(this SectionMeasures measures) => measures.Width > 400;
}
