using System.Text;
using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Tests;

/// <summary>
/// A language that nobody speaks: every sentence of the standard one bracketed and accented, its places kept. Plain English that is left where it
/// was laid over stands in no file of sentences.
/// </summary>
internal static class InventedTongue
{
    internal static Tongue Words { get; } = Tongue.BuiltIn(Tongue.Standard).Under(Tongue.BuiltIn(Tongue.Standard).Sentences
        .Where(line => !line.Key.StartsWith("language.", StringComparison.Ordinal))
        .Concat(Sentences.In(RuleBook.BuiltIn).Where(sentence => !sentence.Key.StartsWith("words/", StringComparison.Ordinal)).Select(sentence => new KeyValuePair<string, string>(sentence.Key, sentence.Text)))
        .ToDictionary(line => line.Key, line => line.Key.EndsWith("/trade", StringComparison.Ordinal) ? line.Value : Accented(line.Value)), "x-invented");

    internal static RuleBook Book { get; } = RuleBook.BuiltIn.In(Words);

    /// <summary>What is left of a text without what the language brought: within its outermost brackets nothing is plain.</summary>
    internal static string Plain(string text)
    {
        var plain = new StringBuilder();
        var deep = 0;
        foreach (var letter in text)
        {
            if (letter == '⟦') deep++;
            else if (letter == '⟧') deep--;
            else if (deep <= 0) plain.Append(letter);
        }
        return plain.ToString();
    }

    internal static string Accented(string sentence)
    {
        var at = 0;
        return $"⟦{Text(sentence, ref at, inChoice: false)}⟧";
    }

    private static string Text(string sentence, ref int at, bool inChoice)
    {
        var accented = new StringBuilder();
        for (; at < sentence.Length && !(inChoice && sentence[at] == '}'); at++)
        {
            if (sentence[at] == '{') Place(sentence, ref at, accented);
            else accented.Append(sentence[at] switch { 'a' => 'á', 'e' => 'é', 'i' => 'í', 'o' => 'ó', 'u' => 'ú', 'n' => 'ñ', var letter => letter });
        }
        return accented.ToString();
    }

    private static void Place(string sentence, ref int at, StringBuilder accented)
    {
        // What stands before the first case of a choice, or the whole of a simple place, is kept.
        while (sentence[at] != '}')
        {
            accented.Append(sentence[at++]);
            if (at >= sentence.Length) return;
            if (sentence[at] != '{') continue;
            accented.Append('{');
            at++;
            accented.Append(Text(sentence, ref at, inChoice: true));
            accented.Append('}');
            at++;
        }
        accented.Append('}');
    }
}
