using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>Evidence that arrived in part, or from a newer program: judged as far as it goes, and nothing of it is lost.</summary>
public sealed class StrangeEvidenceTests
{
    private static JudgedInspection Judge(Inspection inspection) => Judging.Judge(inspection, RuleBook.BuiltIn, 2026);

    [Fact]
    public void An_inspection_of_which_nothing_has_arrived_is_judged()
    {
        var judged = Judge(new Inspection { Id = "" });
        Assert.Empty(judged.Findings);
        Assert.Empty(judged.Obstacles);
        Assert.Equal("", (string?)JudgementJson.Write(judged, new Inspection { Id = "" })["inspection"]);
    }

    [Fact]
    public void A_place_and_component_that_have_not_arrived_yet_lose_no_finding()
    {
        var house = new SmallHouse();
        house.Observe(new EntryBody.ObservationMade { Place = new EntryName("other", 7), Component = new EntryName("other", 8), Condition = "smoke-alarm.missing", Outcome = Outcome.Seen });
        var finding = Assert.Single(Judge(house.Build()).Findings);
        Assert.Equal(Weight.MakeSafe, finding.Weight);
        Assert.Equal([new EntryName("other", 7)], finding.Places);
    }

    [Fact]
    public void A_condition_of_a_newer_book_is_told_in_the_words_there_are()
    {
        var house = new SmallHouse();
        house.Seen("hover-lift.stuck", house.Place(PlaceKind.Garage), words: "the lift does not come down");
        var finding = Assert.Single(Judge(house.Build()).Findings);
        Assert.Equal(("hover-lift.stuck", "The lift does not come down"), (finding.Id.ToString(), finding.Title));
    }

    [Theory]
    [InlineData("psi", 95, true)]
    [InlineData("bar", 6.55, true)]
    [InlineData("kPa", 655, true)]
    [InlineData("bar", 4, false)]
    [InlineData("°F", 95, false)]
    public void A_reading_counts_in_whatever_unit_it_was_written(string unit, double value, bool high)
    {
        var house = new SmallHouse();
        house.Read("static water pressure", value, unit, house.Place(PlaceKind.Side));
        Assert.Equal(high, Judge(house.Build()).Findings.Any(finding => finding.Condition == "supply-piping.pressure-high"));
    }

    [Fact]
    public void An_overruling_of_a_finding_that_is_gone_does_no_harm()
    {
        var house = new SmallHouse();
        house.Overrule("smoke-alarm.missing", "weight", "know about", "Fitted.");
        house.Overrule("smoke-alarm.dead", "weight", "no such weight", "?");
        house.Seen("smoke-alarm.dead", house.Place(PlaceKind.Hall));
        Assert.Equal(Weight.MakeSafe, Assert.Single(Judge(house.Build()).Findings).Weight);
    }

    /// <summary>A divergence waits for a person; a fork can never be undone, so it is shown and bars nothing.</summary>
    [Theory]
    [InlineData(UnsettledKind.Divergence, true)]
    [InlineData(UnsettledKind.ParentCycle, true)]
    [InlineData(UnsettledKind.Fork, false)]
    [InlineData(UnsettledKind.FarClock, false)]
    public void What_a_person_can_settle_stands_in_the_way(UnsettledKind kind, bool bars)
    {
        var inspection = new SmallHouse().Build() with
        {
            Unknown = [new EntryName("k3f9", 900)],
            Unsettled = [new Unsettled(kind, [new EntryName("k3f9", 4)], "Two values stand.")],
        };
        var obstacles = Judge(inspection).Obstacles;
        Assert.Equal(bars, obstacles.OfType<Obstacle.Unsettled>().Any());
        Assert.Equal(1, Assert.Single(obstacles.OfType<Obstacle.UnknownEntries>()).Count);
    }
}
