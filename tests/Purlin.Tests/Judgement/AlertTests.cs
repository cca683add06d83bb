using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Judgement.Book;

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
        bool Listed() => Judged.Alerts.Any(alert => alert.Title.Contains("luminium branch wiring", StringComparison.Ordinal));
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
}
