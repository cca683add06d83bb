using Purlin.Book;
using Purlin.Book.Search;

namespace Purlin.Tests.Judgement;

/// <summary>The lists of words are data, and a line that can do nothing or undoes another is a slip of the pen.</summary>
public sealed class SpokenListTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly HashSet<string> Known = [.. Book.Conditions.Values.SelectMany(condition => condition.Words.Concat(condition.Signs).Append(condition.Name).Append(condition.Component).Append(condition.Means)).SelectMany(Stems.Split).Select(Stems.Of)];

    [Fact]
    public void A_line_is_written_as_it_is_heard()
    {
        foreach (var key in Book.SameWords.Keys.Concat(Book.Misheard.Keys).Concat(Book.FillerWords))
            Assert.True(string.Join(' ', Stems.Split(key)) == key, $"\"{key}\" can never be heard: write \"{string.Join(' ', Stems.Split(key))}\"");
    }

    [Fact]
    public void What_words_mean_is_said_in_words_of_the_book()
    {
        var lost = Book.SameWords.Where(line => Stems.Split(line.Value).TrueForAll(word => !Known.Contains(Stems.Of(word)))).Select(line => $"{line.Key}: {line.Value}").ToList();
        Assert.True(lost.Count == 0, string.Join("; ", lost));
    }

    [Fact]
    public void What_was_misheard_becomes_something_that_can_be_understood()
    {
        var lost = Book.Misheard.Where(line => line.Key == line.Value || !Understood(line.Value)).Select(line => $"{line.Key}: {line.Value}").ToList();
        Assert.True(lost.Count == 0, string.Join("; ", lost));
    }

    [Fact]
    public void No_word_of_the_book_counts_as_misheard()
    {
        HashSet<string> headings = [.. Book.Conditions.Values.SelectMany(condition => condition.Words.Append(condition.Name)).SelectMany(Stems.Split)];
        var lost = Book.Misheard.Keys.Where(headings.Contains).ToList();
        Assert.True(lost.Count == 0, string.Join("; ", lost));
    }

    [Fact]
    public void No_filler_is_the_whole_of_a_heading_or_stands_for_something()
    {
        Assert.DoesNotContain(Book.FillerWords, Book.SameWords.ContainsKey);
        Assert.DoesNotContain(Book.Conditions.Values.SelectMany(condition => condition.Words.Append(condition.Name)), phrase => Stems.Split(phrase).TrueForAll(Book.FillerWords.Contains));
    }

    /// <summary>A word of the book, or a word or phrase that stands for one.</summary>
    private static bool Understood(string said)
    {
        var words = Stems.Split(said);
        return words.Exists(word => Known.Contains(Stems.Of(word)) || Book.SameWords.ContainsKey(word) || Book.SameWords.ContainsKey(Stems.Of(word))) || Book.SameWords.ContainsKey(said);
    }
}
