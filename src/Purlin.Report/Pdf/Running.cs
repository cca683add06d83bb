using Purlin.Report.Drawing;
using Purlin.Report.Edition;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Head and foot of each page: whose house, which chapter, which issue, which page of how many.</summary>
internal sealed class Running(ReportModel model, int pages)
{
    private const double Size = 8.4;

    public void Draw(Canvas canvas, string section, int page)
    {
        var right = Measures.Width - Measures.Left;
        // Some standards ask for the property on every page, so the chapter's name gives way to it.
        var address = Typesetting.Fit(model.Cover.Address, Size, Cut.Regular, right - Measures.Left - 40);
        canvas.Text(address, Measures.Left, 46, Size, Cut.Regular, Ink.Quiet);
        canvas.TextRight(Typesetting.Fit(section, Size, Cut.Bold, right - Measures.Left - Typesetting.Width(address, Size) - 14), right, 46, Size, Cut.Bold);
        canvas.Rule(Measures.Left, 52, right, 52, 0.7);
        canvas.Text(Typesetting.Fit(Issue(), Size, Cut.Regular, 400), Measures.Left, 758, Size, model.Cover.Marks.Count > 0 ? Cut.Bold : Cut.Regular, model.Cover.Marks.Count > 0 ? Ink.Text : Ink.Quiet);
        canvas.TextRight($"Page {page} of {pages}", right, 758, Size, Cut.Regular, Ink.Quiet);
    }

    private string Issue() => model.Mark switch
    {
        EditionMark.Sealed issued => string.Join(". ", [.. model.Cover.Marks, $"{issued.Line}, record {issued.Root[..Math.Min(16, issued.Root.Length)]}"]),
        _ => string.Join(". ", model.Cover.Marks),
    };
}
