using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Sets chapters as pieces of the flow.</summary>
internal sealed class ChapterSetting(PictureSetting pictures)
{
    public const string MattersTitle = "The matters, heaviest first";

    /// <summary>A chapter begins a page when it is long enough to want one.</summary>
    public Piece Of(Chapter chapter, bool newPage)
    {
        IReadOnlyList<Group> groups = [new Group("Sect")];
        List<Atom> atoms = [.. Title(chapter.Title, chapter.Id, groups)];
        if (chapter.Lead.Length > 0) atoms.AddRange(TextSetting.Paragraph(chapter.Lead, Style.Lead, Measures.Text * 0.86, groups, before: 12));
        var headings = 0;
        foreach (var block in chapter.Blocks) atoms.AddRange(Block(block, groups, $"{chapter.Id}-{headings++}"));
        return Named(new Piece(atoms, [], newPage), chapter.Title);
    }

    /// <summary>The page before the matters: the house with every number.</summary>
    public static Piece Map(ReportModel model, Group section) => Named(new Piece(
        [.. Title(MattersTitle, "matters", [section]), PictureSetting.Drawing(model.Map, model.MapCaption, Measures.Text, [section], tallest: 420), .. TableSetting.Of(model.Weights, [section])], [], true), MattersTitle);

    /// <summary>The matters, each made for the room it finds.</summary>
    public IEnumerable<Func<double, Piece?>> Matters(ReportModel model, Group section)
    {
        MatterSetting setting = new(pictures);
        foreach (var weight in model.Matters.GroupBy(matter => matter.Weight))
        {
            IReadOnlyList<Group> groups = [section, new Group("Sect")];
            IReadOnlyList<Atom> head = [.. TextSetting.Heading(Phrase.Sentence(weight.Key.Word()), "H2", Style.Group, 2, $"weight-{(int)weight.Key}", groups, before: 30), .. TextSetting.Paragraph(Phrase.Meaning(weight.Key), Style.Body, Measures.Text, groups, before: 0, keep: true)];
            foreach (var matter in weight)
            {
                var above = matter == weight.First() ? head : [];
                yield return room => setting.Of(matter, groups, room, above) is { } piece
                    ? Named(above.Count == 0 ? piece : new Piece([.. above, .. piece.Main], Lowered(piece.Margin, above)), MattersTitle)
                    : null;
            }
        }
    }

    private static Piece Named(Piece piece, string section)
    {
        foreach (var atom in piece.Main.Concat(piece.Margin)) atom.Section = section;
        return piece;
    }

    // The margin of the first matter under a weight begins beside the matter, not beside the heading above it.
    private static IReadOnlyList<Atom> Lowered(IReadOnlyList<Atom> margin, IReadOnlyList<Atom> head)
    {
        var height = head.Sum(atom => atom.Height) + head.Skip(1).Sum(atom => atom.Before);
        return [new Atom { Height = height, Before = head[0].Before, Keep = true, Strokes = [] }, .. margin];
    }

    private static IEnumerable<Atom> Title(string title, string anchor, IReadOnlyList<Group> groups)
    {
        var lines = TextSetting.Heading(title, "H1", Style.Chapter, 1, anchor, groups, before: 34);
        foreach (var line in lines.SkipLast(1)) yield return line;
        var last = lines[^1];
        yield return new Atom
        {
            Height = last.Height + 16,
            Before = last.Before,
            Groups = groups,
            Run = last.Run,
            Keep = true,
            Entry = last.Entry,
            Strokes = [.. last.Strokes, new Stroke(last.Strokes[0].Leaf, (canvas, x, y) => GroundLine(canvas, x, y + last.Height + 3))],
        };
    }

    // The ground line of a section drawing, with the earth under it.
    private static void GroundLine(Canvas canvas, double x, double y)
    {
        canvas.Rule(x, y, x + Measures.Text, y, 2);
        SheetOnPaper.Put(canvas, new Mark.Stroke(Hatching.Earth(new Box(0, 0, Measures.Text, 10).Corners), LineClass.Fine, Ink.Hatch), x, y + 0.4, 1);
    }

    private IEnumerable<Atom> Block(Block block, IReadOnlyList<Group> groups, string anchor) => block switch
    {
        Block.Heading heading => TextSetting.Heading(heading.Text, "H2", Style.Heading, 2, heading.Anchor ?? anchor, groups),
        Block.Paragraph { Aside: true } paragraph => TextSetting.Paragraph(paragraph.Text, Style.Small, Measures.Text * 0.86, groups),
        Block.Paragraph paragraph => TextSetting.Paragraph(paragraph.Text, Style.Body, Measures.Text * 0.86, groups),
        Block.Items items => TextSetting.Items(items.Lines, items.Numbered, items.Fine ? Style.Fine : Style.Body, Measures.Text * 0.9, groups, before: items.Fine ? 1.5 : 5),
        Block.Table table => TableSetting.Of(table, groups),
        Block.Pictures { Small: true } shown => pictures.Of(shown.Shown, shown.Shown.Count < 3 ? 2 : 3, Measures.Text, groups, tallest: 210),
        Block.Pictures shown => pictures.Of(shown.Shown, 1, Measures.Text, groups, tallest: 380),
        Block.Figure figure => [PictureSetting.Drawing(figure.Wide, figure.Caption, Measures.Text, groups)],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
