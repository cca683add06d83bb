using System.Globalization;

namespace Purlin.Office.Storage;

/// <summary>Office time as the wire carries it: UTC, no offset to misread.</summary>
internal static class Instant
{
    public static string Seconds(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    public static string Milliseconds(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
}
