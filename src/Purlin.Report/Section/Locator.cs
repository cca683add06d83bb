using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;
using Purlin.Report.Writing;

namespace Purlin.Report.Section;

/// <summary>The house as a mere outline with some of its places filled: where in it a matter is, at a glance.</summary>
internal static class Locator
{
    /// <summary>Draws it; nothing when none of the places is in the drawing.</summary>
    public static Sheet? Draw(Inspection inspection, IReadOnlyList<EntryName> places, Tongue words)
    {
        var plan = SectionLayout.Of(inspection, SectionMeasures.Front);
        Cell[] filled = [.. plan.All.Where(cell => places.Contains(cell.Place.Id))];
        if (filled.Length == 0) return null;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        foreach (var cell in filled.Where(cell => !plan.Tiles.Contains(cell) && !plan.Roofs.Contains(cell))) marks.Add(new Mark.Area(Trace.Around(cell.Box), Ink.Text));
        var outline = Trace.Join(plan.Bodies.Where(body => !body.IsRoofed).Select(body => Trace.Through([.. body.RoofLine])));
        if (filled.Any(plan.Roofs.Contains)) marks.Add(new Mark.Stroke(outline, LineClass.Heavy, Ink.Text));
        marks.Add(new Mark.Stroke(outline, LineClass.Beyond, Ink.Line));
        foreach (var box in Outlines(plan)) marks.Add(new Mark.Stroke(Trace.Around(box), LineClass.Beyond, Ink.Line));
        marks.Add(new Mark.Stroke(Trace.Between(plan.Earth.X, plan.Ground, plan.Earth.Right, plan.Ground), LineClass.Beyond, Ink.Line));
        var height = plan.Earth.Y;
        if (filled.Any(plan.Tiles.Contains)) Sides(marks, plan, filled, ref height);
        return new Sheet { Width = plan.Measures.Width, Height = height + 4, Title = words.Say("drawing.locator"), Description = words.Say("report.row", ("list", SaidValue.Of(filled.Select(cell => new Phrase(words).Place(cell.Place.Name))))), Marks = marks.ToImmutable() };
    }

    private static IEnumerable<Box> Outlines(SectionPlan plan)
    {
        foreach (var body in plan.Bodies)
        {
            yield return body.House;
            foreach (var storey in body.Storeys) yield return storey.Box;
            yield return body.Below;
        }
        if (plan.Garage is { } garage) yield return garage.Box;
        if (plan.Deck is { } deck) yield return deck.Box with { Y = deck.Box.Bottom - 14, Height = 14 };
    }

    // The four sides as a row of small fields under the house.
    private static void Sides(ImmutableArray<Mark>.Builder marks, SectionPlan plan, Cell[] filled, ref double height)
    {
        var width = (plan.Earth.Width - 3 * 8) / 4;
        for (var index = 0; index < plan.Tiles.Count && index < 4; index++)
        {
            Box box = new(plan.Earth.X + index * (width + 8), plan.Earth.Y + 4, width, 34);
            if (filled.Contains(plan.Tiles[index])) marks.Add(new Mark.Area(Trace.Around(box), Ink.Text));
            marks.Add(new Mark.Stroke(Trace.Around(box), LineClass.Beyond, Ink.Line));
        }
        height = plan.Earth.Y + 42;
    }
}
