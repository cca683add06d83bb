using Purlin.Report.Drawing;
using Purlin.Report.Edition;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Head and foot of each page: whose house, which chapter, which issue, which page of how many.</summary>
internal sealed class Running(Paper paper, int pages)
{
    private const double Size = 8.4;

    public void Draw(Canvas canvas, string section, int page)
    {
        var right = Measures.Width - Measures.Left;
        if (page > 1)
        {
            // Some standards ask for the property on every page, so the chapter's name gives way to it.
            var address = Typesetting.Fit(paper.Cover.Address, Size, Cut.Regular, right - Measures.Left - 40);
            canvas.Text(address + " ", Measures.Left, 38, Size, Cut.Regular, Ink.Quiet);
            canvas.TextRight(Typesetting.Fit(section, Size, Cut.Bold, right - Measures.Left - Typesetting.Width(address, Size) - 14), right, 38, Size, Cut.Bold);
            canvas.Rule(Measures.Left, 44, right, 44, 0.7);
        }
        canvas.Rule(Measures.Left, 754, right, 754, 0.5, Ink.Faint);
        canvas.Text(Typesetting.Fit(Issue(), Size, Cut.Regular, 430) + " ", Measures.Left, 765, Size, paper.Cover.Marks.Count > 0 ? Cut.Bold : Cut.Regular, paper.Cover.Marks.Count > 0 ? Ink.Text : Ink.Quiet);
        canvas.TextRight(paper.Words.Say("paper.page", ("page", page), ("pages", pages)), right, 765, Size, Cut.Regular, Ink.Quiet);
    }

    private string Issue()
    {
        string[] issue = paper.Mark is EditionMark.Sealed issued ? [paper.Words.Say("paper.issue", ("issue", paper.Words.Issue(issued)), ("root", issued.Root[..Math.Min(16, issued.Root.Length)]))] : [];
        return string.Join(". ", [.. paper.Cover.Marks, .. issue, paper.Cover.Made]);
    }
}
