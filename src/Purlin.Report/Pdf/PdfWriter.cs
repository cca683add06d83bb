using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets the report on paper: a tagged PDF with outline, contents, running heads; in the browser and at the office alike.</summary>
public static class PdfWriter
{
    /// <summary>The PDF as it is kept.</summary>
    /// <param name="model">The report.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    public static byte[] Bytes(ReportModel model, Func<string, byte[]?> photoBySha)
    {
        using MemoryStream pdf = new();
        Write(model, photoBySha, pdf);
        return pdf.ToArray();
    }

    /// <summary>Writes the PDF. The same model and photographs give the same bytes.</summary>
    /// <param name="model">The report.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    /// <param name="to">Where the file goes; left open.</param>
    public static void Write(ReportModel model, Func<string, byte[]?> photoBySha, Stream to)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(photoBySha);
        ArgumentNullException.ThrowIfNull(to);
        var fonts = PaperFonts.Ready();
        using PdfDocument document = new();
        // Compressed page contents make one checker warn on every page ("input stream is complete but output may still be valid", seen 2026-11).
        document.Options.CompressContentStreams = false;
        UAManager.ForDocument(document).SetDocumentLanguage("en-US");
        document.Info.Title = ForMetadata($"Inspection report: {model.Cover.Address}");
        document.Info.Author = ForMetadata(model.Cover.Cells.FirstOrDefault(cell => cell.Label == "Inspected by")?.Text);
        document.Info.Subject = model.Mark.Line;
        document.ViewerPreferences.DisplayDocTitle = true;
        using (Canvas canvas = new(document, fonts)) new Layout(model, photoBySha).Draw(canvas);
        using MemoryStream made = new();
        document.Save(made, false);
        to.Write(Fixing.SameEachTime(made.ToArray(), model.Mark.At));
    }

    // The library copies these into an XML packet as they are (PDFsharp 6.2.4, seen 2026-11): a bracket or an ampersand would break it.
    private static string ForMetadata(string? text) => Typesetting.Clean(text).Replace('\n', ' ').Replace("&", "and", StringComparison.Ordinal).Replace('<', '\u2039').Replace('>', '\u203A');
}
