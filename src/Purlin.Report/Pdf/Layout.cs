using PdfSharp.Pdf;
using Purlin.Report.Drawing;

namespace Purlin.Report.Pdf;

/// <summary>Lays all pieces out on pages first, so that every page number is known, then draws page by page.</summary>
internal sealed class Layout
{
    private readonly ReportModel model;
    private readonly Dictionary<string, int> pageOf = [];
    private readonly List<Placed> placed = [];
    private readonly int pages;

    public Layout(ReportModel model, Func<string, byte[]?> photoBySha)
    {
        this.model = model;
        ChapterSetting chapters = new(new PictureSetting(photoBySha));
        Group section = new("Sect");
        // The pages of the contents are known before those of the body: one line an entry, whatever page it names.
        Landmark[] entries =
        [
            Chapter(model.First), new(1, ChapterSetting.MattersTitle, "matters"), .. model.Matters.Select(matter => new Landmark(3, $"{matter.Number}. {matter.Title}", matter.Anchor)), .. model.Chapters.Select(Chapter),
        ];
        Flow contents = new(Measures.Top, Measures.Bottom, 2);
        contents.Add(new Piece(ContentsSetting.Of(entries, PageOf), []));
        Flow body = new(Measures.Top, Measures.Bottom, contents.LastPage + 1);
        body.Add(chapters.Of(model.First, newPage: true));
        body.Add(ChapterSetting.Map(model, section));
        body.NewPage();
        foreach (var matter in chapters.Matters(model, section)) body.Add(matter);
        foreach (var chapter in model.Chapters) body.Add(chapters.Of(chapter, newPage: true));
        placed.AddRange(contents.Placed);
        placed.AddRange(body.Placed);
        pages = Math.Max(contents.LastPage, body.LastPage);
        foreach (var atom in placed)
            if (atom.Atom.Entry is { } entry) pageOf.TryAdd(entry.Anchor, atom.Page);
    }

    public void Draw(Canvas canvas)
    {
        Tagging tagging = new(canvas, PageOf);
        Running running = new(model, pages);
        canvas.NewPage(Measures.Width, Measures.Height);
        CoverPage.Draw(canvas, tagging, model);
        tagging.Close();
        PdfOutline?[] branch = [null, null, null, null];
        var byPage = placed.ToLookup(atom => atom.Page);
        for (var page = 2; page <= pages; page++)
        {
            canvas.NewPage(Measures.Width, Measures.Height);
            Placed[] here = [.. byPage[page]];
            var section = here.FirstOrDefault(atom => atom.Atom.Section.Length > 0)?.Atom.Section ?? "";
            tagging.Artifact(() => running.Draw(canvas, section, page));
            Draw(canvas, tagging, here, branch);
        }
        tagging.Close();
    }

    private static Landmark Chapter(Chapter chapter) => new(1, chapter.Title, chapter.Id);

    private int? PageOf(string anchor) => pageOf.TryGetValue(anchor, out var page) ? page : null;

    private static void Draw(Canvas canvas, Tagging tagging, Placed[] here, PdfOutline?[] branch)
    {
        for (var at = 0; at < here.Length;)
        {
            var first = here[at];
            if (first.Repeated)
            {
                tagging.Artifact(() => { foreach (var stroke in first.Atom.Strokes) stroke.Draw(canvas, Measures.Left + first.Atom.Left, first.Y); });
                at++;
                continue;
            }
            var end = at + 1;
            while (end < here.Length && first.Atom.Run is { } run && !here[end].Repeated && ReferenceEquals(here[end].Atom.Run, run)) end++;
            foreach (var line in here[at..end]) Outline(canvas, line.Atom.Entry, branch);
            if (first.Atom.Strokes.Count > 0) tagging.Write([.. here[at..end].Select(line => (line.Atom, Measures.Left + line.Atom.Left, line.Y))]);
            at = end;
        }
    }

    private static void Outline(Canvas canvas, Landmark? entry, PdfOutline?[] branch)
    {
        if (entry is null) return;
        var level = Math.Clamp(entry.Level, 1, 3);
        while (level > 1 && branch[level - 1] is null) level--;
        branch[level] = level == 1 ? canvas.Document.Outlines.Add(entry.Text, canvas.Page, true) : branch[level - 1]!.Outlines.Add(entry.Text, canvas.Page, level < 2);
        for (var below = level + 1; below < branch.Length; below++) branch[below] = null;
    }
}
