using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

public sealed class DutyTests
{
    private const string Two = """
        { "id": "two-states", "title": "Two duties", "edition": "1", "duties": [
          { "id": "1(a)", "system": "plumbing", "name": "pipes", "verb": "inspect", "text": "Look at pipes and heaters.", "coverage": "always", "core": ["A", "B"] },
          { "id": "1(b)", "system": "plumbing", "name": "pipes", "verb": "describe", "text": "Name the material.", "coverage": "always", "mark": "from memory", "core": ["A"] },
          { "id": "2", "system": "structure", "name": "crawl space", "verb": "inspect", "text": "Go in.", "coverage": "always", "core": ["C"] },
          { "id": "3", "system": "optional", "name": "pool", "verb": "inspect", "text": "Look at the pool.", "coverage": "if agreed", "core": ["D"] },
          { "id": "9", "system": "plumbing", "name": "hidden", "verb": "not-required", "text": "Hidden pipes.", "coverage": "none" } ] }
        """;

    private const string Core = """
        { "core": [
          { "id": "A", "system": "plumbing", "name": "Pipes", "text": "t", "verbs": ["inspect", "describe"], "components": ["pipe"], "facts": ["material"], "sample": true },
          { "id": "B", "system": "plumbing", "name": "Heater valve", "text": "t", "components": ["water heater"], "conditions": ["water-heater.no-*"] },
          { "id": "C", "system": "structure", "name": "Crawl space", "text": "t", "places": ["crawl space"], "components": ["crawl space"], "absent": ["foundation=slab"] },
          { "id": "D", "system": "optional", "name": "Pool", "text": "t", "components": ["pool"] } ] }
        """;

    private static readonly RuleBook Book = SmallBook.Read(("rulebook/duties/two-states.json", Two), ("rulebook/duties/core.json", Core));
    private readonly SmallHouse house = new() { Standards = ["two_states"] };
    private readonly EntryName garage;

    public DutyTests() => garage = house.Place(PlaceKind.Garage);

    private DutyState Duty(string id) => Judging.Judge(house.Build(), Book, 2026).Coverage.Single().Duties.Single(duty => duty.Section == id);

    [Fact]
    public void Exclusions_and_unagreed_systems_do_not_count() =>
        Assert.Equal(["1(a)", "1(b)", "2"], Judging.Judge(house.Build(), Book, 2026).Coverage.Single().Duties.Select(duty => duty.Section));

    [Fact]
    public void An_agreed_system_counts_once_it_is_on_record()
    {
        house.Component("pool");
        Assert.Equal(DutyStanding.Open, Duty("3").State);
    }

    [Fact]
    public void A_duty_over_two_things_stays_open_for_the_one_not_looked_at()
    {
        house.Clear("pipe.crust", garage);
        Assert.Equal((DutyStanding.Open, "Still open: Heater valve."), (Duty("1(a)").State, Duty("1(a)").Words));
        Assert.Equal([DutyId.OfCore("B")], Duty("1(a)").OpenCore);
        house.Clear("water-heater.no-pipe", garage);
        Assert.Equal(DutyStanding.Met, Duty("1(a)").State);
    }

    [Fact]
    public void A_description_asks_for_a_fact_and_a_look_does_not_describe()
    {
        house.Clear("pipe.crust", garage);
        Assert.Equal((DutyStanding.Open, "from memory"), (Duty("1(b)").State, Duty("1(b)").Mark));
        house.Fact(house.Component("pipe"), "material", FactValue.Of("copper"), basis: Basis.Seen);
        Assert.Equal((DutyStanding.Met, "pipe, material: copper (seen)."), (Duty("1(b)").State, Duty("1(b)").Words));
    }

    [Fact]
    public void Counts_are_told()
    {
        house.Seen("pipe.crust", garage, sample: new Sample(18, 23, 2));
        house.Clear("water-heater.no-pipe", garage);
        Assert.Contains("18 of 23 tried, 2 with: Crust at a joint.", Duty("1(a)").Words);
    }

    [Fact]
    public void Not_visible_limits_a_duty_with_its_reason()
    {
        house.Clear("pipe.crust", garage);
        house.NotVisible("water-heater.no-pipe", garage, "boxed in");
        Assert.Equal(DutyStanding.Met, Duty("1(a)").State);
        Assert.Contains("boxed in", Duty("1(a)").Words);
    }

