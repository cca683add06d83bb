using Purlin.Journal;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>The sides of the house as small elevations under the section, and other buildings of the lot beside them.</summary>
internal static class SidePart
{
    private static readonly string[] compass = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];

    public static void Draw(Draughting sheet)
    {
        foreach (var tile in sheet.Plan.Tiles) Draw(sheet, tile);
    }

    /// <summary>The compass point a side faces, when the front's is known: seen from the street, the left side is a quarter turn on.</summary>
    public static string? Faces(string name, string? front)
    {
        var at = Array.IndexOf(compass, front?.ToUpperInvariant());
        if (at < 0) return null;
        return Which(name) switch
        {
            0 => compass[at],
            1 => compass[(at + 2) % 8],
            2 => compass[(at + 4) % 8],
            3 => compass[(at + 6) % 8],
            _ => null,
        };
    }

    private static int Which(string name) => name switch
    {
        _ when name.StartsWith("front", StringComparison.OrdinalIgnoreCase) => 0,
        _ when name.StartsWith("left", StringComparison.OrdinalIgnoreCase) => 1,
        _ when name.StartsWith("rear", StringComparison.OrdinalIgnoreCase) || name.StartsWith("back", StringComparison.OrdinalIgnoreCase) => 2,
        _ when name.StartsWith("right", StringComparison.OrdinalIgnoreCase) => 3,
        _ => -1,
    };

    private static void Draw(Draughting sheet, Cell tile)
    {
        var ink = sheet.InkOf(tile);
        var size = sheet.Plan.Measures.Letter;
        var lettering = tile.Box.Bottom - 4;
        Box picture = new(tile.Box.X + 2, tile.Box.Y + 2, tile.Box.Width - 4, tile.Box.Height - size - 10);
        sheet.Line(Trace.Between(tile.Box.X, picture.Bottom, tile.Box.Right, picture.Bottom), LineClass.Cut, ink);
        if (tile.Place.Kind == PlaceKind.Side) Elevation(sheet, tile, picture, ink);
        else if (tile.Place.Kind == PlaceKind.Site) Pool(sheet, picture, ink);
        else if (tile.Place.Kind == PlaceKind.Deck) Deck(sheet, picture, ink);
        else Shed(sheet, picture, ink);
        var faces = tile.Place.Kind == PlaceKind.Side ? Faces(tile.Place.Name, sheet.Plan.Shape.Facing) : null;
        var name = sheet.Words.Place(tile.Place.Name);
        if (faces is not null) name = $"{name}, {sheet.Words.Word(faces)}";
        if (Fonts.Typesetting.Width(name, size, Fonts.Cut.Bold) > tile.Box.Width) name = sheet.Words.Place(tile.Place.Name);
        sheet.Letter(new Mark.Lettering(Fonts.Typesetting.Fit(name, size, Fonts.Cut.Bold, tile.Box.Width), new Spot(tile.Box.Centre.X, lettering), size)
        {
            Ink = ink == Ink.Line ? Ink.Text : Ink.Quiet,
            Cut = ink == Ink.Line ? Fonts.Cut.Bold : Fonts.Cut.Regular,
        });
    }

    private static void Pool(Draughting sheet, Box picture, Ink ink)
    {
        double left = picture.X + 8, right = picture.Right - 8, top = picture.Bottom;
        var basin = Trace.At(left, top - 26).By(left, top - 36, right, top - 36, right, top - 26).By(right, top - 8, left, top - 8, left, top - 26);
        List<Trace> waves = [];
        for (var row = 0; row < 2; row++)
        {
            var wave = Trace.At(left + 12, top - 26 + (row * 6));
            for (var x = left + 12; x < right - 20; x += 10) wave = wave.By(x + 3, top - 29 + (row * 6), x + 7, top - 23 + (row * 6), x + 10, top - 26 + (row * 6));
            waves.Add(wave);
        }
        sheet.Fill(basin, Ink.Paper);
        sheet.Line(basin, LineClass.Cut, ink);
        sheet.Line(Trace.Join(waves), LineClass.Fine, Draughting.Lighter(ink));
    }

    private static void Deck(Draughting sheet, Box picture, Ink ink)
    {
        double left = picture.X + 6, right = picture.Right - 6, floor = picture.Bottom - 14, rail = floor - 18;
        List<Trace> balusters = [];
        for (var x = left + 5; x < right - 2; x += 5) balusters.Add(Trace.Between(x, rail + 2, x, floor));
        sheet.Line(Trace.Join(balusters), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Line(Trace.Around(new Box(left, rail, right - left, 2.5)), LineClass.Beyond, ink);
        foreach (var x in (double[])[left + 3, right - 7]) sheet.Solid(Trace.Around(new Box(x, floor + 4, 4, 10)), ink, LineClass.Beyond);
        sheet.Solid(Trace.Around(new Box(left - 2, floor, right - left + 4, 4)), ink);
    }

    private static void Elevation(Draughting sheet, Cell tile, Box picture, Ink ink)
    {
        var shape = sheet.Plan.Shape;
        var which = Which(tile.Place.Name);
        var gableEnd = which is not (1 or 3);
        double width = Math.Min(picture.Width * 0.7, 112), storeys = Math.Min(shape.Storeys, 3), roof = shape.RoofForm == "flat" ? 5 : picture.Height * (storeys > 1 ? 0.3 : 0.36);
        var wall = Math.Min(picture.Height - roof - 4, picture.Height * (storeys > 1 ? 0.62 : 0.42));
        Box walls = new(picture.Centre.X - width / 2, picture.Bottom - wall, width, wall);
        if (shape.Garage == "attached" && which is 0 or 2) Annex(sheet, walls, which == 0 ? 1 : -1, picture, ink);
        sheet.Fill(Trace.Around(walls), Ink.Paper);
        if (ink == Ink.Line) sheet.Line(Hatching.Lines(walls.Corners, 0, 3.6), LineClass.Fine, Ink.Wash);
        sheet.Line(Trace.Around(walls), LineClass.Beyond, ink);
        Openings(sheet, walls, (int)storeys, which, ink);
        Roof(sheet, walls, roof, shape.RoofForm, gableEnd, ink);
    }

    private static void Roof(Draughting sheet, Box walls, double rise, string form, bool gableEnd, Ink ink)
    {
        var over = 4.0;
        double left = walls.X - over, right = walls.Right + over, top = walls.Y - rise, middle = walls.Centre.X;
        IReadOnlyList<Spot> outline = (form, gableEnd) switch
        {
            ("flat", _) => [new(left + 2, walls.Y), new(left + 2, top), new(right - 2, top), new(right - 2, walls.Y)],
            ("hip", _) => [new(left, walls.Y), new(middle - walls.Width * (gableEnd ? 0.14 : 0.28), top), new(middle + walls.Width * (gableEnd ? 0.14 : 0.28), top), new(right, walls.Y)],
            ("shed", true) => [new(left, walls.Y), new(left, walls.Y - rise * 0.35), new(right, top), new(right, walls.Y)],
            ("gambrel", true) => [new(left, walls.Y), new(walls.X + walls.Width * 0.14, top + rise * 0.4), new(middle, top), new(walls.Right - walls.Width * 0.14, top + rise * 0.4), new(right, walls.Y)],
            (_, true) => [new(left, walls.Y), new(middle, top), new(right, walls.Y)],
            _ => [new(left, walls.Y), new(left, top), new(right, top), new(right, walls.Y)],
        };
        sheet.Fill(Trace.Polygon(outline), ink == Ink.Line && (!gableEnd || form == "hip") ? Ink.Wash : Ink.Paper);
        if (!gableEnd || form == "hip") sheet.Line(Hatching.Lines(outline, 0, 3.4), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Line(Trace.Polygon(outline), LineClass.Beyond, ink);
        if (gableEnd && form is "gable" or "gambrel") sheet.Line(Trace.Circle(middle, walls.Y - rise * 0.42, 2.4), LineClass.Fine, ink);
        if (gableEnd && form == "gable") sheet.Line(Trace.Through(new Spot(left, walls.Y), new Spot(middle, top), new Spot(right, walls.Y)), LineClass.Cut, ink);
    }

    private static void Openings(Draughting sheet, Box walls, int storeys, int which, Ink ink)
    {
        var tall = walls.Height / storeys;
        var opening = new Trace([]);
        for (var storey = 0; storey < storeys; storey++)
        {
            var y = walls.Bottom - storey * tall - tall * 0.78;
            double height = tall * 0.42, width = Math.Min(10, walls.Width * 0.15);
            double[] at = storey == 0 && which is 0 or 2 ? [0.16, 0.72] : which is 1 or 3 ? [0.2, 0.66] : [0.16, 0.43, 0.7];
            foreach (var share in at) opening = opening.With(Furnishing.Window(walls.X + walls.Width * share, y, width, height));
        }
        if (which == 0) opening = opening.With(Trace.Around(new Box(walls.Centre.X - 4, walls.Bottom - tall * 0.76, 8, tall * 0.76))).With(Trace.Around(new Box(walls.Centre.X - 7, walls.Bottom - 2, 14, 2)));
        if (which == 2) opening = opening.With(Furnishing.Window(walls.Centre.X - 8, walls.Bottom - tall * 0.74, 16, tall * 0.74));
        sheet.Line(opening, LineClass.Fine, ink);
    }

    private static void Annex(Draughting sheet, Box walls, int side, Box picture, Ink ink)
    {
        var width = Math.Min(24, (picture.Width - walls.Width) / 2 - 1);
        if (width < 8) return;
        Box annex = new(side > 0 ? walls.Right : walls.X - width, walls.Bottom - 19, width, 19);
        sheet.Line(Trace.Around(annex), LineClass.Beyond, ink);
        double eave = side > 0 ? annex.Right + 2 : annex.X - 2, inner = side > 0 ? annex.X : annex.Right;
        sheet.Line(Trace.Through(new Spot(inner, annex.Y - 7), new Spot(eave, annex.Y), new Spot(inner, annex.Y)), LineClass.Beyond, ink);
        if (side > 0) sheet.Line(Hatching.Lines(new Box(annex.X + 3, annex.Y + 5, width - 6, 14).Corners, 0, 3.4).With(Trace.Around(new Box(annex.X + 3, annex.Y + 5, width - 6, 14))), LineClass.Fine, ink);
    }

    private static void Shed(Draughting sheet, Box picture, Ink ink)
    {
        double width = Math.Min(picture.Width * 0.5, 56), wall = picture.Height * 0.4;
        Box walls = new(picture.Centre.X - width / 2, picture.Bottom - wall, width, wall);
        sheet.Line(Trace.Around(walls).With(Furnishing.Door(walls.Centre.X, walls.Bottom, 11, wall * 0.8)), LineClass.Beyond, ink);
        Roof(sheet, walls, picture.Height * 0.26, "gable", gableEnd: true, ink);
    }
}
