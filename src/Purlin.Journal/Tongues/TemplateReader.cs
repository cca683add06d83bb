using System.Collections.Immutable;

namespace Purlin.Journal.Tongues;

/// <summary>Reads a sentence into its pieces. It never refuses: what it cannot read as a place stays text.</summary>
internal sealed class TemplateReader(string sentence)
{
    // A choice within a choice within a choice is no sentence any more.
    private const int Deepest = 4;

    private int at;
    private int depth;

    internal Template Whole() => Until(sentence.Length, inChoice: false);

    private Template Until(int end, bool inChoice)
    {
        var pieces = ImmutableArray.CreateBuilder<Template.Piece>();
        var text = at;
        void Flush()
        {
            if (at > text) pieces.Add(new Template.Plain(sentence[text..at]));
        }
        while (at < end)
        {
            if (inChoice && sentence[at] == '#')
            {
                Flush();
                pieces.Add(new Template.Place("#", "", "#"));
                text = ++at;
            }
            else if (sentence[at] == '{' && Close(at, end) is var close and > 0 && Piece(at, close) is { } piece)
            {
                Flush();
                pieces.Add(piece);
                text = at = close + 1;
            }
            else at++;
        }
        Flush();
        return new Template(pieces.ToImmutable());
    }

    /// <summary>Where the brace that opens here is closed; -1 when it is not.</summary>
    private int Close(int open, int end)
    {
        var deep = 0;
        for (var index = open; index < end; index++)
        {
            if (sentence[index] == '{') deep++;
            else if (sentence[index] == '}' && --deep == 0) return index;
        }
        return -1;
    }

    private Template.Piece? Piece(int open, int close)
    {
        var inside = sentence[(open + 1)..close];
        var name = Name(inside);
        if (name.Length == 0) return null;
        if (name.Length == inside.Length) return new Template.Place(name, "", sentence[open..(close + 1)]);
        if (inside[name.Length] == ':' && !inside.Contains('{', StringComparison.Ordinal))
            return new Template.Place(name, inside[(name.Length + 1)..], sentence[open..(close + 1)]);
        return inside[name.Length] == ',' && depth < Deepest ? Choice(name, open + 1 + name.Length, close) : null;
    }

    private Template.Choice? Choice(string name, int from, int close)
    {
        var kinds = sentence[from..close].Split(',', 3);
        if (kinds.Length < 3 || kinds[1].Trim() is not ("plural" or "select")) return null;
        var cases = ImmutableArray.CreateBuilder<(string, Template)>();
        var index = from + kinds[0].Length + kinds[1].Length + 2;
        while (index < close)
        {
            var open = sentence.IndexOf('{', index, close - index);
            if (open < 0) break;
            var end = Close(open, close);
            if (end < 0) return null;
            var inner = new TemplateReader(sentence) { at = open + 1, depth = depth + 1 };
            cases.Add((sentence[index..open].Trim(), inner.Until(end, inChoice: true)));
            index = end + 1;
        }
        return cases.Count == 0 ? null : new Template.Choice(name, kinds[1].Trim() == "plural", cases.ToImmutable());
    }

    private static string Name(string inside)
    {
        var length = 0;
        while (length < inside.Length
            && (char.IsAsciiLetter(inside[length])
            || (length > 0 && (char.IsAsciiDigit(inside[length]) || inside[length] is '-' or '_')))) length++;
        return inside[..length];
    }
}
