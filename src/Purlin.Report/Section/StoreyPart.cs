using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>The storeys: walls and floors cut thick, rooms side by side with their furnishings seen beyond.</summary>
internal static class StoreyPart
{
    private const double LeastFurnished = 52;

    public static void Draw(Draughting sheet)
    {
        foreach (var body in sheet.Plan.Bodies)
        {
            foreach (var storey in body.Storeys) Draw(sheet, body, storey);
            if (body.Stack.Levels[^1].IsUnderRoof) Knees(sheet, body);
        }
        foreach (var body in sheet.Plan.Bodies) Walls(sheet, body);
    }

    /// <summary>Rooms of one row: their furnishings, the walls between them, their names.</summary>
    public static void Row(Draughting sheet, IReadOnlyList<Cell> row)
    {
        foreach (var cell in row)
        {
            var ink = sheet.InkOf(cell);
            // A room that stands behind another has room for its name alone.
            if (cell.Box.Height >= LeastFurnished) Furnishing.Draw(sheet, cell.Place.Kind, new Box(cell.Box.X + 4, cell.Box.Y + 30, cell.Box.Width - 8, cell.Box.Height - 31), Draughting.Lighter(ink));
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

    private static void Draw(Draughting sheet, Body body, StoreyBand storey)
    {
        foreach (var row in storey.Rows) Row(sheet, row);
        for (var index = 1; index < storey.Rows.Count; index++)
        {
            var y = storey.Rows[index][0].Box.Y;
            sheet.Fill(Trace.Around(new Box(storey.Box.X, y - 1, storey.Box.Width, 2)), Ink.Paper);
            sheet.Line(Trace.Between(storey.Box.X, y, storey.Box.Right, y), LineClass.Shift, sheet.InkOf(storey.Rows[index - 1].Concat(storey.Rows[index])));
        }
        var ink = sheet.InkOf(storey.Rows.SelectMany(row => row));
        Floor(sheet, body, new Box(storey.Box.X, storey.Box.Bottom, storey.Box.Width, sheet.Plan.Measures.FloorThickness), ink);
        // Where floors lie half a storey off one another, first and second tell nobody anything.
        if (sheet.Plan.Bodies[0] == body && sheet.Plan.Bodies.All(one => one.Stack.Levels.All(level => level.At == Math.Floor(level.At)))) sheet.Letter(new Mark.Lettering(Labels.Storey((int)storey.At, sheet.Words), new Spot(sheet.Plan.Measures.Wide() ? sheet.Plan.Measures.Left - 14 : 11, storey.Box.Centre.Y), 10) { Ink = Ink.Quiet, Upright = true, Halo = true });
    }

    private static void Floor(Draughting sheet, Body body, Box floor, Ink ink)
    {
        sheet.Solid(Trace.Around(floor), ink);
        if (ink != Ink.Line || floor.Bottom >= body.House.Bottom && body.Shape.Foundation == "slab") return;
        List<Trace> joists = [];
        for (var x = floor.X + 14; x < floor.Right - 8; x += 16) joists.Add(Hatching.WoodEnd(new Box(x, floor.Y + 1, 3.4, floor.Height - 2)));
        sheet.Line(Trace.Join(joists), LineClass.Fine, Ink.Hatch);
    }

    // Short walls close the rooms under the slope; behind them it is attic.
    private static void Knees(Draughting sheet, Body body)
    {
        var storey = body.Storeys[0];
        var ink = sheet.InkOf(storey.Rows.SelectMany(row => row));
        var inset = StackWidths.Knee(body.House.Width);
        foreach (var x in (double[])[storey.Box.X + inset, storey.Box.Right - inset - 3])
            sheet.Solid(Trace.Around(new Box(x, storey.Box.Y, 3, storey.Box.Height)), ink, LineClass.Beyond);
        sheet.Solid(Trace.Around(new Box(storey.Box.X + inset, storey.Box.Y - 4, storey.Box.Width - (2 * inset), 4)), ink, LineClass.Beyond);
    }

    private static void Walls(Draughting sheet, Body body)
    {
        var house = body.House;
        var wall = sheet.Plan.Measures.Wall;
        var ink = sheet.InkOf(sheet.Plan.Tiles.Where(tile => tile.Place.Kind == Journal.PlaceKind.Side));
        if (ink == Ink.Faint) ink = sheet.InkOf(body.Storeys.SelectMany(storey => storey.Rows).Select(row => row[0]));
        foreach (var x in (double[])[house.X, house.Right - wall])
        {
            // Under a roof that comes down over its rooms the walls stand no higher than the eaves; in the earth they are of concrete.
            var top = Math.Max(house.Y, body.Stack.Levels[^1].IsUnderRoof ? body.RoofBox.Bottom : house.Y);
            var foot = body.Stack.Lowest < 0 ? Math.Clamp(sheet.Plan.Ground, top, house.Bottom) : house.Bottom;
            Box box = new(x, top, wall, foot - top);
            sheet.Solid(Trace.Around(box), ink);
            if (ink == Ink.Line) sheet.Line(Hatching.Lines(box.Corners, 45, 4), LineClass.Fine, Ink.Hatch);
            if (foot < house.Bottom) GroundPart.Concrete(sheet, new Box(x, foot, wall + 2, house.Bottom - foot), ink);
        }
    }

    private static bool Wide(this SectionMeasures measures) => measures.Width > 400;
}
