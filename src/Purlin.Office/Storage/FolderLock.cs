using System.Globalization;
using System.Text;

namespace Purlin.Office.Storage;

/// <summary>One office to a folder: the lock is held while it runs and falls when it ends, however it ends.</summary>
public sealed class FolderLock : IDisposable
{
    private readonly FileStream file;

    private FolderLock(FileStream file) => this.file = file;

    /// <summary>Takes the folder.</summary>
    /// <exception cref="OfficeRefused">Somebody has it.</exception>
    public static FolderLock Take(string folder)
    {
        var path = Path.Combine(folder, "office.lock");
        FileStream taken;
        try
        {
            taken = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException locked) when (IsLocked(locked))
        {
            throw new OfficeRefused(
                $"Another Purlin is running with the data in {folder}. Two of them on one folder would contradict each other; stop that one first, "
                + "or give this one another --data.",
                locked);
        }

        Disk.MakePrivate(path);
        try
        {
            taken.SetLength(0);
            taken.Write(Encoding.ASCII.GetBytes(Environment.ProcessId.ToString(CultureInfo.InvariantCulture)));
            taken.Flush();
        }
        catch (IOException full) when (Disk.IsFull(full))
        {
            // Whose it is is only said for people; the lock itself needs no room.
        }

        return new FolderLock(taken);
    }

    /// <summary>EWOULDBLOCK on Linux and on macOS, ERROR_SHARING_VIOLATION on Windows.</summary>
    private static bool IsLocked(IOException failure) => (failure.HResult & 0xFFFF) is 11 or 35 or 32;

    public void Dispose() => file.Dispose();
}
