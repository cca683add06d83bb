using System.CommandLine;
using System.Text.Json.Nodes;
using Purlin.Book;

namespace Purlin.Cli;

/// <summary><c>purlin book</c>: looks things up in the rule book, holds a folder of it to its own rules, and stamps its edition.</summary>
internal static class BookCommand
{
    public static Command Build(Terminal terminal, TimeProvider clock) =>
        new("book", "The rule book: list what it knows, check a folder of it without building anything, stamp its edition")
        {
            List(terminal), Check(terminal), Stamp(terminal, clock),
        };

    private static Command List(Terminal terminal)
    {
        Argument<string?> what = new("WHAT") { Description = $"One of {string.Join(", ", BookListing.Names)}; none for how many there are of each", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> json = new("--json") { Description = "Print one JSON array" };
        Option<string?> from = new("--from") { Description = "A folder of a rule book; the built-in one when none is named" };
        Command command = new("list", "Print the ids of what the rule book knows, each with a line on it") { what, json, from };
        command.SetAction(parsed => parsed.GetValue(from) is { } folder
            ? BookFolder.Read(folder)
            .Match(files => List(terminal, BookReader.Read(files), parsed.GetValue(what), parsed.GetValue(json)), terminal.Refuse)
            : List(terminal, RuleBook.BuiltIn, parsed.GetValue(what), parsed.GetValue(json)));
        return command;
    }

    private static int List(Terminal terminal, RuleBook book, string? what, bool json)
    {
        if (what is null)
        {
            foreach (var name in BookListing.Names) terminal.Out.WriteLine($"{BookListing.Of(book, name)!.Count,6}  {name}");
            return ExitStatus.Done;
        }
        if (BookListing.Of(book, what) is not { } lines)
        {
            terminal.Refuse($"book list: {what}; one of {string.Join(", ", BookListing.Names)}");
            return ExitStatus.BadInput;
        }
        if (json) terminal.Out.WriteLine(new JsonArray([.. lines.Select(line => new JsonObject { ["id"] = line.Id,
            ["words"] = line.Words })]).ToJsonString(ReckonCommand.Printed));
        var width = lines.Count == 0 ? 0 : Math.Min(48, lines.Max(line => line.Id.Length));
        foreach (var (id, words) in json ? [] : lines) terminal.Out.WriteLine($"{id.PadRight(width)}  {words}".TrimEnd());
        return ExitStatus.Done;
    }

    private static Command Check(Terminal terminal)
    {
        Argument<string> folder = Folder();
        Command command = new("check",
            "Read a folder of a rule book and print every line that would be refused, with file, id, what stands there and what may; status 1 when there is one") { folder };
        command.SetAction(parsed => BookFolder.Read(parsed.GetRequiredValue(folder))
            .Match(files => Check(terminal, files), terminal.Refuse));
        return command;
    }

    private static int Check(Terminal terminal, BookFile[] files)
    {
        var book = BookReader.Read(files);
        foreach (var refusal in book.Refused)
            terminal.Out.WriteLine($"{terminal.Bold(refusal.Input)}\n  is:      {book.Words.Say(refusal.Given)}\n  may be:  {book.Words.Say(refusal.Allowed)}");
        var stamp = BookEdition.In(files).Sha256 == book.Hash
            ? $"edition {book.Edition}" : $"changed since edition {book.Edition} was stamped on it";
        terminal.Out.WriteLine($"{files.Length} files, {book.Conditions.Count} conditions, {stamp}; {(book.Refused.IsEmpty ? "nothing is refused" : $"{book.Refused.Length} refused")}");
        return book.Refused.IsEmpty ? ExitStatus.Done : ExitStatus.Found;
    }

    private static Command Stamp(Terminal terminal, TimeProvider clock)
    {
        Argument<string> folder = Folder();
        Command command = new("stamp",
            "Give a changed rule book the next edition number and write it with the hash over its files into edition.json") { folder };
        command.SetAction(parsed => BookFolder.Read(parsed.GetRequiredValue(folder))
            .Match(files => Stamp(terminal, clock, parsed.GetRequiredValue(folder), files), terminal.Refuse));
        return command;
    }

    /// <summary>A book that is refused in part is not stamped: its name would stand for what nobody can use.</summary>
    private static int Stamp(Terminal terminal, TimeProvider clock, string folder, BookFile[] files)
    {
        if (BookReader.Read(files).Refused is { IsEmpty: false } refused)
        {
            terminal.Refuse($"book stamp: {refused.Length} lines are refused; see purlin book check {folder}");
            return ExitStatus.Found;
        }
        var stamp = BookEdition.Stamp(files, DateOnly.FromDateTime(clock.GetLocalNow().Date));
        File.WriteAllText(Path.Combine(folder, Path.GetFileName(BookEdition.Path)), stamp.Write());
        terminal.Out.WriteLine($"edition {stamp.Number}, {stamp.Sha256}");
        return ExitStatus.Done;
    }

    private static Argument<string> Folder() =>
        new("DIR") { Description = "Folder of the rule book", DefaultValueFactory = _ => "rulebook" };
}
