using PdfSharp.Pdf;

namespace Purlin.Report.Pdf;

/// <summary>Lays all pieces out on pages first, so that every page number is known, then draws page by page.</summary>
internal sealed class Layout
{
    private const double FirstTop = 40;

    private readonly Paper paper;
    private readonly Dictionary<string, (int Page, double Y)> places = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<Placed> placed;

    public Layout(Paper paper, Func<string, byte[]?> photoBySha)
    {
        this.paper = paper;
        Flow flow = new(Measures.Top, Measures.Bottom, FirstTop);
        ChapterSetting chapters = new(new PictureSetting(photoBySha, paper.Words), flow);
        flow.Add(OpeningSetting.Head(paper, [new Group("Sect")]));
        foreach (var chapter in paper.Chapters) chapters.Add(chapter);
        placed = flow.Placed;
        Pages = flow.LastPage;
        foreach (var atom in placed)
            if (atom.Atom.Entry is { Anchor.Length: > 0 } entry) places.TryAdd(entry.Anchor, (atom.Page, atom.Y));
        places.TryAdd("list", (1, FirstTop));
    }

    public int Pages { get; }

    public IReadOnlyDictionary<string, (int Page, double Y)> Places => places;

    public void Draw(Canvas canvas)
    {
        Tagging tagging = new(canvas);
        Running running = new(paper, Pages);
        PdfOutline?[] branch = [null, null, null, null];
        var byPage = placed.ToLookup(atom => atom.Page);
        for (var page = 1; page <= Pages; page++)
        {
            canvas.NewPage(Measures.Width, Measures.Height);
            Placed[] here = [.. byPage[page]];
            var section = here.FirstOrDefault(atom => atom.Atom.Section.Length > 0)?.Atom.Section ?? paper.Title;
            tagging.Artifact(() => running.Draw(canvas, section, page));
            Draw(canvas, tagging, here, branch);
        }
        tagging.Close();
    }

    private static void Draw(Canvas canvas, Tagging tagging, Placed[] here, PdfOutline?[] branch)
    {
        for (var at = 0; at < here.Length;)
        {
            var first = here[at];
            if (first.Repeated || first.Atom.Strokes.Any(stroke => stroke.Leaf.Kind == "Artifact"))
            {
                tagging.Artifact(() => { foreach (var stroke in first.Atom.Strokes) stroke.Draw(canvas, X(first), first.Y); });
                at++;
                continue;
            }
            var end = at + 1;
            while (end < here.Length && first.Atom.Run is { } run && !here[end].Repeated && ReferenceEquals(here[end].Atom.Run, run)) end++;
            foreach (var line in here[at..end]) Outline(canvas, line.Atom.Entry, branch);
            if (first.Atom.Strokes.Count > 0) tagging.Write([.. here[at..end].Select(line => (line.Atom, X(line), line.Y))]);
            at = end;
        }
    }

    private static double X(Placed placed) => Measures.Left + placed.X + placed.Atom.Left;

    private static void Outline(Canvas canvas, Landmark? entry, PdfOutline?[] branch)
    {
        if (entry is null || entry.Level is 0 or > 3 || entry.Anchor.Length == 0) return;
        var level = entry.Level;
        while (level > 1 && branch[level - 1] is null) level--;
        branch[level] = level == 1 ? canvas.Document.Outlines.Add(entry.Text, canvas.Page, true) : branch[level - 1]!.Outlines.Add(entry.Text, canvas.Page, level < 2);
        for (var below = level + 1; below < branch.Length; below++) branch[below] = null;
    }
}
