namespace Purlin.Field.Here;

/// <summary>The words of a sign with those that were said set apart, so that the eye finds why it is offered.</summary>
public static class Matched
{
    // Shorter beginnings are alike by chance.
    private const int Least = 3;

    /// <summary>The text in pieces, each with whether it was said.</summary>
    public static IReadOnlyList<(string Text, bool IsSaid)> In(string text, string said)
    {
        var words = said.Split([' ', ',', '.', '/', '-'], StringSplitOptions.RemoveEmptyEntries);
        List<(string, bool)> pieces = [];
        var at = 0;
        while (at < text.Length)
        {
            var end = at;
            while (end < text.Length && char.IsLetterOrDigit(text[end]) == char.IsLetterOrDigit(text[at])) end++;
            var word = text[at..end];
            var alike = words.Length == 0 ? 0 : words.Max(one => Alike(word, one));
            if (alike > 0) pieces.Add((word[..alike], true));
            if (alike < word.Length) pieces.Add((word[alike..], false));
            at = end;
        }
        return pieces;
    }

    /// <summary>How many letters of a word were said from its beginning on; none when what was said goes on as another word.</summary>
    private static int Alike(string word, string said)
    {
        var alike = 0;
        while (alike < word.Length && alike < said.Length
            && char.ToUpperInvariant(word[alike]) == char.ToUpperInvariant(said[alike])) alike++;
        // "stepped" and "steps" share their stem; "steel" and "steps" only their first letters.
        return alike >= Least && Math.Min(word.Length, said.Length) - alike <= 2 ? alike : 0;
    }
}
