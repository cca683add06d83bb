using Purlin.Book;
using Purlin.Book.Search;

namespace Purlin.Bench;

/// <summary>Finding conditions by words: all phrases of the fixture, and the index that is made once for a book.</summary>
internal static class SpokenBench
{
    public static void Run(Results results)
    {
        string[] phrases = [.. File.ReadAllLines("tests/Purlin.Tests/Fixtures/spoken.csv").Where(line => line.Length > 0 && line[0] != '#')
            .Skip(1).Select(line => line.Split(',')[1])];
        var book = RuleBook.BuiltIn;
        Spoken spoken = new(book);
        results.Alone("the index of the built-in book", () => GC.KeepAlive(new Spoken(book)));
        results.Alone($"{phrases.Length} phrases", () =>
        {
            foreach (var phrase in phrases) spoken.Find(phrase);
        });
    }
}
