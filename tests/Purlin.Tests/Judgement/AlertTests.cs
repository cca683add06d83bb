using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class AlertTests
{
    private readonly SmallHouse house = new();

    private JudgedInspection Judged => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026);

    [Fact]
    public void The_facts_of_a_house_alone_give_ten_things_to_be_alert_to_each_with_a_reason()
    {
        house.Property = house.Property with { YearBuilt = 1968, Foundation = "crawl space" };
        var alerts = Judged.Alerts;
        Assert.Equal(10, alerts.Count);
        Assert.All(alerts, alert => Assert.False(string.IsNullOrWhiteSpace(alert.Reason) || string.IsNullOrWhiteSpace(alert.Look) || alert.Sources.Count == 0));
        Assert.Equal(10, alerts.Select(alert => alert.Title).Distinct().Count());
    }

    [Theory]
    [InlineData(1968)]
    [InlineData(2015)]
    [InlineData(null)]
    public void A_profile_of_other_years_is_not_listed(int? built)
    {
        house.Property = house.Property with { YearBuilt = built };
        var titles = Judged.Alerts.Select(alert => alert.Title).ToHashSet();
        var wrong = RuleBook.BuiltIn.Profiles.Where(profile => titles.Contains(profile.Title) && (profile.From is not null || profile.To is not null))
            .Where(profile => built is not { } year || year < (profile.From ?? 0) || year > (profile.To ?? 9999)).Select(profile => profile.Id);
        Assert.Empty(wrong);
    }

    // Solid aluminium branch wiring was put in from about 1965 to 1973: CPSC publication 516, Repairing Aluminum Wiring (2011).
    [Fact]
    public void Aluminium_wiring_is_looked_for_in_a_house_of_1968_until_the_wiring_is_on_record()
    {
        house.Property = house.Property with { YearBuilt = 1968 };
        bool Listed() => Judged.Alerts.Any(alert => alert.Title.Contains("luminum branch wiring", StringComparison.Ordinal));
        Assert.True(Listed());
        house.Fact(house.Component("branch wiring"), "material", FactValue.Of("copper"), basis: Basis.Seen);
        Assert.False(Listed());
    }

    // Settings differ by standard and reach the reckoning from there: Washington does not run cooling below 60 °F (WAC 308-408C-130, from memory).
    [Theory]
    [InlineData("washington", "cannot say")]
    [InlineData("new-jersey", "within")]
    public void The_coldest_weather_for_cooling_is_the_standards_own(string standard, string verdict)
    {
        house.Standards = [standard];
        var (side, closet) = (house.Place(PlaceKind.Side), house.Place(PlaceKind.Mechanical));
        house.Read("outdoor dry bulb", 57, "°F", side);
        house.Read("return dry bulb", 75, "°F", closet, set: "run");
        house.Read("return wet bulb", 63, "°F", closet, set: "run");
        house.Read("supply dry bulb", 56, "°F", closet, set: "run");
        Assert.Equal(verdict, Judged.Workings.Single(working => working.Working.Name == "temperature-split").Working.Verdict.Word);
    }

    // What an inspector expects of a house before arriving, by its years: common practice.
    [Theory]
    [InlineData(1925, "basement", "Knob-and-tube wiring", "Lead water line", "Chimney without a sound lining", "Water in the basement")]
    [InlineData(1955, "crawl space", "Galvanized steel water pipe", "Sewer of tar-paper pipe", "Cloth and rubber cable", "Damp under the house")]
    [InlineData(1968, "slab", "Aluminum branch wiring", "Cast iron drains under the slab", "Lead paint")]
    [InlineData(1978, "crawl space", "Gray plastic water pipe", "Panels with breakers that may not trip", "Pressed-wood siding")]
    [InlineData(1990, "slab", "Gray plastic water pipe", "Synthetic stucco that does not drain", "Yellow gas tubing without a bond")]
    [InlineData(2006, "basement", "Orange and blue composite pipe", "Drywall that gives off sulfur", "Water in the basement")]
    [InlineData(2022, "slab", "Kick-outs left out", "Gaps in new insulation", "Movement of a slab on clay soil")]
    [InlineData(2022, "crawl space", "Cooling coil with nothing to stop it", "Damp under the house", "Backfill that has sunk beside a newer house")]
    public void A_house_of_its_years_is_expected_to_have_what_such_houses_have(int built, string foundation, params string[] expected)
    {
        house.Property = house.Property with { YearBuilt = built, Foundation = foundation };
        var titles = Judged.Alerts.Select(alert => alert.Title).ToList();
        Assert.Equal(10, titles.Count);
        Assert.Empty(expected.Except(titles));
    }

    [Fact]
    public void Iron_drains_under_the_slab_are_not_told_twice()
    {
        house.Property = house.Property with { YearBuilt = 1968, Foundation = "slab" };
        Assert.DoesNotContain("Cast iron drains", Judged.Alerts.Select(alert => alert.Title));
    }

    [Fact]
    public void A_house_known_to_have_no_deck_needs_no_word_about_decks()
    {
        house.Property = house.Property with { YearBuilt = 1968, Foundation = "slab" };
        Assert.Contains("Deck held by nails", Judged.Alerts.Select(alert => alert.Title));
        house.Property = house.Property with { Deck = false };
        Assert.DoesNotContain("Deck held by nails", Judged.Alerts.Select(alert => alert.Title));
    }
}
