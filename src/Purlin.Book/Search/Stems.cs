namespace Purlin.Book.Search;

/// <summary>
/// Takes words apart and brings each to one form (a stemmer), good enough to meet and not for print: "shingles" and "shingle", "dripping"
/// and "drip".
/// </summary>
internal static class Stems
{
    private static readonly string[] Hissing = ["sses", "xes", "ches", "shes"];

    /// <summary>The words of a text in small letters; an apostrophe joins, everything else that is no letter or figure parts.</summary>
    public static List<string> Split(string said)
    {
        List<string> parts = [];
        var from = -1;
        var letters = said.Replace("'", "", StringComparison.Ordinal).Replace("’", "", StringComparison.Ordinal).ToLowerInvariant();
        for (var at = 0; at <= letters.Length; at++)
        {
            if (at < letters.Length && char.IsLetterOrDigit(letters[at])) from = from < 0 ? at : from;
            else if (from >= 0)
            {
                parts.Add(letters[from..at]);
                from = -1;
            }
        }
        return parts;
    }

    /// <summary>A word without its usual endings.</summary>
    public static string Of(string word)
    {
        if (word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal)) return word[..^3] + "y";
        if (word.Length > 4 && Hissing.Any(ending => word.EndsWith(ending, StringComparison.Ordinal))) return word[..^2];
        if (word.Length > 3 && word[^1] == 's' && word[^2] is not ('s' or 'u' or 'i')) word = word[..^1];
        if (word.Length > 5 && word.EndsWith("ing", StringComparison.Ordinal)) word = Undouble(word[..^3]);
        else if (word.Length > 4 && word.EndsWith("ed", StringComparison.Ordinal)) word = Undouble(word[..^2]);
        else if (word.Length > 6 && word.EndsWith("ly", StringComparison.Ordinal)) word = word[..^2];
        return word.Length > 4 && word[^1] == 'e' ? word[..^1] : word;
    }

    private static string Undouble(string word) =>
        word.Length > 3 && word[^1] == word[^2] && word[^1] is not ('l' or 's' or 'z') ? word[..^1] : word;
}
