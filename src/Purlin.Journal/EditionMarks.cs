using System.Globalization;
using System.Text;

namespace Purlin.Journal;

/// <summary>
/// The hash that an edition prints. The seal is the hash of the sealing line, which holds the hashes of page and PDF, so neither can print it. They print
/// the mark: the hash of everything else in that line, which anybody who holds the line can work out again.
/// </summary>
public static class EditionMarks
{
    /// <summary>SHA-256 over the members in words, one a line, in this order; <c>page</c> and <c>pdf</c> are left out.</summary>
    public static string Of(string inspection, EntryBody.EditionSealed edition)
    {
        ArgumentNullException.ThrowIfNull(edition);
        StringBuilder words = new();
        words.Append("purlin edition\n").Append(inspection).Append('\n');
        words.Append(edition.Number.ToString(CultureInfo.InvariantCulture)).Append('\n');
        words.AppendJoin(',', edition.Heads.OrderBy(head => head.Key, StringComparer.Ordinal).Select(head => string.Create(CultureInfo.InvariantCulture, $"{head.Key}:{head.Value}"))).Append('\n');
        words.Append(edition.EntriesRoot).Append('\n').AppendJoin(',', edition.Photos).Append('\n');
        words.Append(edition.RuleBook).Append('\n').Append(edition.PreviousEdition).Append('\n');
        words.Append(edition.At.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture)).Append('\n');
        return Sha.Of(Encoding.UTF8.GetBytes(words.ToString()));
    }
}