    [Fact]
    public void A_house_on_a_slab_has_no_crawl_space_to_look_into()
    {
        Assert.Equal(DutyStanding.Open, Duty("2").State);
        house.Property = house.Property with { Foundation = "slab" };
        Assert.Equal(DutyStanding.NotPresent, Duty("2").State);
    }

    [Fact]
    public void A_crawl_space_that_is_there_is_looked_at_whatever_the_papers_say()
    {
        house.Property = house.Property with { Foundation = "slab" };
        house.Place(PlaceKind.CrawlSpace);
        Assert.Equal(DutyStanding.Open, Duty("2").State);
    }

    [Fact]
    public void A_place_nobody_entered_is_limited_by_one_line()
    {
        var crawl = house.Place(PlaceKind.CrawlSpace);
        house.Limit("The crawl space was not entered", "Hatch screwed shut.", "Have it opened.", crawl);
        Assert.Equal((DutyStanding.Limited, "Hatch screwed shut."), (Duty("2").State, Duty("2").Words));
    }

    [Theory]
    [InlineData("core:C")]
    [InlineData("two-states:2")]
    public void By_hand_it_closes_for_one_standard_or_for_all(string duty)
    {
        house.Close(duty, DutyClose.NotInspected, reason: "Wasps.");
        Assert.Equal((DutyStanding.Limited, "Wasps."), (Duty("2").State, Duty("2").Words));
    }

    // Closed for all standards at once, a thing that is named has still to be looked at by the standard that asks for a look.
    [Fact]
    public void A_description_by_hand_does_not_stand_for_a_look()
    {
        house.Close("core:A", DutyClose.Described, text: "Copper.");
        Assert.Equal((DutyStanding.Met, "Copper."), (Duty("1(b)").State, Duty("1(b)").Words));
        Assert.Contains(DutyId.OfCore("A"), Duty("1(a)").OpenCore);
    }

    [Fact]
    public void Words_of_ones_own_on_a_component_are_a_look_at_it()
    {
        var pipe = house.Component("pipe", garage);
        house.Observe(new EntryBody.ObservationMade { Place = garage, Component = pipe, Words = "nothing of note", Outcome = Outcome.Clear });
        Assert.DoesNotContain(DutyId.OfCore("A"), Duty("1(a)").OpenCore);
    }

    [Fact]
    public void An_open_duty_stands_in_the_way() =>
        Assert.Contains(DutyId.Parse("two-states:2"), Judging.Judge(house.Build(), Book, 2026).Obstacles.OfType<Obstacle.DutyOpen>().Select(obstacle => obstacle.Duty));

    [Fact]
    public void A_standard_nobody_knows_stands_in_the_way()
    {
        house.Standards = ["atlantis"];
        Assert.Contains("atlantis", Assert.Single(Judging.Judge(house.Build(), Book, 2026).Obstacles.OfType<Obstacle.Unsettled>()).Words);
    }

    // Every duty that always counts is closed through the common core, whichever standards the book has.
    [Fact]
    public void Every_duty_of_every_standard_can_be_closed_by_evidence()
    {
        var standards = RuleBook.BuiltIn.Standards.Values;
        Assert.NotEmpty(standards);
        Assert.All(standards, standard => Assert.Contains(standard.Duties, duty => duty.Coverage == DutyCounts.Always));
        var nothing = from standard in standards
                      from duty in standard.Duties
                      where duty.Coverage == DutyCounts.Always && duty.Core.Count == 0
                      select $"{standard.Id}:{duty.Id} names nothing of the common core that closes it";
        Told.Nothing(nothing);
    }

    // ASHI Standard of Practice 4.1.A.5 asks for vegetation, grading, drainage and retaining walls together; WAC 308-408C-170 for each alone.
    [Fact]
    public void Several_standards_are_covered_by_the_same_walk()
    {
        house.Standards = ["washington", "ashi"];
        var site = house.Place(PlaceKind.Site);
        house.Clear("grading.falls-to-house", site);
        house.Clear("vegetation.against-house", site);
        house.Clear("retaining-wall.leaning", site);
        var judged = Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026);
        var met = judged.Coverage.Select(coverage => coverage.Duties.Count(duty => duty.State == DutyStanding.Met)).ToList();
        Assert.Equal(2, met.Count);
        Assert.All(met, count => Assert.True(count > 0));
    }
}
