using Purlin.Book;
using Purlin.Book.Takings;
using Purlin.Reckoning;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Judgement.Readings;

/// <summary>What the phone asks for on a component is what the rules take: nothing that is needed is out of reach, and no answer offered is one that is then refused.</summary>
public sealed class SheetTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;

    private static void Nothing(IEnumerable<string> wrong)
    {
        var all = wrong.Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(all.Count == 0, string.Join('\n', all));
    }

    private static bool IsAsked(string component, string fact) => Book.Sheets.TryGetValue(component, out var sheet) && sheet.Facts.Any(kind => kind.Fact == fact);

    [Fact]
    public void Every_fact_that_a_feed_takes_can_be_recorded() => Nothing(FactsOfFeeds().Where(fact => !IsAsked(fact.Component, fact.Fact)).Select(fact => $"{fact.Component}/{fact.Fact} of {fact.Feed}"));

    [Fact]
    public void Every_fact_that_raises_something_can_be_recorded() => Nothing(Book.FactRules.Where(rule => !IsAsked(rule.Component, rule.Fact)).Select(rule => $"{rule.Component}/{rule.Fact}"));

    [Fact]
    public void Every_component_that_is_asked_about_stands_somewhere() => Nothing(Book.Sheets.Values
        .Where(sheet => sheet.Places.Count == 0 && Book.ConditionsOf(sheet.Component).Length == 0 && sheet.Component is not ("floor framing" or "drain piping"))
        .Select(sheet => sheet.Component));

    [Fact]
    public void Every_place_of_a_sheet_is_drawn() => Nothing(Book.Sheets.Values.SelectMany(sheet => sheet.Places.Where(place => !Purlin.Journal.PlaceKind.All.Contains(place)).Select(place => $"{sheet.Component}: {place}")));

    [Fact]
    public void Every_unit_is_one_that_reckonings_read() => Nothing(Book.Sheets.Values.SelectMany(sheet => sheet.Facts
        .Where(kind => kind.Unit.Length > 0 && kind.Unit != "pCi/L" && !Units.Compatible(kind.Unit, kind.Unit)).Select(kind => $"{sheet.Component}/{kind.Fact}: {kind.Unit}")));

    [Fact]
    public void A_fact_is_asked_once() => Nothing(Book.Sheets.Values.SelectMany(sheet => sheet.Facts.GroupBy(kind => kind.Fact).Where(group => group.Count() > 1).Select(group => $"{sheet.Component}/{group.Key}")));

    /// <summary>A pipe size of "3/4 in" must be one that the pipe's reckoning knows.</summary>
    [Fact]
    public void Every_answer_offered_is_one_that_the_reckoning_takes() => Nothing(
        from feed in Book.Feeds
        let inputs = Reckonings.Find(feed.Reckoning).OrThrow().Inputs
        from name in feed.Inputs.Keys
        let taken = feed.Inputs[name]
        let fact = Plain(taken)
        where fact is not null && !fact.Of.Contains('/', StringComparison.Ordinal)
        from component in feed.Components
        where Book.Sheets.ContainsKey(component)
        from kind in Book.Sheets[component].Facts.Where(kind => kind.Fact == fact.Of)
        from choice in kind.Choices.Where(choice => choice is not ("none" or "yes" or "no"))
        where !Bars(feed, kind.Fact, choice) && !(feed.Reckoning == "service-life" && Lifeless.Contains(choice)) && !Takes(inputs.Single(input => input.Name == name), taken, choice)
        select $"{component}/{kind.Fact}: {choice}, of {feed.Id}");

    /// <summary>Coverings of which no life is published.</summary>
    private static readonly string[] Lifeless = ["wood shingle", "lapped metal", "metal shingle", "roll roofing"];

    [Theory]
    [InlineData("ground level", Pointing.Distance)]
    [InlineData("floor level", Pointing.Plan)]
    [InlineData("static water pressure", Pointing.None)]
    public void A_reading_says_how_it_is_placed(string kind, Pointing pointing) => Assert.Equal(pointing, Book.PointingOf(kind));

    /// <summary>On a deck the span of its joists is offered, though it is a reading of framing by name.</summary>
    [Theory]
    [InlineData("deck", "joist span")]
    [InlineData("combustion air", "room height")]
    [InlineData("gutter", "roof area")]
    [InlineData("water heater", "hot water temperature")]
    public void What_a_feed_takes_is_offered_on_its_component(string component, string kind) => Assert.Contains(kind, Book.ReadingsOn(component));

    [Fact]
    public void Circuits_are_offered_where_panels_hang() => Assert.Contains("circuit", Book.SheetsIn("garage"));

    /// <summary>The fact that goes in by itself, mapped and presumed or not.</summary>
    private static Taking.Fact? Plain(Taking taking) => taking switch
    {
        Taking.Fact fact => fact,
        Taking.Mapped mapped => Plain(mapped.Of),
        Taking.Presumed presumed => Plain(presumed.Of),
        _ => null,
    };

    private static bool Bars(Feed feed, string fact, string choice) => feed.Bars.Any(bar => bar.Fact == fact && bar.Is.Contains(choice));

    private static bool Takes(Input input, Taking taken, string choice)
    {
        // An optional fact whose words the reckoning does not know is left out, which is as if it had not been asked.
        if (taken.WordMaps.ToList() is [var map]) return Book.WordMaps[map].ContainsKey(choice) || taken.Optional;
        return input switch
        {
            Input.Choice known => known.Words.Contains(known.Plain is { } plain ? plain(choice) : choice),
            Input.Whole or Input.Quantity => double.TryParse(choice, System.Globalization.CultureInfo.InvariantCulture, out _),
            _ => true,
        };
    }

    private static IEnumerable<(string Feed, string Component, string Fact)> FactsOfFeeds() =>
        Book.Feeds.SelectMany(feed => feed.Inputs.Values.SelectMany(taking => taking.FactsOf(feed.Components)).Select(fact => (feed.Id, fact.Component, fact.Name)));
}
