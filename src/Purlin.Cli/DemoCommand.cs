using System.CommandLine;
using Purlin.Demo;
using Purlin.Journal.Archive;

namespace Purlin.Cli;

/// <summary><c>purlin demo DIR</c>: writes the demo archive.</summary>
internal static class DemoCommand
{
    public static Command Build(Terminal terminal)
    {
        Argument<DirectoryInfo> folder = new("DIR") { Description = "Folder to write demo.purlin into; made when it is not there" };
        Command command = new("demo", "Write the demo inspection, an invented house, as DIR/demo.purlin") { folder };
        command.SetAction(parsed => Write(terminal, parsed.GetRequiredValue(folder)));
        return command;
    }

    private static int Write(Terminal terminal, DirectoryInfo folder)
    {
        terminal.Progress("drawing the pictures ...");
        var demo = DemoInspection.Write();
        folder.Create();
        var path = Path.Combine(folder.FullName, "demo.purlin");
        // Written beside and renamed, so that a half-written file never bears the name.
        var half = path + ".part";
        using (var file = File.Create(half))
            ArchiveWriter.Write(file, demo.Entries, demo.Pictures.Values.Select(bytes => ArchivePhoto.Of(bytes, "image/jpeg")));
        File.Move(half, path, overwrite: true);
        terminal.ProgressDone();
        terminal.Out.WriteLine($"{path}: {demo.Entries.Count} entries, {demo.Pictures.Count} pictures. The house, the people and the pictures are invented.");
        return ExitStatus.Done;
    }
}
