using System.Text.RegularExpressions;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>
/// The text of a plate cut at its labels. Labels are sought in a folded copy in which 0 and O, 1, L and I, 5 and S, 8 and B are one, so
/// that a misread label is still one; the values are taken from the text itself. What stands between two labels belongs to the first:
/// where a plate prints its labels in one row and its values in the next, no value is taken, for it could belong to either.
/// </summary>
internal sealed partial class PlateText
{
    private readonly Dictionary<string, List<string>> segments = new(StringComparer.Ordinal);

    internal PlateText(string text)
    {
        // A word cut at the end of a line by a hyphen is put together again.
        Raw = Hyphen().Replace(text.ToUpperInvariant().ReplaceLineEndings("\n"), "${end}");
        var folded = string.Concat(Raw.Select(letter => letter switch
        {
            '0' => 'O',
            '1' or 'L' or '|'
            or '!' => 'I',
            '5' => 'S',
            '8' => 'B',
            _ => letter
        }));
        var labels = Label().Matches(folded);
        for (var index = 0; index < labels.Count; index++)
        {
            var start = labels[index].Index + labels[index].Length;
            var end = index + 1 < labels.Count ? labels[index + 1].Index : Raw.Length;
            var name = labels[index].Groups.Values.Skip(1).First(group => group.Success).Name;
            if (!segments.TryGetValue(name, out var list)) segments[name] = list = [];
            list.Add(Raw[start..end]);
        }
    }

    /// <summary>The text in capitals, lines kept.</summary>
    internal string Raw { get; }

    /// <summary>What stands behind each label of that name.</summary>
    internal IReadOnlyList<string> Behind(string name) => segments.TryGetValue(name, out var list) ? list : [];

    [GeneratedRegex(@"(?<end>[A-Z0-9])-[ \t]*\n[ \t]*", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Hyphen();

    // In folded letters: L is I.
    [GeneratedRegex(
        @"(?<![A-Z0-9])(?:" +
        @"(?<model>MODEI(?:\s*(?:NUMBER|NO|NUM|#))?|M\s?/\s?N|MOD\.?\s*NO|MDI)" +
        @"|(?<serial>SERIAI(?:\s*(?:NUMBER|NO|NUM|#))?|S\s?/\s?N|SER\.?\s*NO)" +
        @"|(?<maker>(?:MFG|MFD|MFR|MANUFACTURED)\.?\s*BY)" +
        @"|(?<date>(?:DATE\s*(?:OF\s*)?)(?:MFD|MFG|MFR|MANUFACTURED|MANUFACTURE|MANUF|CODE)|(?:MFD|MFG|MFR|MANUFACTURED|MANUFACTURE|MANUF)\.?(?:\s*(?:DATE|IN))?|BUIIT)" +
        @"|(?<mca>MIN(?:IMUM)?\.?\s*(?:SUPPIY\s*)?(?:CIRCUIT|CKT)\.?\s*(?:AMPACITY|AMPS?)|MCA|CIRCUIT\s*AMPACITY)" +
        @"|(?<mocp>MAX(?:IMUM)?\.?\s*(?:FUSE|OVER\s?-?\s?CURRENT|BREAKER|BKR|CKT\.?\s*BKR|CIRCUIT\s*BREAKER|HACR)|MOCP|MOP)" +
        @"|(?<charge>(?:FACTORY\s*)?CHARGED?)" +
        @"|(?<refrigerant>REFRIGERANT|REFRIG)" +
        @"|(?<input>(?:MAX(?:IMUM)?\.?\s*)?INPUT(?:\s*RATING)?)" +
        @"|(?<output>OUTPUT)" +
        @"|(?<capacity>(?:NOMINAI\s*|COOIING\s*|RATED\s*)?CAPACITY)" +
        @"|(?<other>VOITS?|VOITAGE|PHASE|PH|HERTZ|HZ|R\.?I\.?A|I\.?R\.?A|F\.?I\.?A|COMPRESSOR|FAN|MOTOR|DESIGN|TEST|PRESSURE|HIGH|IOW|WEIGHT|PRODUCT)" +
        @")(?![A-Z])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Label();
}
