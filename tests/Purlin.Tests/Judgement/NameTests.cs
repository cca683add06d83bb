using CsCheck;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>Names that have parts are read and written in one place, and every name that a journal keeps comes back as it was.</summary>
public sealed class NameTests
{
    private static readonly EntryName Window = EntryName.Parse("k3f9.21");

    [Theory]
    [InlineData("window.pane-cracked@k3f9.21", "window.pane-cracked", true)]
    [InlineData("supply-piping.corroded-joint", "supply-piping.corroded-joint", false)]
    [InlineData("pipe@home", "pipe@home", false)]
    [InlineData("", "", false)]
    public void A_finding_is_its_condition_and_perhaps_a_thing(string text, string condition, bool isApart)
    {
        var name = FindingId.Parse(text);
        Assert.Equal((condition, isApart ? Window : (EntryName?)null, text), (name.Condition, name.Of, name.ToString()));
    }

    [Fact]
    public void Any_text_is_a_name_of_a_finding_and_stays_itself() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["ab@.1/"], 0, 12]).Sample(text => FindingId.Parse(text).ToString() == text);

    [Fact]
    public void Own_words_are_a_matter_by_themselves()
    {
        Assert.True(FindingId.OwnWords(Window).IsOwn);
        Assert.Equal("note@k3f9.21", FindingId.OfNote(Window).ToString());
        Assert.False(new FindingId("own.bats").IsOwn);
    }

    [Theory]
    [InlineData("water-heater.stains/other-joints")]
    [InlineData("window.fogged/others@k3f9.21")]
    public void A_loose_end_is_a_condition_a_question_and_perhaps_a_thing(string text) =>
        Assert.Equal(text, LooseEndId.Parse(text).ToString());

    [Theory]
    [InlineData("washington:308-408C-080(1)(a)", "washington", "308-408C-080(1)(a)", false)]
    [InlineData("core:S-01", "core", "S-01", true)]
    [InlineData("texas:535.227(b)(3): note", "texas", "535.227(b)(3): note", false)]
    public void A_duty_is_a_standard_and_its_section(string text, string standard, string section, bool isCore)
    {
        var name = DutyId.Parse(text);
        Assert.Equal((standard, section, isCore, text), (name.Standard, name.Section, name.IsCore, name.ToString()));
    }

    [Theory]
    [InlineData("water heater/year", "water heater", "year")]
    [InlineData("sub-panel/main/rating", "sub-panel/main", "rating")]
    [InlineData("fuel", null, "fuel")]
    public void A_fact_is_the_kind_of_thing_and_what_is_known_of_it(string text, string? kind, string fact) =>
        Assert.Equal((kind, fact, text), (FactName.Parse(text).Kind, FactName.Parse(text).Fact, FactName.Parse(text).ToString()));

    [Fact]
    public void A_sentence_is_an_owner_and_a_part_and_on_a_shelf_an_id_between()
    {
        Assert.True(SentenceKey.TryParse("water-heater.too-hot/look/others/ask", out var own));
        Assert.Equal(("water-heater.too-hot", "look/others/ask"), (own.Owner, own.Rest));
        Assert.True(SentenceKey.TryParse("duties/washington/308/408", out var shelved));
        Assert.Equal((("washington", "308/408"), ("washington/308", "408"), "duties/washington/308/408"),
            (shelved.LongPart, shelved.LongId, shelved.ToString()));
        Assert.False(SentenceKey.TryParse("water-heater.too-hot", out _));
        Assert.False(SentenceKey.TryParse("/do", out _));
    }

    [Fact]
    public void What_names_nothing_is_refused()
    {
        Assert.Throws<FormatException>(() => DutyId.Parse("washington"));
        Assert.Throws<FormatException>(() => LooseEndId.Parse("water-heater.stains"));
    }
}
