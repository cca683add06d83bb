using System.Runtime.InteropServices;

namespace Purlin.Office.Storage;

/// <summary>Forces files and folders to disk (a renamed file is only there after a power cut when its folder was forced too), and keeps them private.</summary>
internal static partial class Disk
{
    private const int ReadOnly = 0;
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode OwnerFolder = OwnerFile | UnixFileMode.UserExecute;

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

    /// <summary>A folder that no other account of the machine can look into, with those above it that are missing too; one that is there is left as it is.</summary>
    public static void MakePrivateFolder(string folder)
    {
        if (Directory.Exists(folder)) return;
        if (Path.GetDirectoryName(folder) is { Length: > 0 } above) MakePrivateFolder(above);
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(folder, OwnerFolder);
    }

    /// <summary>Makes a folder private, whoever made it.</summary>
    public static void ClosePrivateFolder(string folder)
    {
        MakePrivateFolder(folder);
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(folder, OwnerFolder);
    }

    /// <summary>Closes a file to other accounts; nothing when it is not there.</summary>
    public static void MakePrivate(string file)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(file)) File.SetUnixFileMode(file, OwnerFile);
    }

    /// <summary>Opens a file to write, private from its first moment.</summary>
    public static FileStream Write(string file, FileMode mode)
    {
        FileStreamOptions options = new() { Mode = mode, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = OwnerFile;
        return new FileStream(file, options);
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
