using System.Security.Cryptography;
using Purlin.Hearing;
using Purlin.Hearing.Listening;
using Purlin.Journal;

namespace Purlin.Cli;

/// <summary>
/// The photographs of a folder on the clock of a narration: by the time their tags or files have, against the time the recording began.
/// </summary>
internal static class NarrationPhotos
{
    private const int Most = 5_000;
    private const long MostBytes = 256L * 1024 * 1024;

    // A clock time from here on in plain text is a time of day and not the age of a recording.
    private const double TimesOfDay = 5 * 3600;

    private static readonly string[] Kinds = [".jpg", ".jpeg", ".png", ".webp", ".heic"];

    /// <summary>All photographs of a folder, timed.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="narration">File of the narration.</param>
    /// <param name="transcript">Its words.</param>
    /// <param name="began">When the recording began; none to take it from when the file was last written.</param>
    public static Checked<IReadOnlyList<TimedPhoto>> Read(string folder, string narration, Transcript transcript, DateTimeOffset? began)
    {
        if (!Directory.Exists(folder)) return new Refusal("photos", Said.Verbatim(folder), "a folder with the photographs of the visit");
        var files = Directory.EnumerateFiles(folder)
            .Where(file => Kinds.Contains(Path.GetExtension(file).ToLowerInvariant())).Order(StringComparer.Ordinal).Take(Most).ToList();
        var first = transcript.Words.FirstOrDefault(word => word.From is not null).From ?? 0;
        var last = transcript.Words.LastOrDefault(word => word.To is not null).To ?? 0;
        var start = began ?? new DateTimeOffset(File.GetLastWriteTimeUtc(narration)).ToLocalTime().AddSeconds(-last);
        return files.Where(file => new FileInfo(file).Length <= MostBytes).Select(Timed).ToList();

        TimedPhoto Timed(string file)
        {
            var bytes = File.ReadAllBytes(file);
            var sha = Convert.ToHexStringLower(SHA256.HashData(bytes));
            var (time, hasOffset) = ExifTime.Of(bytes) ?? (new DateTimeOffset(File.GetLastWriteTimeUtc(file)).ToLocalTime(), true);
            if (first >= TimesOfDay && began is null) return new TimedPhoto(sha, time.TimeOfDay.TotalSeconds);
            // A camera that names no offset shows the clock of the place, as the recorder does.
            return new TimedPhoto(sha, hasOffset ? (time - start).TotalSeconds : TimeSpan.FromTicks(time.Ticks - start.Ticks).TotalSeconds);
        }
    }
}
