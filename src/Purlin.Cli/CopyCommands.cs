using System.CommandLine;
using Purlin.Office.Copies;

namespace Purlin.Cli;

/// <summary>
/// <c>purlin backup</c>, <c>restore</c> and <c>verify</c>: copies of an office, and whether they are whole. Backing up and verifying work
/// while it runs.
/// </summary>
internal static class CopyCommands
{
    public static Command Backup(Terminal terminal)
    {
        var data = Data();
        Argument<DirectoryInfo> to = new("TO") { Description = "Folder of the backup; made when absent, only what is new is copied into one that is there" };
        Command command = new("backup",
            "Copy an office into another folder, also while it runs. The copy holds the office's signing key: keep it private") { to,
            data };
        command.SetAction(async (parsed, cancel) =>
        {
            var into = parsed.GetRequiredValue(to).FullName;
            var made = await Office.Copies.Backup.Make(parsed.GetRequiredValue(data).FullName, into, terminal.Refuse, cancel);
            terminal.Out.WriteLine($"{into}: {made}");
            return await CheckCommand.Folder(terminal, into, cancel);
        });
        return command;
    }

    public static Command Restore(Terminal terminal)
    {
        Argument<DirectoryInfo> from = new("BACKUP") { Description = "Folder of the backup" };
        Option<DirectoryInfo> data = new("--data") { Description = "Folder to restore into; it must be empty or absent", Required = true };
        Command command = new("restore", "Put a backup into a new folder and verify it; phones then send what it lacks") { from, data };
        command.SetAction(async (parsed, cancel) =>
        {
            var into = parsed.GetRequiredValue(data).FullName;
            await Office.Copies.Restore.Run(parsed.GetRequiredValue(from).FullName, into, cancel);
            return await CheckCommand.Folder(terminal, into, cancel);
        });
        return command;
    }

    public static Command Verifying(Terminal terminal)
    {
        Argument<DirectoryInfo> folder = new("DIR") { Description = "An office's folder, or a backup of it" };
        Command command = new("verify",
            "Look at every line, receipt, file and edition of an office or of a backup; status 1 when something is amiss") { folder };
        command.SetAction((parsed, cancel) => CheckCommand.Folder(terminal, parsed.GetRequiredValue(folder).FullName, cancel));
        return command;
    }

    private static Option<DirectoryInfo> Data() =>
        new("--data") { Description = "The office's folder", DefaultValueFactory = _ => new DirectoryInfo("office") };
}
