using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using Purlin.Journal;
using Purlin.Journal.Archive;

namespace Purlin.Cli;

/// <summary><c>purlin again FILE --out NEW</c>: begins the record of a second visit to the same house, which names the first.</summary>
internal static class AgainCommand
{
    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Argument<string> file = new("FILE") { Description = "The archive of the first visit" };
        Option<string> to = new("--out") { Description = "The archive to write: NEW.purlin; it must not be there yet", Required = true };
        Option<string?> day = new("--day") { Description = "The day of the second visit, 2026-12-01; today when it is not given" };
        Command command = new("again",
            "Begin a second visit: the same places and things, nothing that was seen before, and which edition it comes back to") { file,
            to, day };
        command.SetAction(parsed => InspectionFile.Open(parsed.GetRequiredValue(file)).Match(
            opened => Begin(terminal, clock, opened, parsed.GetRequiredValue(to), parsed.GetValue(day)), terminal.Refuse));
        return command;
    }

    private static int Begin(Terminal terminal, TimeProvider clock, InspectionFile first, string to, string? day)
    {
        using (first)
        {
            if (File.Exists(to)) return Refused(terminal, $"{to} is there already; name a new file, since a record is never written over");
            if (first.Inspection.Opening is null) return Refused(terminal,
                "the first visit has no opening, so nobody can tell which house it was");
            var today = DateOnly.FromDateTime(clock.GetLocalNow().Date);
            if (day is not null && !DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None,
                out today)) return Refused(terminal, $"\"{day}\" is no day; write year, month and day: 2026-12-01");
            Pen pen = new(Name(), Name());
            List<Entry> lines = [];
            EntryName Write(EntryBody body)
            {
                lines.Add(pen.Write(body, clock.GetUtcNow()));
                return lines[^1].Name;
            }
            var opening = Write(SecondVisit.Opening(first.Inspection, today));
            Write(new EntryBody.DeviceJoined { Name = "purlin again" });
            SecondVisit.Furnish(first.Inspection, first.Entries, opening, Write);
            var half = to + ".part";
            using (var stream = File.Create(half)) ArchiveWriter.Write(stream, lines, []);
            File.Move(half, to);
            terminal.Out.WriteLine($"{to}: a second visit to {first.Inspection.Opening.Body.Property.Address}, {lines.Count} entries.");
            return ExitStatus.Done;
        }
    }

    private static int Refused(Terminal terminal, string words)
    {
        terminal.Refuse(words);
        return ExitStatus.BadInput;
    }

    private static string Name() => RandomNumberGenerator.GetString("abcdefghijkmnpqrstuvwxyz23456789", 12);
}
