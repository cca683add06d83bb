using Purlin.Office.Storage;

namespace Purlin.Office.Copies;

/// <summary>Puts a backup into a folder of its own. What is there is never written over.</summary>
public static class Restore
{
    /// <summary>Copies everything of a backup; whether it is whole is a look of its own: <see cref="Verify"/>.</summary>
    /// <exception cref="OfficeRefused">There is no backup, or the folder is not empty.</exception>
    public static async Task Run(string backup, string data, CancellationToken cancel)
    {
        if (!File.Exists(Path.Combine(backup, OfficeFolder.DatabaseFile))) throw new OfficeRefused($"{backup} holds no backup of an office. Nothing was restored.");
        if (Directory.Exists(data) && Directory.EnumerateFileSystemEntries(data).Any())
            throw new OfficeRefused($"{data} is not empty. Nothing was restored; name a new folder, and keep the old one until the new one is in use.");
        Disk.ClosePrivateFolder(data);
        foreach (var file in Directory.EnumerateFiles(backup, "*", SearchOption.AllDirectories))
        {
            cancel.ThrowIfCancellationRequested();
            var name = Path.GetRelativePath(backup, file);
            if (name.EndsWith(".new", StringComparison.Ordinal)) continue;
            var into = Path.Combine(data, name);
            Disk.MakePrivateFolder(Path.GetDirectoryName(into)!);
            await using var from = File.OpenRead(file);
            await using var to = Disk.Write(into, FileMode.CreateNew);
            await from.CopyToAsync(to, cancel);
            Disk.Force(to);
        }
    }
}
