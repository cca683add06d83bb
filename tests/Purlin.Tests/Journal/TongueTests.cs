using Purlin.Journal;

namespace Purlin.Tests.Journal;

/// <summary>What is said by key becomes words: values filled in, rounded, joined and counted as the language does it.</summary>
public sealed class TongueTests
{
    private static readonly Tongue Plain = With(new()
    {
        ["rise"] = "The rise is {rise:0.#} of {most:#,0}.",
        ["places"] = "Seen in {places:and}.",
        ["bars"] = "{count, plural, =0 {no bars} one {# bar} other {# bars}}",
        ["gas"] = "{fuel, select, gas {It burns gas} none {Nothing burns} other {It burns {fuel}}}.",
        ["note"] = "Read.{left, select, none {} other { Left out: {left}.}}",
        ["label"] = "{input:capital} not given",
        ["input.floor"] = "floor area",
        ["day"] = "On {day}.",
    });

    private static Tongue With(Dictionary<string, string> sentences) => Tongue.BuiltIn("en-US").Under(sentences);

    [Fact]
    public void A_number_keeps_its_precision_and_the_sentence_rounds_it() =>
        Assert.Equal("The rise is 43.3 °F of 1,200.", Plain.Say("rise", ("rise", 43.2598, "°F"), ("most", 1200)));

    [Theory]
    [InlineData(new[] { "attic" }, "Seen in attic.")]
    [InlineData(new[] { "attic", "kitchen", "garage" }, "Seen in attic, kitchen and garage.")]
    public void A_list_is_joined(string[] places, string words) => Assert.Equal(words, Plain.Say("places", ("places", SaidValue.Of(places))));

    [Theory]
    [InlineData(0, "no bars")]
    [InlineData(1, "1 bar")]
    [InlineData(1.5, "1.5 bars")]
    [InlineData(12, "12 bars")]
    public void A_count_chooses_its_plural(double count, string words) => Assert.Equal(words, Plain.Say("bars", ("count", count)));

    [Theory]
    [InlineData("gas", "It burns gas.")]
    [InlineData("", "Nothing burns.")]
    [InlineData("oil", "It burns oil.")]
    public void A_word_chooses_its_sentence(string fuel, string words) => Assert.Equal(words, Plain.Say("gas", ("fuel", fuel)));

    [Fact]
    public void What_is_empty_leaves_its_part_out() =>
        Assert.Equal("Read. | Read. Left out: charge, date.", Plain.Say("note", ("left", SaidValue.Of(Array.Empty<string>()))) + " | " + Plain.Say("note", ("left", SaidValue.Of(["charge", "date"]))));

    [Fact]
    public void One_saying_fills_a_place_of_another() => Assert.Equal("Floor area not given", Plain.Say("label", ("input", new Said("input.floor"))));

    [Fact]
    public void A_day_is_written_out() => Assert.Equal("On March 4, 2026.", Plain.Say("day", ("day", new DateOnly(2026, 3, 4))));

    [Fact]
    public void A_key_without_a_sentence_shows_itself_and_its_values() => Assert.Equal("no.such key 3 in", Plain.Say("no.such key", ("depth", 3.0, "in")));

    [Fact]
    public void Words_of_a_person_are_no_key()
    {
        Assert.Equal("day", Plain.Say(Said.Verbatim("day")));
        Assert.Equal("as in the table", Plain.Say(Said.InData("no.such.key", "as in the table")));
        Assert.Equal("floor area", Plain.Say(Said.InData("input.floor", "floor_area")));
    }

    // Own wording is typed by people: a brace, a lost place and an unknown one must never stop a report.
    [Theory]
    [InlineData("{", "{")]
    [InlineData("a } b { c", "a } b { c")]
    [InlineData("{rise", "{rise")]
    [InlineData("{unknown} {rise}", "{unknown} 2")]
    [InlineData("{rise, plural}", "{rise, plural}")]
    [InlineData("{rise, plural, one {x}}", "")]
    [InlineData("{} {3} { rise }", "{} {3} { rise }")]
    public void What_is_no_place_stays_as_it_was_typed(string sentence, string words) =>
        Assert.Equal(words, With(new() { ["own"] = sentence }).Say("own", ("rise", 2)));

    [Fact]
    public void Own_wording_covers_a_sentence_and_gives_it_back()
    {
        var own = Plain.Under(new Dictionary<string, string> { ["day"] = "That day: {day}" });
        Assert.Equal("That day: March 4, 2026", own.Say("day", ("day", new DateOnly(2026, 3, 4))));
        Assert.Equal("On {day}.", Plain.Find("day"));
        Assert.Single(own.Sentences, line => line.Key == "day");
    }

    // Unicode CLDR 44, supplemental/plurals: cardinal rules of Polish and English with its own samples.
    [Theory]
    [InlineData("n % 10 = 2..4 and n % 100 != 12..14", 3, true)]
    [InlineData("n % 10 = 2..4 and n % 100 != 12..14", 13, false)]
    [InlineData("n % 10 = 2..4 and n % 100 != 12..14", 22, true)]
    [InlineData("i = 1 and v = 0", 1, true)]
    [InlineData("i = 1 and v = 0", 1.2, false)]
    [InlineData("n = 0 or n % 100 = 3..10", 103, true)]
    [InlineData("n = 0 or n % 100 = 3..10", 0, true)]
    [InlineData("what is this", 1, false)]
    public void A_language_brings_its_plural_rules(string rule, double count, bool fits)
    {
        var words = Tongue.Of("x", new Dictionary<string, string> { ["language.plural.few"] = rule, ["k"] = "{n, plural, few {few} other {other}}" });
        Assert.Equal(fits ? "few" : "other", words.Say("k", ("n", count)));
    }

    [Fact]
    public void Two_sayings_are_one_when_key_and_values_are()
    {
        Assert.Equal(new Said("a", ("b", 1), ("c", SaidValue.Of(["d"]))), new Said("a", ("b", 1.0), ("c", SaidValue.Of(["d"]))));
        Assert.NotEqual(new Said("a", ("b", 1)), new Said("a", ("b", 1, "in")));
    }
}
