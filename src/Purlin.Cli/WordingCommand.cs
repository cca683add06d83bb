using System.CommandLine;
using Purlin.Journal;
using Purlin.Book;

namespace Purlin.Cli;

/// <summary><c>purlin wording</c>: the inspector's own sentences and conditions, in an inspection or in a file of their own.</summary>
internal static class WordingCommand
{
    public static Command Build(Terminal terminal) =>
        new("wording", "Own wording: what an inspection says in the inspector's own words, and files of it") { List(terminal),
            Export(terminal), Check(terminal) };

    private static Command List(Terminal terminal)
    {
        var file = Inspection();
        Command command = new("list", "Print the own sentences and conditions that an inspection holds") { file };
        command.SetAction(parsed => With(terminal, parsed.GetRequiredValue(file), overlay =>
        {
            Print(terminal, overlay);
            return ExitStatus.Done;
        }));
        return command;
    }

    private static Command Export(Terminal terminal)
    {
        var file = Inspection();
        Option<string?> to = new("--out") { Description = "File to write; standard output when none is named" };
        Command command = new("export", "Write the own wording that an inspection holds as a file of its own") { file, to };
        command.SetAction(parsed => With(terminal, parsed.GetRequiredValue(file), overlay =>
        {
            var bytes = overlay.Write();
            if (parsed.GetValue(to) is not { } path) terminal.Out.WriteLine(System.Text.Encoding.UTF8.GetString(bytes));
            else
            {
                File.WriteAllBytes(path, bytes);
                terminal.Out.WriteLine($"{path}: {Count(overlay)}");
            }
            return ExitStatus.Done;
        }));
        return command;
    }

    private static Command Check(Terminal terminal)
    {
        Argument<string> file = new("FILE") { Description = "A file of own wording, as purlin wording export writes it" };
        Command command = new("check",
            "Hold a file of own wording against the built-in rule book: conflicts and doubtful words, status 1 when there are any") { file };
        command.SetAction(parsed => WordingFile.Open(parsed.GetRequiredValue(file))
            .Match(overlay => Check(terminal, overlay), terminal.Refuse));
        return command;
    }

    private static int Check(Terminal terminal, Overlay overlay)
    {
        var conflicts = RuleBook.BuiltIn.Lay(overlay).Conflicts;
        terminal.Out.WriteLine($"{Count(overlay)}, against rule book {RuleBook.BuiltIn.Edition}");
        foreach (var conflict in conflicts)
        {
            terminal.Out.WriteLine($"{terminal.Bold(conflict.Key)}: {conflict.Words}");
            terminal.Out.WriteLine($"  book was: {conflict.Was}");
            terminal.Out.WriteLine($"  book now: {conflict.Book ?? "(nothing)"}");
            terminal.Out.WriteLine($"  mine:     {conflict.Own}");
        }
        var doubts = 0;
        foreach (var (key, text, said) in WordingRules.Doubts(overlay))
        {
            doubts++;
            terminal.Out.WriteLine($"{terminal.Bold(key)}: {said}");
            terminal.Out.WriteLine($"  mine:     {text}");
        }
        terminal.Out.WriteLine($"{conflicts.Count} conflicts, {doubts} doubtful words");
        return conflicts.Count + doubts == 0 ? ExitStatus.Done : ExitStatus.Found;
    }

    private static int With(Terminal terminal, string path, Func<Overlay, int> work) => InspectionFile.Open(path).Match(
        opened =>
        {
            using (opened)
            {
                var overlay = OwnWording.Of(opened.Inspection);
                foreach (var lost in overlay.Unread) terminal.Refuse($"{lost.Key}: {lost.Words}");
                return work(overlay);
            }
        },
        terminal.Refuse);

    private static void Print(Terminal terminal, Overlay overlay)
    {
        terminal.Out.WriteLine(Count(overlay));
        foreach (var (key, own) in overlay.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal))
            terminal.Out.WriteLine($"{terminal.Bold(key)}: {own.Now}");
        foreach (var own in overlay.Conditions) terminal.Out.WriteLine($"{terminal.Bold(own.Id)}: {own.Name}");
    }

    private static Argument<string> Inspection() => new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl" };

    private static string Count(Overlay overlay) => $"{overlay.Sentences.Count} own sentences, {overlay.Conditions.Count} own conditions";
}
