using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>A dated sentence speaks of the year of what was looked at, and of nothing else's.</summary>
public sealed class YearOfThingTests
{
    private readonly SmallHouse house = new();

    private ThenAndNowSentence Sentence(string condition) =>
        Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Findings.Single(finding => finding.Condition == condition).ThenAndNow!;

    // One neutral wire a terminal: NEC 408.21, 2002 edition (408.41 from 2005).
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_undated_panel_does_not_take_the_year_of_the_one_in_the_garage(bool newFirst)
    {
        house.Property = house.Property with { YearBuilt = 1965 };
        var hall = house.Place(PlaceKind.Hall);
        var garage = house.Place(PlaceKind.Garage);
        var first = house.Component("panelboard", newFirst ? garage : hall);
        var second = house.Component("panelboard", newFirst ? hall : garage);
        house.Fact(newFirst ? first : second, "year", FactValue.Of(2019));
        house.Seen("panelboard.neutrals-doubled", hall, newFirst ? second : first);
        var said = Sentence("panelboard.neutrals-doubled");
        Assert.DoesNotContain("2019", said.Words, StringComparison.Ordinal);
        Assert.Contains("when the house was built in 1965", said.Words, StringComparison.Ordinal);
        Assert.Equal(YearsKind.Advised, said.Kind);
        Assert.Equal(YearOf.House, said.Year!.Of);
    }

    [Fact]
    public void Where_the_house_has_no_year_either_nothing_is_said()
    {
        var hall = house.Place(PlaceKind.Hall);
        house.Fact(house.Component("panelboard", house.Place(PlaceKind.Garage)), "year", FactValue.Of(2019));
        house.Seen("panelboard.neutrals-doubled", hall, house.Component("panelboard", hall));
        Assert.Null(Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Findings.Single().ThenAndNow);
    }

    // Risers of 7 3/4 in: BOCA 1996, IRC 2000 R314.
    [Fact]
    public void Stairs_of_a_deck_take_the_year_of_the_deck()
    {
        house.Property = house.Property with { YearBuilt = 1968 };
        var place = house.Place(PlaceKind.Deck);
        house.Fact(house.Component("deck", place), "year", FactValue.Of(1991), basis: Basis.Told);
        house.Seen("stairs.riser-high", place);
        var said = Sentence("stairs.riser-high");
        Assert.DoesNotContain("1968", said.Words, StringComparison.Ordinal);
        Assert.Contains("when the deck was built in 1991", said.Words, StringComparison.Ordinal);
        Assert.Contains("The year 1991 was told to us and not checked.", said.Words, StringComparison.Ordinal);
        Assert.Equal(new KnownYear(1991, YearOf.Structure, Basis.Told), said.Year);
    }

    [Theory]
    [InlineData(Basis.Presumed, "The year 1984 is presumed, not seen.")]
    [InlineData(Basis.Nameplate, "")]
    public void A_year_that_was_only_presumed_says_so(string basis, string words)
    {
        var hall = house.Place(PlaceKind.Hall);
        var panel = house.Component("panelboard", hall);
        house.Fact(panel, "year", FactValue.Of(1984), basis: basis);
        house.Seen("panelboard.neutrals-doubled", hall, panel);
        var said = Sentence("panelboard.neutrals-doubled");
        Assert.Contains("when this was installed in 1984", said.Words, StringComparison.Ordinal);
        if (words.Length > 0) Assert.EndsWith(words, said.Words, StringComparison.Ordinal);
        else Assert.DoesNotContain("presumed", said.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_things_with_several_years_the_gravest_is_told_with_its_own_year()
    {
        var bath = house.Place(PlaceKind.Bathroom);
        foreach (var year in (int[])[1968, 1990])
        {
            var outlet = house.Component("receptacle", bath);
            house.Fact(outlet, "year", FactValue.Of(year));
            house.Seen("receptacle.no-gfci", bath, outlet);
        }
        // Bathrooms have asked for it since the 1975 edition, NEC 210.8: the outlet of 1990 broke it, that of 1968 did not.
        var said = Sentence("receptacle.no-gfci");
        Assert.Equal((YearsKind.Broke, 1990), (said.Kind, said.Year!.Year));
        Assert.Contains("1990", said.Words, StringComparison.Ordinal);
    }
}
