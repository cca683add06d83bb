using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>Words that are data and sentences at once: names of inputs and the words that an input or a result may be.</summary>
public static class Words
{
    /// <summary>One of the words of an input, a table or a result, as a person reads it: <c>outdoor vertical</c>.</summary>
    public static Said Of(string word) => Said.InData("word." + word, word);

    /// <summary>The name of an input as a person reads it: <c>floor area</c>.</summary>
    public static Said OfInput(string name) => Said.InData("input." + name, name.Replace('_', ' '));
}
