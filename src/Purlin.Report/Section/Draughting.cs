using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;
using Purlin.Report.Writing;

namespace Purlin.Report.Section;

/// <summary>The sheet while it is being drawn: the plan, how each place stands, and the marks so far.</summary>
internal sealed class Draughting(SectionPlan plan, IReadOnlyDictionary<EntryName, Standing> standings, Phrase words)
{
    private readonly List<Mark> marks = [];
    private readonly List<Mark> leaders = [];
    private readonly List<Mark> letters = [];
    private readonly List<Mark> balloons = [];

    public SectionPlan Plan { get; } = plan;

    /// <summary>Turns of phrase in the language of the drawing.</summary>
    public Phrase Words { get; } = words;

    /// <summary>Lines and tones, then leaders, then letters, then balloons: a name is never struck through by a leader.</summary>
    public ImmutableArray<Mark> Marks => [.. marks, .. leaders, .. letters, .. balloons];

    public Standing Of(Place place) => standings.GetValueOrDefault(place.Id, Standing.Untouched);

    /// <summary>Full ink when one of the cells was looked at, else faint.</summary>
    public Ink InkOf(params IEnumerable<Cell> cells) => cells.Any(cell => Of(cell.Place).Looked) ? Ink.Line : Ink.Faint;

    /// <summary>Ink for furnishings and hatches that goes with the ink of the lines.</summary>
    public static Ink Lighter(Ink ink) => ink == Ink.Line ? Ink.Hatch : Ink.Faint;

    public void Line(Trace trace, LineClass line, Ink ink) => marks.Add(new Mark.Stroke(trace, line, ink));

    public void Fill(Trace trace, Ink ink) => marks.Add(new Mark.Area(trace, ink));

    /// <summary>Solid material that is cut: toned, with a thick outline. Only its outline while it has not been looked at.</summary>
    public void Solid(Trace trace, Ink ink, LineClass line = LineClass.Cut)
    {
        marks.Add(new Mark.Area(trace, ink == Ink.Line ? Ink.Wash : Ink.Paper));
        marks.Add(new Mark.Stroke(trace, line, ink));
    }

    /// <summary>A mark made elsewhere: letters among letters, all else among lines.</summary>
    public void Mark(Mark mark) => (mark is Mark.Lettering ? letters : marks).Add(mark);

    public void Letter(Mark.Lettering lettering) => letters.Add(lettering);

    public void Pin(Mark.Balloon balloon, IEnumerable<Mark> leading)
    {
        leaders.AddRange(leading);
        balloons.Add(balloon);
    }

    public void Float(Mark mark) => balloons.Add(mark);
}
