using System.Text;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Book;

/// <summary>Which rule book this is: the number and the hash over its files.</summary>
public sealed class EditionTests
{
    private static readonly DateOnly Today = new(2026, 11, 26);

    private static BookFile File(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    [Fact]
    public void The_built_in_book_bears_the_edition_that_was_stamped_on_its_files()
    {
        var files = BookFiles.Whole();
        var stamped = BookEdition.In(files);
        var hash = BookEdition.HashOf(files);
        Assert.True(stamped.Sha256 == hash,
            $"The rule book has changed since edition {stamped.Number} was stamped on it, so two different books would bear one name. Run: purlin book stamp rulebook");
        Assert.Equal((stamped.Number, hash), (RuleBook.BuiltIn.Edition, RuleBook.BuiltIn.Hash));
    }

    [Fact]
    public void Every_file_of_the_folder_is_in_the_book()
    {
        string[] patterns = ["*.json", "*.csv"];
        var folder = patterns.SelectMany(pattern => Repository.Files("rulebook", pattern)).Select(Repository.Short).Order(StringComparer.Ordinal);
        Assert.Equal(folder, BookFiles.Whole().Select(file => file.Path));
    }

    [Fact]
    public void The_whole_book_with_its_tables_and_languages_is_sound() => Assert.Equal("", string.Join('\n', BookReader.Read(BookFiles.Whole()).Refused));

    [Fact]
    public void One_letter_more_is_another_book()
    {
        BookFile[] files = [File("rulebook/words/en.json", "{}"), File("rulebook/tables/a.csv", "1")];
        Assert.NotEqual(BookEdition.HashOf(files), BookEdition.HashOf([files[0], File("rulebook/tables/a.csv", "12")]));
        Assert.NotEqual(BookEdition.HashOf(files), BookEdition.HashOf([files[0], File("rulebook/tables/b.csv", "1")]));
        Assert.NotEqual(BookEdition.HashOf(files), BookEdition.HashOf([files[0]]));
    }

    [Fact]
    public void Order_of_files_line_ends_and_the_stamp_itself_change_nothing()
    {
        BookFile[] files = [File("rulebook/words/en.json", "{\n}"), File("rulebook/tables/a.csv", "1\n")];
        BookFile[] same = [File(BookEdition.Path, "anything"), File("rulebook/tables/a.csv", "1\r\n"), File("rulebook/words/en.json", "{\r\n}")];
        Assert.Equal(BookEdition.HashOf(files), BookEdition.HashOf(same));
    }

    [Theory]
    [InlineData("2026.11.3", "2026.11.4")]
    [InlineData("2026.10.9", "2026.11.1")]
    [InlineData("not stamped", "2026.11.1")]
    public void A_changed_book_gets_the_next_number_of_its_month(string before, string after)
    {
        BookFile[] files = [File(BookEdition.Path, new BookEdition { Number = before, Sha256 = new string('0', 64) }.Write()), File("rulebook/words/en.json", "{}")];
        Assert.Equal(after, BookEdition.Stamp(files, Today).Number);
    }

    [Fact]
    public void Stamping_what_did_not_change_changes_nothing()
    {
        BookFile[] files = [File("rulebook/words/en.json", "{}")];
        var stamp = BookEdition.Stamp(files, Today);
        Assert.Equal(stamp, BookEdition.Stamp([.. files, File(BookEdition.Path, stamp.Write())], Today.AddYears(1)));
    }
}
