using System.CommandLine;
using System.Text.Json;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Journal.Merge;

namespace Purlin.Cli;

/// <summary><c>purlin judge FILE</c>: the rule book applied to an inspection.</summary>
internal static class JudgeCommand
{
    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Argument<string> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl; - reads standard input" };
        Option<bool> json = new("--json") { Description = "Print one JSON object: findings, loose_ends, coverage, limitations, workings" };
        var wording = WordingFile.Option();
        Command command = new("judge", "Judge an inspection: findings, loose ends, coverage, limitations") { file, json, wording };
        command.SetAction(parsed => WordingFile.Lay(parsed.GetValue(wording), terminal).Match(
            book => InspectionFile.Open(parsed.GetRequiredValue(file)).Match(opened => Judge(terminal, clock, opened, book, parsed.GetValue(json)), terminal.Refuse),
            terminal.Refuse));
        return command;
    }

    private static int Judge(Terminal terminal, TimeProvider clock, InspectionFile file, RuleBook book, bool json)
    {
        using (file)
        {
            if (file.Torn is { } torn) terminal.Refuse(torn);
            var work = file.Work(book, clock);
            if (json) terminal.Out.WriteLine(JudgementJson.Write(work.Judged, work.Inspection,
                file.Held).ToJsonString(ReckonCommand.Printed));
            else Print(terminal, work.Judged, file.Held);
            return ExitStatus.Done;
        }
    }

    private static void Print(Terminal terminal, JudgedInspection judged, IReadOnlyList<HeldLine> held)
    {
        foreach (var weight in WeightWords.HeaviestFirst)
        {
            var findings = judged.Findings.Where(finding => finding.Weight == weight && !finding.LeftOut).ToList();
            if (findings.Count == 0) continue;
            var heading = $"{weight.Word()} ({findings.Count})";
            terminal.Out.WriteLine(weight == Weight.MakeSafe ? terminal.Accent(heading) : terminal.Bold(heading));
            foreach (var finding in findings) terminal.Out.WriteLine($"  {finding.Title}: {finding.Where}");
        }
        var open = judged.LooseEnds.Where(end => end.Tied is null).ToList();
        terminal.Out.WriteLine(terminal.Bold($"loose ends open ({open.Count} of {judged.LooseEnds.Count})"));
        foreach (var end in open) terminal.Out.WriteLine($"  {end.Question}");
        PrintReadings(terminal, judged, held);
        foreach (var coverage in judged.Coverage)
        {
            terminal.Out.WriteLine(terminal.Bold($"coverage: {coverage.Title}"));
            terminal.Out.WriteLine($"  {string.Join(", ", coverage.Duties.GroupBy(duty => duty.State).OrderBy(group => group.Key).Select(group => $"{Word(group.Key)} {group.Count()}"))}");
        }
        PrintVisit(terminal, judged);
        terminal.Out.WriteLine(terminal.Bold($"limitations ({judged.Limitations.Count})"));
        foreach (var limitation in judged.Limitations) terminal.Out.WriteLine($"  {limitation.What}: {limitation.Cause ?? "cause missing"}");
        if (judged.WordingConflicts.Count > 0) terminal.Out.WriteLine(terminal.Bold($"own wording to look at ({judged.WordingConflicts.Count})"));
        foreach (var conflict in judged.WordingConflicts) terminal.Out.WriteLine($"  {conflict.Key}: {conflict.Words}");
        terminal.Out.WriteLine(terminal.Bold($"in the way of issue ({judged.Obstacles.Count})"));
        foreach (var obstacle in judged.Obstacles) terminal.Out.WriteLine($"  {obstacle.Words}");
    }

    /// <summary>
    /// What is short of being reckoned: one reading missing, readings that do not go together, and whatever was not understood.
    /// </summary>
    private static void PrintReadings(Terminal terminal, JudgedInspection judged, IReadOnlyList<HeldLine> held)
    {
        if (judged.Asks.Count > 0) terminal.Out.WriteLine(terminal.Bold($"one reading away ({judged.Asks.Count})"));
        foreach (var ask in judged.Asks) terminal.Out.WriteLine($"  {ask.Words}");
        List<string> again = [.. OddWords.Of(judged, held)];
        if (judged.Refused.Count + again.Count > 0) terminal.Out.WriteLine(terminal
            .Bold($"to look at again ({judged.Refused.Count + again.Count})"));
        foreach (var words in again) terminal.Out.WriteLine($"  {words}");
        foreach (var refused in judged.Refused.Select(refused => $"{refused.Reckoning}: {string.Join("; ", refused.Reasons)}")
            .Distinct(StringComparer.Ordinal)) terminal.Out.WriteLine($"  {refused}");
    }

    private static void PrintVisit(Terminal terminal, JudgedInspection judged)
    {
        if (judged.Visit.Count == 0) return;
        terminal.Out.WriteLine(terminal.Bold($"around the visit ({judged.Visit.Count(duty => duty.State == VisitStanding.Open)} open of {judged.Visit.Count})"));
        foreach (var duty in judged.Visit.Where(duty => duty.Day is not null).OrderBy(duty => duty.Day))
            terminal.Out.WriteLine($"  {duty.Day:yyyy-MM-dd}  {duty.Name}{(duty.Done is { } done ? $": done {done:yyyy-MM-dd}" : "")}");
        foreach (var duty in judged.Visit.Where(duty => duty.State == VisitStanding.Open)) terminal.Out.WriteLine($"  open: {duty.Name}. {duty.Words}");
    }

    private static string Word(DutyStanding standing) => standing switch
    {
        DutyStanding.Open => "open",
        DutyStanding.Met => "met",
        DutyStanding.Limited => "limited",
        _ => "not present",
    };
}
