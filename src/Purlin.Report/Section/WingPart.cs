using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>What stands beside the house: the garage or carport to the right, the deck to the left.</summary>
internal static class WingPart
{
    public static void Draw(Draughting sheet)
    {
        if (sheet.Plan.Garage is { } garage) Garage(sheet, garage);
        if (sheet.Plan.Deck is { } deck) Deck(sheet, deck);
        if (sheet.Plan.Pool is { } pool) Pool(sheet, pool);
    }

    private static void Garage(Draughting sheet, Cell garage)
    {
        var ink = sheet.InkOf(garage);
        var box = garage.Box;
        var wall = box.Y + 26;
        var own = sheet.Plan.Shape.Garage is "detached";
        Spot high = own ? new(box.Centre.X, box.Y + 2) : new(box.X, box.Y + 4);
        IReadOnlyList<Spot> roof = own ? [new(box.X - 4, wall + 2), high, new(box.Right + 5, wall + 2), new(box.Right + 5, wall + 6), high with { Y = high.Y + 5 }, new(box.X - 4, wall + 6)]
            : [high, new(box.Right + 6, wall + 1), new(box.Right + 6, wall + 6), high with { Y = high.Y + 5 }];
        if (sheet.Plan.Shape.Garage == "carport") sheet.Solid(Trace.Around(new Box(box.Right - 5, wall + 4, 4, box.Bottom - wall - 4)), ink);
        else
        {
            sheet.Solid(Trace.Around(new Box(box.Right - 4, wall + 3, 4, box.Bottom - wall - 3)), ink);
            if (own) sheet.Solid(Trace.Around(new Box(box.X, wall + 3, 4, box.Bottom - wall - 3)), ink);
        }
        Car(sheet, box, Draughting.Lighter(ink));
        sheet.Solid(Trace.Polygon(roof), ink);
        Box slab = new(box.X, box.Bottom - 1, box.Width + 2, 6);
        sheet.Solid(Trace.Around(slab), ink);
        sheet.Line(Hatching.Concrete(slab.Corners), LineClass.Fine, Draughting.Lighter(ink));
        var size = sheet.Plan.Measures.Letter;
        Labels.Put(sheet, garage.Place.Name, ink == Ink.Line, new Spot(box.Centre.X - 1, wall + size + 5), box.Width - 8, size);
    }

    private static void Car(Draughting sheet, Box box, Ink ink)
    {
        double width = Math.Min(box.Width - 12, 62), x = box.Centre.X - width / 2 - 1, floor = box.Bottom - 2;
        double X(double share) => x + width * share;
        var body = Trace.At(X(0), floor - 4).To(X(0), floor - 9).By(X(0.01), floor - 12, X(0.1), floor - 12.5, X(0.2), floor - 13).By(X(0.3), floor - 20, X(0.34), floor - 20.5, X(0.46), floor - 20.5)
            .By(X(0.66), floor - 20.5, X(0.7), floor - 17, X(0.8), floor - 13).By(X(0.98), floor - 12, X(1), floor - 10, X(1), floor - 4).Shut()
            .With(Trace.At(X(0.28), floor - 13).By(X(0.34), floor - 18.5, X(0.38), floor - 18.5, X(0.48), floor - 18.5).To(X(0.48), floor - 13).Shut())
            .With(Trace.At(X(0.53), floor - 18.5).By(X(0.64), floor - 18.5, X(0.67), floor - 15.5, X(0.72), floor - 13).To(X(0.53), floor - 13).Shut());
        sheet.Line(body, LineClass.Fine, ink);
        foreach (var wheel in (double[])[0.2, 0.79])
        {
            sheet.Fill(Trace.Circle(X(wheel), floor - 3.6, 3.8), Ink.Paper);
            sheet.Line(Trace.Circle(X(wheel), floor - 3.6, 3.6).With(Trace.Circle(X(wheel), floor - 3.6, 1.5)), LineClass.Fine, ink);
        }
    }

    // A basin open to the sky, broken off at the edge of the sheet.
    private static void Pool(Draughting sheet, Cell pool)
    {
        var ink = sheet.InkOf(pool);
        double ground = sheet.Plan.Ground, left = pool.Box.X + 4, right = pool.Box.Right + 8, bottom = pool.Box.Bottom - 4;
        sheet.Line(Trace.Through(new Spot(right, bottom), new Spot(left + 10, bottom - 3), new Spot(left, bottom - 12), new Spot(left, ground), new Spot(pool.Box.X - 2, ground)), LineClass.Heavy, ink);
        List<Trace> waves = [];
        for (var row = 0; row < 2; row++)
        {
            var y = ground + 7 + (row * 8);
            var wave = Trace.At(left + 2, y);
            for (var x = left + 2; x < right - 8; x += 10) wave = wave.By(x + 3, y - 3, x + 7, y + 3, x + 10, y);
            waves.Add(wave);
        }
        sheet.Line(Trace.Join(waves), LineClass.Fine, Draughting.Lighter(ink));
        Labels.Put(sheet, pool.Place.Name, ink == Ink.Line, new Spot(pool.Box.Centre.X, ground - 7), pool.Box.Width, sheet.Plan.Measures.Letter);
    }

    private static void Deck(Draughting sheet, Cell deck)
    {
        var ink = sheet.InkOf(deck);
        var box = deck.Box;
        double floor = Math.Min(sheet.Plan.Bodies[0].House.Bottom, sheet.Plan.Ground), rail = floor - 25, ground = sheet.Plan.Ground;
        List<Trace> balusters = [];
        for (var x = box.X + 6; x < box.Right - 2; x += 5) balusters.Add(Trace.Between(x, rail + 2.5, x, floor - 1));
        sheet.Line(Trace.Join(balusters), LineClass.Fine, Draughting.Lighter(ink));
        sheet.Line(Trace.Around(new Box(box.X, rail, box.Width, 2.5)).With(Trace.Around(new Box(box.X, rail, 3.5, floor - rail))), LineClass.Beyond, ink);
        Box boards = new(box.X - 2, floor, box.Width + 4, 4);
        if (ground - floor > 8) foreach (var x in (double[])[box.X + 3, box.Right - 12]) sheet.Solid(Trace.Around(new Box(x, floor + 4, 5, ground - floor + 4)), ink, LineClass.Beyond);
        sheet.Solid(Trace.Around(boards), ink);
        sheet.Line(Hatching.WoodGrain(boards), LineClass.Fine, Draughting.Lighter(ink));
        var size = sheet.Plan.Measures.Letter;
        Labels.Put(sheet, deck.Place.Name, ink == Ink.Line, new Spot(box.Centre.X, rail - 13), box.Width - 2, size);
    }
}
