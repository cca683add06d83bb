using Purlin.Journal;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// The words inspectors say lead to the condition they mean. The phrases stand in <c>Fixtures/spoken.csv</c>: the most common defects of each
/// system as they are spoken of (common practice).
/// </summary>
public sealed class SpokenTests
{
    private static readonly Spoken Heard = new(RuleBook.BuiltIn);

    private static readonly string[][] Rows =
    [
        .. File.ReadAllLines(Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/spoken.csv"))
            .Where(line => line.Length > 0 && line[0] != '#').Skip(1).Select(line => line.Split(',')),
    ];

    public static TheoryData<string, string> Phrases => new(Rows.Select(row => (row[1], row[2])));

    [Fact]
    public void There_are_enough_of_them_and_each_names_conditions_of_the_book()
    {
        Assert.True(Rows.Length >= 150, $"{Rows.Length} phrases");
        Assert.DoesNotContain(Rows.SelectMany(row => row[2].Split('|')), id => !RuleBook.BuiltIn.Conditions.ContainsKey(id));
    }

    [Theory]
    [MemberData(nameof(Phrases))]
    public void A_common_defect_is_among_the_first_five_found(string said, string conditions)
    {
        var found = Heard.Find(said).Select(condition => condition.Id).ToList();
        Assert.True(conditions.Split('|').Any(found.Contains), $"\"{said}\": wanted {conditions}, found {string.Join(", ", found)}");
    }

    [Theory]
    [InlineData("double tapped brea", "panelboard.breaker-doubled")]
    [InlineData("missing shingels", "roof-covering.asphalt-missing")]
    [InlineData("polybutelene", "supply-piping.polybutylene")]
    public void A_word_half_typed_or_with_a_slip_is_understood(string said, string condition) =>
        Assert.Contains(condition, Heard.Find(said).Select(found => found.Id));

    [Fact]
    public void What_is_looked_for_where_one_stands_comes_first()
    {
        Assert.StartsWith("crawl-space", Heard.Find("mold", PlaceKind.CrawlSpace)[0].Id);
        Assert.StartsWith("attic", Heard.Find("mold", PlaceKind.Attic)[0].Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ?! ")]
    [InlineData("zzyzx")]
    public void Nothing_said_finds_nothing(string said) => Assert.Empty(Heard.Find(said));

    [Fact]
    public void The_same_words_find_the_same_in_any_order_of_asking()
    {
        var first = Heard.Find("loose railing on deck").Select(condition => condition.Id).ToList();
        Heard.Find("gas");
        Assert.Equal(first, new Spoken(RuleBook.BuiltIn).Find("loose railing on deck").Select(condition => condition.Id));
    }
}
