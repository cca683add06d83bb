using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Bench;

/// <summary>
/// The report of 300 photographs as page and PDF, beside the least a PDF of the same pictures costs: each placed on a page of its own, with
/// no word.
/// </summary>
internal static class ReportBench
{
    private const int Photographs = 300;

    public static void Run(Results results)
    {
        var (inspection, pictures) = WithPhotographs();
        var work = Work.Of(inspection, [], RuleBook.BuiltIn, 2026, new JudgingMemory());
        var paper = work.Paper(PaperKind.Report, work.Copy);
        byte[]? Photo(string sha) => pictures.GetValueOrDefault(sha);
        List<byte[]> shown = [.. inspection.Photos.Select(photo => pictures[photo.Body.Sha])];
        results.Pair($"page of {Photographs} photographs", () => PageWriter.WriteAsync(paper, Photo).GetAwaiter().GetResult(),
            "the same pictures in base64, nothing else", () => shown.ForEach(bytes => Convert.ToBase64String(bytes)), runs: 5);
        results.Pair($"PDF of {Photographs} photographs", () => PdfWriter.Write(paper, Photo, Stream.Null),
            "the same pictures, one a page, by PDFsharp alone", () => Bare(shown), runs: 5);
        results.Alone("build the report's model", () => work.Report(work.Copy), runs: 5);
    }

    /// <summary>The demo with more photographs: the same pictures taken again as context, each a photograph of its own.</summary>
    private static (Inspection Inspection, IReadOnlyDictionary<string, byte[]> Pictures) WithPhotographs()
    {
        var demo = DemoInspection.Write();
        var folded = Folding.Fold(demo.Entries);
        List<Entry> entries = [.. demo.Entries];
        Pen pen = new(DemoInspection.Id, "benchphone");
        pen.Saw("demophone1", demo.Entries.Count);
        var now = new DateTimeOffset(2026, 10, 14, 20, 0, 0, TimeSpan.Zero);
        for (var index = 0; entries.Count(entry => entry.Body is EntryBody.PhotoTaken) < Photographs; index++)
        {
            var like = folded.Photos[index % folded.Photos.Count];
            var photo = pen.Write(like.Body with { For = null }, now);
            entries.Add(photo);
            entries.Add(pen.Write(new EntryBody.PhotoPlaced
            {
                Photo = photo.Name,
                Use = PhotoUse.Context,
                Caption = $"Picture {index + 1}, once more."
            }, now));
        }
        return (Folding.Fold(entries), demo.Pictures);
    }

    private static void Bare(List<byte[]> pictures)
    {
        using PdfDocument document = new();
        document.Options.CompressContentStreams = false;
        foreach (var bytes in pictures)
        {
            using var image = XImage.FromStream(new MemoryStream(bytes));
            using var graphics = XGraphics.FromPdfPage(document.AddPage());
            graphics.DrawImage(image, 40, 40, 520, 390);
        }
        document.Save(Stream.Null, closeStream: false);
    }
}
