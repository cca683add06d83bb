using System.CommandLine;
using Purlin.Journal;
using Purlin.Office.Pictures;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Cli;

/// <summary><c>purlin report FILE --out DIR</c>: the papers as a working copy. Editions are sealed by the office alone.</summary>
internal static class ReportCommand
{
    private const string Findings = "findings";

    private const string Named = "report; summary (two pages); trades (one sheet a trade); talk (for the call); walk (what to look at, to be ticked); "
        + "second (what became of the matters of --earlier); findings (CSV and JSON)";

    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Argument<string> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl (then without photographs)" };
        Option<DirectoryInfo> folder = new("--out") { Description = "Folder to write into; made when it is not there", Required = true };
        Option<string> paper = new("--paper") { Description = Named, DefaultValueFactory = _ => "report" };
        paper.AcceptOnlyFromAmong([.. Enum.GetValues<PaperKind>().Select(Name), Findings]);
        Option<string?> before = new("--earlier") { Description = "The archive of the first visit, for --paper second" };
        Option<bool> pdf = new("--pdf") { Description = "Write the PDF too" };
        var wording = WordingFile.Option();
        Option<string> language = new("--language") { Description = "The language of the paper, as the standards name it or by its first letters: es-US, es. What is not yet translated stays in English and says so", DefaultValueFactory = _ => Tongue.Standard };
        language.AcceptOnlyFromAmong([.. Tongue.Languages, .. Tongue.Languages.Select(Short).Distinct()]);
        Command command = new("report", "Write a paper as a working copy: one page that stands alone, and with --pdf a tagged PDF")
        {
            file, folder, paper, before, pdf, language, wording,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            var book = WordingFile.Lay(parsed.GetValue(wording), terminal, Tongue.Languages.First(one =>
                one == parsed.GetRequiredValue(language) || Short(one) == parsed.GetRequiredValue(language)));
            if (!book.IsAccepted) return terminal.Refuse(book.Refusals);
            var opened = InspectionFile.Open(parsed.GetRequiredValue(file));
            if (!opened.IsAccepted) return terminal.Refuse(opened.Refusals);
            using var inspection = opened.OrThrow();
            if (inspection.Torn is { } torn) terminal.Refuse(torn);
            var work = inspection.Work(book.OrThrow(), clock);
            var kind = parsed.GetRequiredValue(paper);
            using var earlier = kind == Name(PaperKind.Second) ? Earlier(parsed.GetValue(before), terminal) : null;
            if (kind == Name(PaperKind.Second) && earlier is null) return ExitStatus.BadInput;
            Sheets sheets = new(terminal, inspection, work.Report(work.Copy), parsed.GetRequiredValue(folder))
            {
                Earlier = earlier,
                First = earlier?.Work(book.OrThrow(), clock),
            };
            return await sheets.WriteAsync(kind, parsed.GetValue(pdf), cancel);
        });
        return command;
    }

    private static InspectionFile? Earlier(string? path, Terminal terminal)
    {
        if (path is null)
        {
            terminal.Refuse("--paper second: name the first visit too, --earlier FIRST.purlin");
            return null;
        }
        var opened = InspectionFile.Open(path);
        if (!opened.IsAccepted) terminal.Refuse(opened.Refusals);
        return opened.IsAccepted ? opened.OrThrow() : null;
    }

    private static string Short(string language) => language.Split('-')[0];

    private static string Name(PaperKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>Writes what was asked for, and names each file once it is there. Photographs are drawn anew, so that no place or device
    /// goes with them.</summary>
    private sealed class Sheets(Terminal terminal, InspectionFile file, ReportModel model, DirectoryInfo folder)
    {
        /// <summary>The first visit, for the paper of a second; its pictures stand beside the new ones.</summary>
        public InspectionFile? Earlier { get; init; }

        /// <summary>The same, worked through.</summary>
        public Work? First { get; init; }

        private readonly Dictionary<string, byte[]?> made = new(StringComparer.Ordinal);

        public async Task<int> WriteAsync(string name, bool pdf, CancellationToken cancel)
        {
            folder.Create();
            if (name == Findings)
            {
                await Keep("findings.csv", FindingsFile.Csv(model), cancel);
                await Keep("findings.json", System.Text.Encoding.UTF8.GetBytes(FindingsFile.Json(model)
                    .ToJsonString(ReckonCommand.Printed)), cancel);
                return ExitStatus.Done;
            }
            var paper = First is { } first
                ? model.SecondVisit(first.Report(first.Copy))
                : model.Paper(Enum.Parse<PaperKind>(name, ignoreCase: true));
            await Keep($"{name}.html", await PageWriter.BytesAsync(paper, sha => View(sha, paper.Pictures.Count)), cancel);
            if (pdf) await Keep($"{name}.pdf", PdfWriter.Bytes(paper, sha => View(sha, paper.Pictures.Count)), cancel);
            return ExitStatus.Done;
        }

        private async Task Keep(string name, byte[] bytes, CancellationToken cancel)
        {
            var path = Path.Combine(folder.FullName, name);
            await File.WriteAllBytesAsync(path, bytes, cancel);
            terminal.ProgressDone();
            terminal.Out.WriteLine(path);
        }

        private byte[]? View(string sha, int all)
        {
            if (made.TryGetValue(sha, out var view)) return view;
            terminal.Progress($"photograph {made.Count + 1} of {all} ...");
            return made[sha] = (file.Photo(sha) ?? Earlier?.Photo(sha)) is { } original
                ? Redrawing.Of(original, PictureViews.Printed) : null;
        }
    }
}
