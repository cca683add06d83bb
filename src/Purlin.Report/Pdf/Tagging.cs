using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Purlin.Report.Pdf;

/// <summary>Opens and closes the elements of the document's structure as the atoms of a page are drawn.</summary>
internal sealed class Tagging(Canvas canvas)
{
    private readonly List<Group> open = [];

    /// <summary>Draws outside the structure: running heads, rules, the head of a table said again.</summary>
    public void Artifact(Action draw)
    {
        canvas.Tags.BeginArtifact();
        draw();
        canvas.Tags.End();
    }

    /// <summary>Draws what stands together on one page, leaf by leaf.</summary>
    public void Write(IReadOnlyList<(Atom Atom, double X, double Y)> run)
    {
        Enter(run[0].Atom.Groups);
        List<Leaf> leaves = [];
        foreach (var leaf in run.SelectMany(line => line.Atom.Strokes).Select(stroke => stroke.Leaf))
            if (!leaves.Contains(leaf)) leaves.Add(leaf);
        foreach (var leaf in leaves)
        {
            Begin(leaf, run[0].X, run[0].Y);
            foreach (var (atom, x, y) in run)
                foreach (var stroke in atom.Strokes)
                    if (stroke.Leaf == leaf) stroke.Draw(canvas, x, y);
            canvas.Tags.End();
        }
    }

    /// <summary>Closes all groups.</summary>
    public void Close() => Enter([]);

    private void Enter(IReadOnlyList<Group> groups)
    {
        var same = 0;
        while (same < open.Count && same < groups.Count && open[same] == groups[same]) same++;
        while (open.Count > same) { canvas.Tags.End(); open.RemoveAt(open.Count - 1); }
        for (; same < groups.Count; same++)
        {
            Open(groups[same].Kind);
            open.Add(groups[same]);
        }
    }

    private void Open(string kind)
    {
        switch (kind)
        {
            case "Sect": canvas.Tags.BeginElement(PdfGroupingElementTag.Section); break;
            case "Art": canvas.Tags.BeginElement(PdfGroupingElementTag.Article); break;
            default: canvas.Tags.BeginBlockLevelElement(kind); break;
        }
    }

    private void Begin(Leaf leaf, double x, double y)
    {
        if (leaf.Alt is { } alt)
        {
            canvas.Tags.BeginElement(PdfIllustrationElementTag.Figure, alt, new XRect(x, y, Math.Max(1, leaf.Width), Math.Max(1, leaf.Height)));
            return;
        }
        canvas.Tags.BeginBlockLevelElement(leaf.Kind);
        if (leaf.Scope is not { } scope) return;
        PdfDictionary attributes = new(canvas.Document);
        attributes.Elements.SetName("/O", "/Table");
        attributes.Elements.SetName("/Scope", "/" + scope);
        canvas.Tags.CurrentStructureElement.Elements["/A"] = attributes;
    }
}
