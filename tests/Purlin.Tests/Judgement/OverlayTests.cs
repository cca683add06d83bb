using System.Text;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class OverlayTests
{
    private const string Key = "pipe.crust/do";
    private static readonly Overlay Mine = Overlay.Empty.Say(SmallBook.Book, Key, "Have all joints of the run renewed.");

    private static RuleBook Updated => SmallBook.Read(("rulebook/conditions/plumbing/pipe.json", SmallBook.Conditions.Replace("Repair the joint.", "Renew the joint.", StringComparison.Ordinal)));

    [Fact]
    public void Own_words_stand_in_the_finding()
    {
        var house = new SmallHouse();
        house.Seen("pipe.crust", house.Place(PlaceKind.Garage));
        Assert.Equal("Have all joints of the run renewed.", Judging.Judge(house.Build(), SmallBook.Book.Lay(Mine).Book, 2026).Findings.Single().Do);
    }

    [Fact]
    public void An_update_of_the_book_does_not_eat_them_and_says_what_changed()
    {
        var laid = Updated.Lay(Mine);
        Assert.Equal("Have all joints of the run renewed.", laid.Book.Conditions["pipe.crust"].Do);
        Assert.Equal(new OverlayConflict(Key, "Repair the joint.", "Renew the joint.", "Have all joints of the run renewed.", "The rule book says something new here. Yours stands until you decide."), Assert.Single(laid.Conflicts));
    }

    [Fact]
    public void A_line_that_the_book_gave_up_is_shown_too()
    {
        var laid = SmallBook.Read(("rulebook/conditions/plumbing/pipe.json", "{ \"component\": \"pipe\", \"system\": \"plumbing\", \"conditions\": [] }")).Lay(Mine);
        Assert.Null(Assert.Single(laid.Conflicts).Book);
    }

    [Fact]
    public void An_unchanged_book_gives_no_conflict() => Assert.Empty(SmallBook.Book.Lay(Mine).Conflicts);

    [Fact]
    public void Saying_it_as_the_book_does_gives_the_own_words_up() => Assert.Empty(Mine.Say(SmallBook.Book, Key, "Repair the joint.").Sentences);

    [Theory]
    [InlineData("pipe.crust/name")]
    [InlineData("pipe.crust/means")]
    [InlineData("pipe.crust/look/others/refer")]
    [InlineData("pipe.crust/look/others/ask")]
    [InlineData("words/own.do")]
    [InlineData("cautions/scald")]
    public void Any_sentence_can_be_said_otherwise(string key)
    {
        var laid = SmallBook.Book.Lay(Overlay.Empty.Say(SmallBook.Book, key, "Otherwise."));
        Assert.Empty(laid.Conflicts);
        Assert.Equal("Otherwise.", Sentence.In(laid.Book, key));
        Assert.Equal(Sentence.In(SmallBook.Book, key), Overlay.Empty.Say(laid.Book, key, "x").Sentences[key].Was);
    }

    [Fact]
    public void Conditions_of_ones_own_are_judged_like_the_others()
    {
        Condition bats = new() { Id = "own.bats", Name = "Bats in the attic", Component = "attic", System = "attic", Places = [PlaceKind.Attic], Means = "Bats live here.", Weight = new WeightRule { Consequence = Consequence.Upkeep }, Do = "Ask a specialist.", Trade = "pest control firm" };
        var book = SmallBook.Book.Lay(new Overlay { Conditions = [bats] }).Book;
        var house = new SmallHouse();
        house.Seen("own.bats", house.Place(PlaceKind.Attic));
        var finding = Judging.Judge(house.Build(), book, 2026).Findings.Single();
        Assert.Equal(("own.bats", Weight.KeepUp, "pest control firm"), (finding.Id.ToString(), finding.Weight, finding.Trade));
    }

    [Fact]
    public void Export_and_import_bring_it_back()
    {
        var back = Overlay.Read(Mine.Write()).OrThrow();
        Assert.Equal(Mine.Sentences[Key], back.Sentences[Key]);
        Assert.Equal(Mine.Write(), back.Write());
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[1,2]")]
    [InlineData("{\"sentences\": 5}")]
    [InlineData("{\"sentences\": {\"a\": null}}")]
    public void A_file_that_is_none_is_refused_in_words(string text) => Assert.False(Overlay.Read(Encoding.UTF8.GetBytes(text)).IsAccepted);

    [Theory]
    [InlineData("pipe.crust/trade", "my cousin")]
    [InlineData("pipe.crust/look/others/trade", "Licensed Plumber")]
    public void Who_deals_with_it_stays_one_of_the_trades(string key, string now)
    {
        var laid = SmallBook.Book.Lay(Overlay.Empty.Say(SmallBook.Book, key, now));
        Assert.Equal("licensed plumber", Sentence.In(laid.Book, key));
        Assert.Contains("one of the trades", Assert.Single(laid.Conflicts).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_comes_to_say_it_my_way_is_no_conflict()
    {
        var said = Overlay.Empty.Say(SmallBook.Book, Key, "Renew the joint.");
        Assert.Empty(Updated.Lay(said).Conflicts);
    }

    [Theory]
    [InlineData("""{"conditions":[{"id":"bats","name":"Bats","component":"attic","system":"attic","places":["attic"],"means":"x","weight":{"consequence":"upkeep"},"do":"y","trade":"the owner"}]}""", "own.")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"attic","places":["moon"],"means":"x","weight":{"consequence":"upkeep"},"do":"y","trade":"the owner"}]}""", "moon")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"attic","places":["attic"],"means":"x","weight":{"consequence":"doom"},"do":"y","trade":"the owner"}]}""", "doom")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"attic","places":["attic"],"means":" ","weight":{"consequence":"upkeep"},"do":"y","trade":"a friend"}]}""", "a friend")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"belfry","places":["attic"],"means":"x","weight":{"consequence":"upkeep"},"do":"y","trade":"the owner"}]}""", "belfry")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"attic","places":["attic"],"means":"x","weight":{"consequence":"upkeep"},"do":"y","trade":""}]}""", "by whom: nothing")]
    [InlineData("""{"conditions":[{"id":"own.bats","name":"Bats","component":"attic","system":"attic","places":["attic"],"means":"x","weight":{"consequence":"upkeep"},"do":"y","trade":"the owner","look":[{"id":"a","ask":"Look.","refer":"Have it looked at.","trade":"the owner"}]}]}""", "something that answers it")]
    [InlineData("""{"sentences":{"pipe.crust/trade":{"was":"","now":"a friend"}}}""", "a friend")]
    [InlineData("""{"sentences":{"noslash":{"was":"","now":"x"}}}""", "noslash")]
    [InlineData("""{"sentences":{"a/b":{"was":"","now":"\ud800"}}}""", "")]
    [InlineData("""{"format":"something-else"}""", "something-else")]
    [InlineData("""{"version":7}""", "newer program")]
    [InlineData("""{"sentences":{"a/b":{"now":"x"}}}""", "")]
    [InlineData("""[[[[[[[[[[[[[[[[[[[[[[""", "")]
    public void What_a_file_says_wrong_is_refused_and_named(string text, string names)
    {
        var read = Overlay.Read(Encoding.UTF8.GetBytes(text));
        Assert.False(read.IsAccepted);
        Assert.Contains(names, string.Join("; ", read.Refusals), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_beyond_its_limits_is_refused_before_it_is_read() => Assert.Contains("at most", InWords.Of(Overlay.Read(new byte[Overlay.MostBytes + 1]).Refusals[0].Allowed), StringComparison.Ordinal);

    [Fact]
    public void Members_of_a_newer_program_are_passed_over() => Assert.True(Overlay.Read("""{"sentences":{"a/b":{"was":"","now":"x","mood":1}},"later":{}}"""u8.ToArray()).IsAccepted);

    [Fact]
    public void A_question_of_ones_own_is_asked_and_answered_like_the_others()
    {
        Condition bats = new()
        {
            Id = "own.bats",
            Name = "Bats in the attic",
            Component = "attic",
            System = "attic",
            Places = [PlaceKind.Attic],
            Means = "Bats live here.",
            Do = "Ask a specialist.",
            Trade = "pest control firm",
            Weight = new WeightRule { Consequence = Consequence.Function, Several = Lift.Raise },
            Look = [new Follow { Id = "stains", Ask = "Look for stains in the garage.", In = [PlaceKind.Garage], Answers = ["pipe.stain"], Refer = "Have the garage looked at.", Trade = "pest control firm" }],
        };
        var book = SmallBook.Book.Lay(new Overlay { Conditions = [bats] }).Book;
        var house = new SmallHouse();
        house.Seen("own.bats", house.Place(PlaceKind.Attic));
        var garage = house.Place(PlaceKind.Garage);
        Assert.Equal("Look for stains in the garage.", Assert.Single(Judging.Judge(house.Build(), book, 2026).LooseEnds, end => end.Tied is null).Question);
        house.Clear("pipe.stain", garage);
        Assert.DoesNotContain(Judging.Judge(house.Build(), book, 2026).LooseEnds, end => end.Tied is null);
    }

    [Fact]
    public void A_question_whose_answer_the_book_gave_up_is_shown_and_still_asked()
    {
        Condition bats = new()
        {
            Id = "own.bats",
            Name = "Bats",
            Component = "attic",
            System = "attic",
            Places = [PlaceKind.Attic],
            Means = "Bats live here.",
            Do = "Ask.",
            Trade = "pest control firm",
            Weight = new WeightRule { Consequence = Consequence.Function },
            Look = [new Follow { Id = "gone", Ask = "Look for it.", Answers = ["pipe.gone"], Refer = "Have it looked at.", Trade = "pest control firm" }],
        };
        var laid = SmallBook.Book.Lay(new Overlay { Conditions = [bats] });
        Assert.Equal("pipe.gone", Assert.Single(laid.Conflicts).Was);
        Assert.Contains("own.bats", laid.Book.Conditions.Keys);
    }
}
