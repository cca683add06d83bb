using System.Text;

namespace Purlin.Book.Search;

/// <summary>
/// How a word sounds, roughly (a phonetic key): its consonants as an English ear hears them. "termight" and "termite" sound alike.
/// </summary>
internal static class WordSound
{
    private static readonly (string Written, string Heard)[] Groups =
    [
        ("tch", "x"), ("ght", "t"), ("sch", "sk"), ("tion", "xn"), ("sion", "xn"), ("ph", "f"), ("gh", ""), ("kn", "n"), ("wr", "r"),
        ("wh", "w"), ("ck", "k"), ("ch", "x"), ("sh", "x"), ("qu", "kw"), ("dge", "j"),
    ];

    /// <summary>The consonants of a word; its first letter stays even if it is a vowel.</summary>
    public static string Of(string word)
    {
        var heard = new StringBuilder(word.Length);
        for (var at = 0; at < word.Length; at++)
        {
            if (Group(word, at) is var (length, sound))
            {
                foreach (var letter in sound) Hear(heard, letter);
                at += length - 1;
            }
            else if (word[at] is 'a' or 'e' or 'i' or 'o' or 'u' or 'y' or 'w' or 'h')
            {
                if (at == 0) heard.Append(word[at]);
            }
            else Hear(heard, Letter(word, at));
        }
        return heard.ToString();
    }

    private static (int, string)? Group(string word, int at)
    {
        foreach (var (written, sound) in Groups)
            if (string.CompareOrdinal(word, at, written, 0, written.Length) == 0) return (written.Length, sound);
        return null;
    }

    private static char Letter(string word, int at) => word[at] switch
    {
        'c' when at + 1 < word.Length && word[at + 1] is 'e' or 'i' or 'y' => 's',
        'c' or 'q' => 'k',
        'z' => 's',
        'd' => 't',
        var letter => letter,
    };

    /// <summary>A letter heard twice is heard once.</summary>
    private static void Hear(StringBuilder heard, char letter)
    {
        if (heard.Length == 0 || heard[^1] != letter) heard.Append(letter);
    }
}
