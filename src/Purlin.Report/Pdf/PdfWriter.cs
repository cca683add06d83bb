using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets the report on paper: a tagged PDF with outline, links, running heads; in the browser and at the office alike.</summary>
public static class PdfWriter
{
    /// <summary>The PDF as it is kept.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    public static byte[] Bytes(Paper paper, Func<string, byte[]?> photoBySha)
    {
        using MemoryStream pdf = new();
        Write(paper, photoBySha, pdf);
        return pdf.ToArray();
    }

    /// <summary>Writes the PDF. The same paper and photographs give the same bytes.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    /// <param name="to">Where the file goes; left open.</param>
    public static void Write(Paper paper, Func<string, byte[]?> photoBySha, Stream to)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(photoBySha);
        ArgumentNullException.ThrowIfNull(to);
        var fonts = PaperFonts.Ready();
        using PdfDocument document = new();
        // Compressed page contents make one checker warn on every page ("input stream is complete but output may still be valid", seen 2026-11).
        document.Options.CompressContentStreams = false;
        UAManager.ForDocument(document).SetDocumentLanguage(paper.Language);
        document.Info.Title = ForMetadata($"{paper.Title}: {paper.Cover.Address}");
        document.Info.Author = ForMetadata(paper.Cover.Say(CellKind.Inspector));
        document.Info.Subject = paper.Words.Issue(paper.Mark);
        document.ViewerPreferences.DisplayDocTitle = true;
        Layout layout = new(paper, photoBySha);
        using (Canvas canvas = new(document, fonts) { Places = layout.Places, Words = paper.Words }) layout.Draw(canvas);
        using MemoryStream made = new();
        document.Save(made, false);
        to.Write(Fixing.SameEachTime(made.ToArray(), paper.Mark.At, paper.Language));
    }

    // The library copies these into an XML packet as they are (PDFsharp 6.2.4, seen 2026-11): a bracket or an ampersand would break it.
    private static string ForMetadata(string? text) => Typesetting.Clean(text).Replace('\n', ' ').Replace("&", "and", StringComparison.Ordinal).Replace('<', '\u2039').Replace('>', '\u203A');
}
