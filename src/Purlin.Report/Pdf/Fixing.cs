using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Purlin.Report.Pdf;

/// <summary>
/// Makes the file the same each time. The library puts the clock and chance into a file: dates, ids, the prefix of an embedded font.
/// Each stands in plain bytes of fixed length, so it is overwritten in place: with the date of the issue, a count, and a hash of the rest.
/// </summary>
internal static class Fixing
{
    private const string Told = "<rdf:Description rdf:about=\"\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\" "
        + "xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><pdfuaid:part>1</pdfuaid:part>"
        + "<dc:language><rdf:Bag><rdf:li>LANGUAGE</rdf:li></rdf:Bag></dc:language></rdf:Description>";

    public static byte[] SameEachTime(byte[] pdf, DateTimeOffset at, string language)
    {
        Accessible(pdf, language);
        var utc = at.ToUniversalTime();
        var stamp = utc.ToString("yyyyMMddHHmmss", CultureInfo.InvariantCulture) + "+00'00'";
        var iso = utc.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture) + "+00:00";
        foreach (var mark in (string[])["/CreationDate(D:", "/ModDate(D:", "/M(D:"]) Each(pdf, mark, _ => stamp);
        foreach (var mark in (string[])["<xmp:CreateDate>", "<xmp:ModifyDate>"]) Each(pdf, mark, _ => iso);
        foreach (var mark in (string[])["/NM("]) Each(pdf, mark, Count);
        Fonts(pdf);
        Identify(pdf);
        return pdf;
    }

    private static void Each(byte[] pdf, string mark, Func<int, string> text)
    {
        var token = Encoding.ASCII.GetBytes(mark);
        var number = 0;
        for (var at = Next(pdf, token, 0); at >= 0; at = Next(pdf, token, at))
        {
            var put = Encoding.ASCII.GetBytes(text(number++));
            if (at + put.Length > pdf.Length) return;
            put.CopyTo(pdf, at);
        }
    }

    private static string Count(int number) => string.Create(CultureInfo.InvariantCulture, $"00000000-0000-4000-8000-{number:x12}");

    // A subset's name begins with six letters and a plus sign (ISO 32000-1, section 9.6.4); the same letters go on naming the same subset.
    private static void Fonts(byte[] pdf)
    {
        Dictionary<string, byte[]> known = [];
        foreach (var mark in (string[])["/FontName/", "/BaseFont/"])
        {
            var token = Encoding.ASCII.GetBytes(mark);
            for (var at = Next(pdf, token, 0); at >= 0 && at + 7 < pdf.Length; at = Next(pdf, token, at))
            {
                if (pdf[at + 6] != (byte)'+') continue;
                var prefix = Encoding.ASCII.GetString(pdf, at, 6);
                if (!known.TryGetValue(prefix,
                    out var put)) known[prefix] = put = Encoding.ASCII.GetBytes("PURL" + (char)('A' + known.Count / 26) + (char)('A' + known.Count % 26));
                put.CopyTo(pdf, at);
            }
        }
    }

    // The library writes random ids of no use to anybody into the metadata. In their place, no byte longer, stands what ISO 14289-1,
    // section 5,
    // asks for: that the file is made by PDF/UA-1; and its language, as Dublin Core has it.
    private static void Accessible(byte[] pdf, string language)
    {
        var from = pdf.AsSpan().IndexOf("<rdf:Description rdf:about=\"\" xmlns:xmpMM="u8);
        if (from < 0) return;
        var end = "</rdf:Description>"u8;
        var length = pdf.AsSpan(from).IndexOf(end) + end.Length;
        var told = Told.Replace("LANGUAGE", language, StringComparison.Ordinal);
        if (told.Length > length) throw new InvalidOperationException($"the metadata has no room for the language {language}");
        Encoding.ASCII.GetBytes(told.PadRight(length)).CopyTo(pdf, from);
    }

    private static void Identify(byte[] pdf)
    {
        var token = "/ID[<"u8;
        var at = pdf.AsSpan().LastIndexOf(token);
        if (at < 0) return;
        at += token.Length;
        var second = at + 32 + 2;
        Encoding.ASCII.GetBytes(new string('0', 32)).CopyTo(pdf, at);
        Encoding.ASCII.GetBytes(new string('0', 32)).CopyTo(pdf, second);
        var hash = Encoding.ASCII.GetBytes(Convert.ToHexString(SHA256.HashData(pdf))[..32]);
        hash.CopyTo(pdf, at);
        hash.CopyTo(pdf, second);
    }

    private static int Next(byte[] pdf, byte[] token, int from)
    {
        var at = pdf.AsSpan(from).IndexOf(token);
        return at < 0 ? -1 : from + at + token.Length;
    }
}
