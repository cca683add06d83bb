using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Report.Edition;

/// <summary>Page and paper of one issue with their hashes: what the office stores, and what its sealing entry names.</summary>
public sealed record Issued
{
    /// <summary>The report both were made from.</summary>
    public required ReportModel Model { get; init; }

    /// <summary>The page, to be stored as UTF-8 without a byte order mark.</summary>
    public required string Page { get; init; }

    /// <summary>The PDF.</summary>
    public required ReadOnlyMemory<byte> Pdf { get; init; }

    /// <summary>SHA-256 of the page as stored.</summary>
    public string PageHash => Sealing.OfPage(Page);

    /// <summary>SHA-256 of the PDF.</summary>
    public string PdfHash => Sealing.OfPdf(Pdf.Span);

    /// <summary>Hashes of the photographs it shows, in order of appearance, each once.</summary>
    public IReadOnlyList<string> Photos => [.. Model.Pictures.Select(picture => picture.Sha).Distinct(StringComparer.Ordinal)];

    /// <summary>Makes an issue. The same evidence, judgement, mark and photographs give the same hashes on every machine.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="judged">Its judgement.</param>
    /// <param name="mark">Working copy or sealed edition.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash.</param>
    public static async Task<Issued> MakeAsync(Inspection inspection, JudgedInspection judged, EditionMark mark, Func<string, byte[]?> photoBySha)
    {
        var model = ReportModel.Build(inspection, judged, mark);
        using MemoryStream pdf = new();
        PdfWriter.Write(model, photoBySha, pdf);
        return new Issued { Model = model, Page = await PageWriter.WriteAsync(model, photoBySha), Pdf = pdf.ToArray() };
    }
}
