using System.Text;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Judgement.Book;

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
        Assert.Equal(new OverlayConflict(Key, "Repair the joint.", "Renew the joint.", "Have all joints of the run renewed."), Assert.Single(laid.Conflicts));
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
        Assert.Equal("", Overlay.Empty.Say(laid.Book, key, "x").Sentences[key].Was.Replace("Otherwise.", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Conditions_of_ones_own_are_judged_like_the_others()
    {
        Condition bats = new() { Id = "attic.bats", Name = "Bats in the attic", Component = "attic", System = "attic", Places = [PlaceKind.Attic], Means = "Bats live here.", Weight = new WeightRule { Consequence = "upkeep" }, Do = "Ask a specialist.", Trade = "pest control firm" };
        var book = SmallBook.Book.Lay(new Overlay { Conditions = [bats] }).Book;
        var house = new SmallHouse();
        house.Seen("attic.bats", house.Place(PlaceKind.Attic));
        var finding = Judging.Judge(house.Build(), book, 2026).Findings.Single();
        Assert.Equal(("attic.bats", Weight.KeepUp, "pest control firm"), (finding.Id, finding.Weight, finding.Trade));
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
}
