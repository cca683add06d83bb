using System.Collections.Immutable;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Writing;

namespace Purlin.Report.Section;

/// <summary>
/// The house cut through, drawn from its facts: the way into the app and the map of the report. Places not yet looked at are faint, looked
/// at they stand in full ink; an open loose end is an untied knot; findings are numbered balloons with their bars.
/// </summary>
public static class SectionDrawing
{
    /// <summary>Draws the house.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="judged">Its judgement; none while it is not worked out: then no pins and no knots.</param>
    /// <param name="options">Form of the sheet.</param>
    public static Sheet Draw(Inspection inspection, JudgedInspection? judged, SectionOptions options)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(options);
        var plan = SectionLayout.Of(inspection, options.Front ? SectionMeasures.Front : options.Wide ? SectionMeasures.Wide : SectionMeasures.Upright);
        var standings = Standing.Of(inspection, judged, options);
        Phrase words = new(options.Words);
        Draughting sheet = new(plan, standings, words);
        GroundPart.Draw(sheet);
        RoofPart.Draw(sheet);
        StoreyPart.Draw(sheet);
        WingPart.Draw(sheet);
        SidePart.Draw(sheet);
        if (options.Here is { } here && plan.All.FirstOrDefault(cell => cell.Place.Id == here) is { } cell) Here(sheet, cell.Box);
        var pins = Pin.All(judged, options);
        if (options.Pins && options.OnePin) PinPart.Heaviest(sheet);
        else if (options.Pins && options.Wide && pins.Count <= PinPart.MostLeaders) PinPart.InMargins(sheet, pins);
        else if (options.Pins) PinPart.InPlace(sheet);
        if (options.Knots) PinPart.Knots(sheet);
        return new Sheet
        {
            Width = plan.Measures.Width,
            Height = plan.Height,
            Title = words.Say("drawing.house"),
            Description = Describe(plan, sheet),
            Marks = sheet.Marks,
            Targets = [.. plan.All.Select(cell => new Target(cell.Place.Id.ToString(), cell.Box, Say(cell.Place.Name, sheet.Of(cell.Place), words)))],
        };
    }

    private static string Describe(SectionPlan plan, Draughting sheet)
    {
        var places = plan.All.ToArray();
        var pins = places.SelectMany(cell => sheet.Of(cell.Place).Pins).Select(pin => pin.Number).Distinct().Count();
        return sheet.Words.Say("drawing.house.told", ("looked", places.Count(cell => sheet.Of(cell.Place).Looked)), ("places", places.Length), ("pins", pins));
    }

    private static string Say(string name, Standing standing, Phrase words)
    {
        List<string> parts = [words.Place(name), words.Say(standing.Looked ? "drawing.place.looked" : "drawing.place.not-yet")];
        if (standing.Pins.Count > 0) parts.Add(words.Say("drawing.place.pins", ("count", standing.Pins.Count), ("heaviest", standing.Pins[0].Words)));
        if (standing.OpenEnds > 0) parts.Add(words.Say("drawing.place.open", ("count", standing.OpenEnds)));
        return string.Join(". ", parts);
    }

    // Where the inspector stands: ticks at the four corners, as on a camera's focusing screen.
    private static void Here(Draughting sheet, Box box)
    {
        var inner = box.Inset(2);
        var ticks = ImmutableArray.CreateBuilder<Trace>();
        foreach (var (corner, right, down) in ((Spot, int, int)[])[(inner.Corners[0], 1, 1), (inner.Corners[1], -1, 1), (inner.Corners[2], -1, -1), (inner.Corners[3], 1, -1)])
            ticks.Add(Trace.Through(new Spot(corner.X + right * 11, corner.Y), corner, new Spot(corner.X, corner.Y + down * 11)));
        sheet.Line(Trace.Join(ticks), LineClass.Heavy, Ink.Line);
    }
}
