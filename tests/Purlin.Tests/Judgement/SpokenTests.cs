using System.Text.Json;
using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Journal;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// The words inspectors say lead to the condition they mean. The phrases stand in <c>Fixtures/spoken.csv</c>: the most common defects of each
/// system as they are spoken of, typed and misheard; in <c>Fixtures/spoken-nothing.csv</c> what is said and is no defect (common practice).
/// </summary>
public sealed class SpokenTests
{
    private static readonly Spoken Heard = new(RuleBook.BuiltIn);

    private static readonly string[][] Rows = [.. Lines("spoken.csv").Select(line => line.Split(','))];

    public static TheoryData<string, string> Phrases => new(Rows.Where(row => row[3] == "usual").Select(row => (row[1], row[2])));

    [Fact]
    public void There_are_enough_of_them_and_each_names_conditions_of_the_book()
    {
        Assert.True(Rows.Length >= 900, $"{Rows.Length} phrases");
        Assert.DoesNotContain(Rows.SelectMany(row => row[2].Split('|')), id => !RuleBook.BuiltIn.Conditions.ContainsKey(id));
        Assert.Equal(Rows.Length, Rows.Select(row => row[1].ToLowerInvariant()).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Phrases))]
    public void A_common_defect_is_among_the_first_five_found(string said, string conditions)
    {
        var found = Found(said);
        Assert.True(conditions.Split('|').Any(found.Contains), $"\"{said}\": wanted {conditions}, found {string.Join(", ", found)}");
    }

    [Theory]
    [InlineData("told")]
    [InlineData("tuned")]
    [InlineData("held out")]
    public void As_said_typed_and_misheard_97_of_100_are_among_the_first_five_and_90_come_first(string set)
    {
        var rows = Rows.Where(row => row[3] == set).ToList();
        var (first, five, missed) = (0, 0, new List<string>());
        foreach (var row in rows)
        {
            var (wanted, found) = (row[2].Split('|'), Found(row[1]));
            if (found.Count > 0 && wanted.Contains(found[0])) first++;
            if (found.Any(wanted.Contains)) five++;
            else if (set != "held out") missed.Add(row[1]);
        }
        Assert.True(five >= 0.97 * rows.Count, $"{set}: {five} of {rows.Count} among the first five; not {string.Join("; ", missed)}");
        Assert.True(first >= 0.90 * rows.Count, $"{set}: {first} of {rows.Count} come first");
    }

    [Fact]
    public void What_is_no_defect_finds_nothing_or_what_is_honestly_near()
    {
        var rows = Lines("spoken-nothing.csv").Select(line => line.Split(',')).ToList();
        var wrong = rows.Where(row => Found(row[0]) is [var first, ..] && !row[1].Split('|').Contains(first)).Select(row => $"{row[0]}: {Found(row[0])[0]}").ToList();
        Assert.True(wrong.Count <= 0.05 * rows.Count, string.Join("; ", wrong));
    }

    [Theory]
    [InlineData("double tapped brea", "panelboard.breaker-doubled")]
    [InlineData("missing shingels", "roof-covering.asphalt-missing")]
    [InlineData("polybutelene", "supply-piping.polybutylene")]
    public void A_word_half_typed_or_with_a_slip_is_understood(string said, string condition) => Assert.Contains(condition, Found(said));

    [Theory]
    [InlineData("sub panel neutrals bonded", "subpanel neutrals bonded")]
    [InlineData("down spout disconnected", "downspout disconnected")]
    [InlineData("dry wall crack", "drywall crack")]
    [InlineData("airgap missing", "air gap missing")]
    [InlineData("carbonmonoxide alarm", "carbon monoxide alarm")]
    public void Words_written_apart_or_together_are_the_same(string apart, string together) => Assert.Equal(Found(together), Found(apart));

    [Fact]
    public void What_is_looked_for_where_one_stands_comes_first()
    {
        Assert.StartsWith("crawl-space", Heard.Find("mold", PlaceKind.CrawlSpace)[0].Id);
        Assert.StartsWith("attic", Heard.Find("mold", PlaceKind.Attic)[0].Id);
    }

    [Fact]
    public void The_thing_in_hand_comes_first()
    {
        Assert.Equal("boiler", Heard.Find("leaking", new Standpoint { Component = "boiler" })[0].Component);
        Assert.Equal("water heater", Heard.Find("leaking", new Standpoint { Component = "water heater" })[0].Component);
    }

    [Fact]
    public void What_the_house_is_made_of_and_does_not_have_comes_later()
    {
        Standpoint vinyl = new() { Materials = new Dictionary<string, string> { ["siding"] = "vinyl" } }, brick = new() { Materials = new Dictionary<string, string> { ["siding"] = "brick veneer" } };
        Assert.StartsWith("siding.vinyl", Heard.Find("cracked siding", vinyl)[0].Id);
        Assert.DoesNotContain("siding.vinyl", Heard.Find("cracked siding", brick)[0].Id);
        Assert.StartsWith("basement", Heard.Find("water stains", new Standpoint { Place = PlaceKind.Basement })[0].Id);
        Assert.DoesNotContain("basement", Heard.Find("water stains", new Standpoint { Absent = [PlaceKind.Basement] })[0].Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ?! ")]
    [InlineData("zzyzx")]
    [InlineData("42")]
    public void Nothing_said_finds_nothing(string said) => Assert.Empty(Heard.Find(said));

    [Fact]
    public void The_same_words_find_the_same_in_any_order_of_asking()
    {
        var first = Found("loose railing on deck");
        Heard.Find("gas");
        Assert.Equal(first, new Spoken(RuleBook.BuiltIn).Find("loose railing on deck").Select(condition => condition.Id));
    }

    [Fact]
    public void A_word_of_ones_own_is_understood_and_gives_the_book_no_other_word()
    {
        // The name is invented.
        Assert.Empty(Heard.Find("grumbolite"));
        var key = Sentences.HeardKey("Grumbolite!")!;
        var own = Overlay.Empty.Say(RuleBook.BuiltIn, key, "vermiculite pebble insulation");
        var read = Overlay.Read(own.Write()).OrThrow();
        var (book, conflicts) = RuleBook.BuiltIn.Lay(read);
        Assert.Empty(conflicts);
        Assert.Equal("insulation.vermiculite", new Spoken(book).Find("grumbolite in the attic")[0].Id);
        Assert.Equal(JsonSerializer.Serialize(RuleBook.BuiltIn.Conditions["insulation.vermiculite"]), JsonSerializer.Serialize(book.Conditions["insulation.vermiculite"]));
        Assert.DoesNotContain(Sentences.In(book), sentence => sentence.Text.Contains("grumbolite", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("heard/Grumbolite", "vermiculite")]
    [InlineData("heard/grumbolite ", "vermiculite")]
    [InlineData("heard/grumbolite", " ?! ")]
    public void A_word_of_ones_own_that_cannot_be_heard_is_refused(string key, string means) => Assert.NotNull(Sentence.Refuses(key, means));

    private static List<string> Found(string said) => [.. Heard.Find(said).Select(condition => condition.Id)];

    private static IEnumerable<string> Lines(string file) =>
        File.ReadAllLines(Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures", file)).Where(line => line.Length > 0 && line[0] != '#').Skip(1);
}
