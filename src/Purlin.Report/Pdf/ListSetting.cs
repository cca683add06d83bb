using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Every matter in one line: number, bars, what, where, whom, page; by when in the margin. Each line leads to its
/// matter.</summary>
internal static class ListSetting
{
    private const double Row = 15.6;
    private static readonly Style cell = new(9.4, 12);
    private static readonly Style small = new(8.6, 11, Cut.Regular, Ink.Quiet);
    private static readonly (double X, double Width) by = (0, 74), number = (78, 19), bars = (101, 24), what = (132, 208), where = (346,
        88), whom = (440, 76);

    public static IReadOnlyList<Atom> Of(Block.MatterList list, Phrase words, IReadOnlyList<Group> groups)
    {
        IReadOnlyList<Group> within = [.. groups, new Group("Table")];
        var head = Head(words, within);
        List<Atom> atoms = [head];
        foreach (var group in list.Matters.GroupBy(matter => matter.Due.By))
        {
            Matter[] matters = [.. group];
            var when = Lines.Of(Phrase.Sentence(words.Word(group.Key)), cell with { Cut = Cut.Bold }, by.Width);
            for (var index = 0; index < matters.Length; index++) atoms.Add(Line(matters[index], index, index == matters.Length - 1, when,
                within, head, words));
        }
        return atoms;
    }

    private static Atom Head(Phrase words, IReadOnlyList<Group> groups)
    {
        (string Words, double X)[] cells = [(words.Say("report.column.by-when"), by.X), ("", number.X), (words.Say("report.column.matter"),
            what.X), (words.Say("report.column.where"), where.X), (words.Say("report.column.whom"), whom.X)];
        List<Stroke> strokes = [.. cells.Select(one => new Stroke(new Leaf("TH") { Scope = "Column" }, (canvas, x, y) =>
            canvas.Text(one.Words + " ", x + one.X, y + 10, small.Size, small.Cut, small.Ink)))];
        strokes.Add(new Stroke(new Leaf("TH") { Scope = "Column" }, (canvas, x, y) =>
        {
            canvas.TextRight(words.Say("report.column.page"), x + Measures.Text, y + 10, small.Size, small.Cut, small.Ink);
            canvas.Rule(x, y + 14, x + Measures.Text, y + 14, 1.4);
        }));
        return new Atom { Height = 15, Before = 8, Groups = [.. groups, new Group("TR")], Run = strokes, Keep = true, Strokes = strokes };
    }

    private static Atom Line(Matter matter, int index, bool last, IReadOnlyList<IReadOnlyList<Bit>> when, IReadOnlyList<Group> groups,
        Atom head, Phrase words)
    {
        Leaf[] leaves = [new("TH") { Scope = "Row" }, new("TD"), new("TD"), new("TD"), new("TD"), new("TD")];
        var line = Row * 0.72;
        // A title a little too long is set a little smaller before it is cut.
        var size = Typesetting.Width(matter.Title, cell.Size, Cut.Bold) <= what.Width ? cell.Size : small.Size;
        Stroke Cell(int at, string text, (double X, double Width) column, Cut cut = Cut.Regular) => new(leaves[at], (canvas, x, y) =>
            canvas.Text(Typesetting.Fit(text, cell.Size, cut, column.Width) + " ", x + column.X, y + line, cell.Size, cut));
        List<Stroke> strokes =
        [
            new Stroke(leaves[0], (canvas, x, y) =>
            {
                // A group that goes on says again, at the head of its page, by when.
                if (index > 0 && y < Measures.Top + 2 * Row) canvas.Bits(when[0], x, y + line, cell with { Cut = Cut.Bold });
                else if (index < when.Count) canvas.Bits(when[index], x, y + line, cell with { Cut = Cut.Bold });
                Number(canvas, matter, x, y);
            }),
            new Stroke(leaves[1], (canvas, x, y) => Bars(canvas, matter, x, y)),
            new Stroke(leaves[2], (canvas, x, y) => canvas.Link(matter.Anchor, new Box(x + what.X, y, what.Width, Row), matter.Title, () =>
                canvas.Text(Typesetting.Fit(matter.Title, size, Cut.Bold, what.Width) + " ", x + what.X, y + line, size, Cut.Bold))),
            Cell(3, Where(matter, words), where), Cell(4, words.ShortTrade(matter.Trade), whom),
            new Stroke(leaves[5], (canvas, x, y) =>
            {
                canvas.TextRight(canvas.Places.TryGetValue(matter.Anchor, out var place) ? $"{place.Page}" : "", x + Measures.Text,
                    y + line, cell.Size);
                canvas.Rule(x + (last ? 0 : number.X), y + Row, x + Measures.Text, y + Row, last ? 0.9 : 0.25, last ? Ink.Line : Ink.Faint);
            }),
        ];
        // Words of two lines need a second line to stand beside.
        return new Atom
        {
            Height = last && when.Count > index + 1 ? Row * (when.Count - index) : Row,
            Groups = [.. groups,
            new Group("TR")],
            Run = leaves,
            Head = head,
            Keep = index == 0 && !last,
            Strokes = strokes
        };
    }

    private static void Number(Canvas canvas, Matter matter, double x, double y)
    {
        var heavy = matter.Weight == Weight.MakeSafe;
        if (heavy) canvas.Fill(new Box(x + number.X, y + 1.6, number.Width, Row - 3.2), Ink.Accent);
        canvas.Link(matter.Anchor, new Box(x + number.X, y, number.Width, Row), $"{matter.Number}", () =>
            canvas.TextRight($"{matter.Number} ", x + number.X + number.Width - 1.5, y + Row * 0.72, cell.Size, Cut.Bold, heavy
            ? Ink.Paper : Ink.Text));
    }

    private static void Bars(Canvas canvas, Matter matter, double x, double y)
    {
        var ink = matter.Weight == Weight.MakeSafe ? Ink.Accent : Ink.Line;
        for (var bar = 0; bar < 5; bar++)
        {
            Box box = new(x + bars.X + bar * 4.7, y + 4, 3.4, Row - 8);
            if (bar < (int)matter.Weight) canvas.Fill(box, ink);
            else canvas.Frame(box, 0.35, Ink.Faint);
        }
        canvas.Hidden($"{canvas.Words.Word(matter.Weight)} ", x + bars.X, y + Row * 0.72, 1);
    }

    private static string Where(Matter matter, Phrase words) => matter.Places.Count == 0 ? words.Say("report.the-house")
        : matter.Places.Count == 1 ? matter.Places[0] : $"{matter.Places[0]}, +{matter.Places.Count - 1}";
}
