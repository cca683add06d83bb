using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets the chapters of a paper as pieces of the flow.</summary>
internal sealed class ChapterSetting(PictureSetting pictures, Flow flow)
{
    private bool annex;

    public void Add(Chapter chapter)
    {
        IReadOnlyList<Group> groups = [new Group("Sect")];
        annex |= chapter.Form == ChapterForm.Annex;
        var reference = chapter.Form is ChapterForm.Reference or ChapterForm.Annex;
        var voice = !reference ? Voice.Across : annex ? Voice.Annex : Voice.Reference;
        if (chapter.Form is ChapterForm.Annex or ChapterForm.Sheet) flow.NewPage();
        if (reference) flow.TwoColumns(16);
        else flow.OneColumn();
        var kept = Head(chapter, voice, groups);
        if (chapter.Lead.Length > 0) kept.AddRange(TextSetting.Paragraph(chapter.Lead, reference ? voice.Body : Style.Lead, voice.Width, groups, before: 4, keep: true));
        foreach (var block in chapter.Blocks)
        {
            foreach (var piece in Pieces(block, chapter, voice, groups, kept))
            {
                foreach (var atom in piece.Tracks.SelectMany(track => track.Atoms)) if (atom.Section.Length == 0) atom.Section = chapter.Title;
                flow.Add(piece);
            }
        }
        if (kept.Count > 0) flow.Add(Piece.Of(kept));
    }

    private static List<Atom> Head(Chapter chapter, Voice voice, IReadOnlyList<Group> groups) => chapter.Title.Length == 0 ? [] :
        [.. TextSetting.Heading(chapter.Title, "H2", voice.Chapter, 2, chapter.Id, groups, voice.Width, before: 20).Select((line, index) => index > 0 ? line : new Atom
        {
            Height = line.Height, Before = line.Before, Groups = line.Groups, Run = line.Run, Keep = true, Entry = new Landmark(1, line.Entry!.Text, line.Entry.Anchor),
            Strokes = [new Stroke(line.Strokes[0].Leaf, (canvas, x, y) =>
            {
                if (y > Measures.Top + 6) canvas.Rule(x, y - 6, x + voice.Width, y - 6, 2);
                line.Strokes[0].Draw(canvas, x, y);
            })],
        })];

    // The heading goes before the first atoms that stand in one column; what is beside something is set after it.
    private IEnumerable<Piece> Pieces(Block block, Chapter chapter, Voice voice, IReadOnlyList<Group> groups, List<Atom> kept)
    {
        if (Atoms(block, voice, groups) is { } atoms)
        {
            if (atoms.Count == 0) yield break;
            var whole = Piece.Of([.. kept, .. atoms]);
            kept.Clear();
            yield return whole;
            yield break;
        }
        if (kept.Count > 0) yield return Piece.Of([.. kept]);
        kept.Clear();
        switch (block)
        {
            case Block.Weighing weighing:
                // Not without the first of its matters.
                yield return Piece.Of([.. TextSetting.Heading(weighing.Title, "H3", new Style(15, 19, Cut.Bold), 2, weighing.Anchor, groups, voice.Width, before: 0), .. TextSetting.Paragraph(weighing.Meaning, voice.Body, voice.Width, groups, before: 0, keep: true)]) with { Before = 16, Least = 240 };
                break;
            case Block.Opening opening: yield return OpeningSetting.Of(opening, groups); break;
            case Block.Card card:
                foreach (var piece in new MatterSetting(pictures, chapter.Title).Of(card.Matter, groups)) yield return piece;
                break;
            case Block.Jobs jobs:
                foreach (var piece in new JobSetting(pictures).Of(jobs, groups)) yield return piece;
                break;
            case Block.Folded folded:
                foreach (var inner in folded.Short)
                    foreach (var piece in Pieces(inner, chapter, voice, groups, kept)) yield return piece;
                break;
            default: throw new System.Diagnostics.UnreachableException();
        }
    }

    private IReadOnlyList<Atom>? Atoms(Block block, Voice voice, IReadOnlyList<Group> groups) => block switch
    {
        Block.Heading heading => TextSetting.Heading(heading.Text, "H3", voice.Heading, 2, heading.Anchor ?? "", groups, voice.Width, before: annex ? 7 : 9),
        Block.Paragraph paragraph => TextSetting.Paragraph(paragraph.Text, paragraph.Aside ? voice.Small : voice.Body, voice.Width, groups, before: annex ? 2 : 4, anchor: paragraph.Anchor),
        Block.Items items => TextSetting.Items(items, items.Fine ? voice.Fine : voice.Body, voice.Width, groups, items.Fine ? 1.2 : 3),
        Block.Table table => TableSetting.Of(table, voice, groups),
        Block.MatterList list => [.. ListSetting.Of(list, pictures.Words, groups)],
        Block.Pictures shown => pictures.Of(shown.Shown, voice == Voice.Across ? Math.Clamp(shown.Shown.Count, 4, 5) : 3, voice.Width, groups, voice.Small, 150),
        Block.Figure figure => [PictureSetting.Drawing(figure.Wide, figure.Caption, voice.Width, groups, voice.Small, Tallest(figure, voice))],
        _ => null,
    };

    // A drawing fits itself to the room there is, down to a bound.
    private double Tallest(Block.Figure figure, Voice voice)
    {
        var natural = figure.Wide.Height * Math.Min(1, voice.Width / figure.Wide.Width);
        var room = flow.Room - 70;
        return room >= natural * 0.62 ? Math.Min(natural, room) : natural;
    }
}
