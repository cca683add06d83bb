using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class BookReaderTests
{
    [Fact]
    public void A_sound_book_refuses_nothing() => Assert.Empty(SmallBook.Book.Refused);

    [Theory]
    [InlineData(""" "sources": [] """, "no source")]
    [InlineData(""" "sources": ["nobody-knows"] """, "source nobody-knows")]
    [InlineData(""" "sources": ["common practice"], "cautions": ["dragons"] """, "caution dragons")]
    [InlineData(""" "sources": ["common practice"], "places": ["cellar"] """, "cellar")]
    [InlineData(""" "sources": ["common practice"], "look": [ { "id": "a", "ask": "b", "answers": ["pipe.none"], "refer": "c", "trade": "mason" } ] """, "answer pipe.none")]
    [InlineData(""" "sources": ["common practice"], "colour": "red" """, "colour")]
    public void A_line_that_rests_on_nothing_or_points_nowhere_is_refused_by_file_and_id(string members, string given)
    {
        var text = $$"""
            { "component": "post", "system": "structure", "conditions": [ { "id": "post.leans", "name": "n", "means": "m", "weight": { "consequence": "none" }, "do": "d", "trade": "mason", {{members}} } ] }
            """;
        var refusal = Assert.Single(SmallBook.Read(("rulebook/conditions/structure/post.json", text)).Refused);
        Assert.Contains("rulebook/conditions/structure/post.json: post.leans", refusal.Input);
        Assert.Contains(given, refusal.ToString());
    }

    [Fact]
    public void An_id_used_twice_is_refused()
    {
        var book = SmallBook.Read(("rulebook/conditions/plumbing/second.json", SmallBook.Heaters));
        Assert.Contains("an id that is taken", Assert.Single(book.Refused).ToString());
        Assert.True(book.Conditions.ContainsKey("water-heater.no-pipe"));
    }

    [Fact]
    public void A_file_that_is_not_json_leaves_the_rest_of_the_book_standing()
    {
        var book = SmallBook.Read(("rulebook/conditions/plumbing/torn.json", "{ \"component\": "));
        Assert.Contains("torn.json", Assert.Single(book.Refused).Input);
        Assert.Equal(4, book.Conditions.Count);
    }

    [Fact]
    public void The_built_in_book_is_sound() =>
        Assert.True(RuleBook.BuiltIn.Refused.IsEmpty, string.Join('\n', RuleBook.BuiltIn.Refused));
}
