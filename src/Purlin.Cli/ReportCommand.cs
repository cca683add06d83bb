using System.CommandLine;
using Purlin.Book;
using Purlin.Office.Pictures;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Cli;

/// <summary><c>purlin report FILE --out DIR</c>: the working copy of the report. Editions are sealed by the office alone.</summary>
internal static class ReportCommand
{
    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Argument<string> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl (then without photographs)" };
        Option<DirectoryInfo> folder = new("--out") { Description = "Folder to write into; made when it is not there", Required = true };
        Option<bool> pdf = new("--pdf") { Description = "Write the PDF too" };
        var wording = WordingFile.Option();
        Command command = new("report", "Write the report as a working copy: one page that stands alone, and with --pdf a tagged PDF") { file, folder, pdf, wording };
        command.SetAction(async (parsed, cancel) =>
        {
            var book = WordingFile.Lay(parsed.GetValue(wording), terminal);
            if (!book.IsAccepted) return terminal.Refuse(book.Refusals);
            var opened = InspectionFile.Open(parsed.GetRequiredValue(file));
            if (!opened.IsAccepted) return terminal.Refuse(opened.Refusals);
            using var inspection = opened.OrThrow();
            return await WriteAsync(terminal, clock, inspection, book.OrThrow(), parsed.GetRequiredValue(folder), parsed.GetValue(pdf), cancel);
        });
        return command;
    }

    private static async Task<int> WriteAsync(Terminal terminal, TimeProvider clock, InspectionFile file, RuleBook book, DirectoryInfo folder, bool pdf, CancellationToken cancel)
    {
        if (file.Torn is { } torn) terminal.Refuse(torn);
        var work = file.Work(book, clock);
        var model = work.Report(work.Copy);
        var photos = new Views(terminal, file);
        folder.Create();
        var page = Path.Combine(folder.FullName, "report.html");
        await File.WriteAllTextAsync(page, await PageWriter.WriteAsync(model, photos.Of), cancel);
        terminal.ProgressDone();
        terminal.Out.WriteLine(page);
        if (pdf)
        {
            var paper = Path.Combine(folder.FullName, "report.pdf");
            await using (var to = File.Create(paper)) PdfWriter.Write(model, photos.Of, to);
            terminal.ProgressDone();
            terminal.Out.WriteLine(paper);
        }
        return ExitStatus.Done;
    }

    /// <summary>Photographs as they may be shared: drawn anew, so that no place or device goes with them.</summary>
    private sealed class Views(Terminal terminal, InspectionFile file)
    {
        private readonly Dictionary<string, byte[]?> made = new(StringComparer.Ordinal);

        public byte[]? Of(string sha)
        {
            if (made.TryGetValue(sha, out var view)) return view;
            terminal.Progress($"photograph {made.Count + 1} of {file.Inspection.Photos.Count} ...");
            return made[sha] = file.Photo(sha) is { } original ? Redrawing.Of(original, PictureViews.View) : null;
        }
    }
}
