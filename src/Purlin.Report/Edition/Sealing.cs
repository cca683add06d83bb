namespace Purlin.Report.Edition;

/// <summary>How the hash of a record is shown to people.</summary>
public static class Sealing
{
    /// <summary>A hash in groups of eight, to be read aloud and compared by eye.</summary>
    public static string InGroups(string hash)
    {
        ArgumentNullException.ThrowIfNull(hash);
        return string.Join(' ', hash.Chunk(8).Select(group => new string(group)));
    }
}
