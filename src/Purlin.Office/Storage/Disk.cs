using System.Runtime.InteropServices;

namespace Purlin.Office.Storage;

/// <summary>Forces files and folders to disk: a renamed file is only there after a power cut when its folder was forced too.</summary>
internal static partial class Disk
{
    private const int ReadOnly = 0;

    public static void Force(FileStream file) => file.Flush(flushToDisk: true);

    public static void ForceFolder(string folder)
    {
        // Windows has no such call; its file system journals renames.
        if (OperatingSystem.IsWindows()) return;
        var handle = Open(folder, ReadOnly);
        if (handle < 0) throw new IOException($"the folder {folder} cannot be opened");
        var failed = FSync(handle) != 0;
        _ = Close(handle);
        if (failed) throw new IOException($"the folder {folder} could not be forced to disk");
    }

    /// <summary>Whether this failure means that the disk, or a quota on it, is full.</summary>
    public static bool IsFull(Exception failure) => failure switch
    {
        Microsoft.Data.Sqlite.SqliteException sqlite => sqlite.SqliteErrorCode == 13,
        // ENOSPC and EDQUOT on Linux and macOS, ERROR_DISK_FULL on Windows.
        IOException io => (io.HResult & 0xFFFF) is 28 or 122 or 69 or 112 or 39,
        _ => failure.InnerException is { } inner && IsFull(inner),
    };

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int FSync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
