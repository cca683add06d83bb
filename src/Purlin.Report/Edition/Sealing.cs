using System.Text;
using Purlin.Journal;

namespace Purlin.Report.Edition;

/// <summary>The hashes an edition is sealed with; pure functions, so that the office, the phone and the command line agree.</summary>
public static class Sealing
{
    /// <summary>Hash of a page as it is stored: UTF-8, no byte order mark.</summary>
    public static string OfPage(string page) => Sha.Of(Encoding.UTF8.GetBytes(page));

    /// <summary>Hash of a PDF as it is stored.</summary>
    public static string OfPdf(ReadOnlySpan<byte> pdf) => Sha.Of(pdf);

    /// <summary>A hash in groups of eight, to be read aloud and compared by eye.</summary>
    public static string InGroups(string hash)
    {
        ArgumentNullException.ThrowIfNull(hash);
        return string.Join(' ', hash.Chunk(8).Select(group => new string(group)));
    }
}
