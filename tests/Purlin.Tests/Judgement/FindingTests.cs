using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class FindingTests
{
    private readonly SmallHouse house = new();
    private readonly EntryName garage;
    private readonly EntryName kitchen;
    private readonly EntryName attic;

    public FindingTests() => (garage, kitchen, attic) = (house.Place(PlaceKind.Garage), house.Place(PlaceKind.Kitchen), house.Place(PlaceKind.Attic));

    private JudgedInspection Judged => Judging.Judge(house.Build(), SmallBook.Book, 2026);

    private Finding Finding(string id) => Judged.Findings.Single(finding => finding.Id.ToString() == id);

    [Fact]
    public void A_finding_has_its_six_parts()
    {
        var heater = house.Component("water heater", garage);
        house.Seen("water-heater.no-pipe", garage, heater, spot: "north wall");
        var finding = Finding("water-heater.no-pipe");
        Assert.Equal("Garage (north wall)", finding.Where);
        Assert.Equal("water heater", finding.ComponentKind);
        Assert.Equal("Relief valve without a pipe.", finding.Observed);
        Assert.Equal("Scalding water can spray.", finding.Matters);
        Assert.Equal("Fit a pipe.", finding.Do);
        Assert.Equal("licensed plumber", finding.Trade);
        Assert.Equal(Weight.MakeSafe, finding.Weight);
        Assert.Equal(["Plumbing code, 2021, 608.2"], finding.Sources);
        Assert.StartsWith("Hot water", Assert.Single(finding.Cautions));
    }

    [Fact]
    public void Clear_looks_alone_make_no_finding()
    {
        house.Clear("pipe.crust", garage);
        Assert.Empty(Judged.Findings);
    }

    [Fact]
    public void Spread_is_worked_out_from_seen_and_clear()
    {
        house.Seen("pipe.crust", garage);
        Assert.Equal((Spread.OnePlace, Weight.PutRight), (Finding("pipe.crust").Spread, Finding("pipe.crust").Weight));
        house.Clear("pipe.crust", attic);
        house.Seen("pipe.crust", kitchen);
        Assert.Equal((Spread.SeveralPlaces, Weight.ActNow), (Finding("pipe.crust").Spread, Finding("pipe.crust").Weight));
        Assert.Contains("not seen in: Attic", Finding("pipe.crust").Observed);
        house.Seen("pipe.crust", attic);
        Assert.Equal(Spread.Throughout, Finding("pipe.crust").Spread);
    }

    [Fact]
    public void Every_step_of_the_weight_is_told()
    {
        house.Seen("pipe.crust", garage);
        house.Seen("pipe.crust", kitchen);
        house.Overrule("pipe.crust", "weight", "make safe", "It drips on the panel.");
        Assert.Equal(
            [("consequence", Weight.ActNow), ("timing", Weight.PutRight), ("spread", Weight.ActNow), ("overruled", Weight.MakeSafe)],
            Finding("pipe.crust").Why.Select(step => (step.What.Word(), step.Weight)));
    }

    [Fact]
    public void Counts_are_told_and_more_than_one_is_several()
    {
        house.Seen("pipe.crust", garage, sample: new Sample(18, 23, 2));
        var finding = Finding("pipe.crust");
        Assert.Contains("18 of 23 tried; 2 of those", finding.Observed);
        Assert.Equal(Spread.SeveralPlaces, finding.Spread);
    }

    [Fact]
    public void A_second_heater_is_a_matter_of_its_own_and_the_first_keeps_its_name()
    {
        var first = house.Component("water heater", garage);
        house.Seen("water-heater.no-pipe", garage, first);
        var second = house.Component("water heater", attic, "upstairs");
        house.Seen("water-heater.no-pipe", attic, second);
        Assert.Equal(["water-heater.no-pipe", $"water-heater.no-pipe@{second}"], Judged.Findings.Select(finding => finding.Id.ToString()).Order());
    }

    [Fact]
    public void Overruling_keeps_what_the_program_had_and_why()
    {
        house.Seen("pipe.crust", garage);
        house.Overrule("pipe.crust", "recommendation", "Replace the branch.", "Three joints in one foot.");
        house.Overrule("pipe.crust", "trade", "handy person", "Small job.");
        var finding = Finding("pipe.crust");
        Assert.Equal(("Replace the branch.", "handy person"), (finding.Do, finding.Trade));
        Assert.Contains(finding.Overruled, change => change is { Part: FindingPart.Recommendation, From: "Repair the joint.", Reason: "Three joints in one foot." });
    }

    [Fact]
    public void What_is_left_out_stays_on_record_and_asks_nothing_more()
    {
        house.Seen("pipe.crust", garage);
        house.Overrule("pipe.crust", "left out", "", "Repaired while we were there.");
        Assert.True(Finding("pipe.crust").LeftOut);
        Assert.Empty(Judged.LooseEnds);
    }

    [Fact]
    public void Free_words_become_a_finding_of_their_own()
    {
        var own = house.Observe(new EntryBody.ObservationMade { Place = attic, Words = "bats behind the vent", Outcome = Outcome.Seen });
        var finding = Finding($"own@{own}");
        Assert.Equal(("own", "Bats behind the vent", "attic"), (finding.Condition, finding.Title, finding.System));
    }

    [Fact]
    public void A_reading_beyond_its_limit_is_a_finding_and_within_it_a_clear_look()
    {
        var reading = house.Read("static water pressure", 95, "psi", garage);
        var finding = Finding("pipe.pressure-high");
        Assert.Equal([reading], finding.Evidence);
        Assert.Contains("95 psi", finding.Observed);
        house.Withdraw(reading);
        house.Read("static water pressure", 4.5, "bar", garage);
        Assert.Empty(Judged.Findings);
    }

    [Fact]
    public void Not_visible_becomes_a_limitation_until_somebody_has_looked()
    {
        var boxes = house.NotVisible("pipe.crust", kitchen, "cabinet full");
        house.NotVisible("pipe.stain", kitchen, "cabinet full");
        var limitation = Assert.Single(Judged.Limitations);
        Assert.Equal((boxes, "cabinet full"), (limitation.Id, limitation.Cause));
        Assert.Contains("crust at a joint; stain below a pipe", limitation.What);
        house.Clear("pipe.crust", kitchen);
        Assert.DoesNotContain("crust", Assert.Single(Judged.Limitations).What);
    }

    // Ground-fault protection of bathroom outlets: NEC 210.8(A)(1), 1975 edition. The house's year is not said to be the outlet's.
    [Fact]
    public void The_year_of_the_house_is_not_given_for_the_year_of_the_thing()
    {
        var bath = house.Place(PlaceKind.Bathroom);
        house.Property = house.Property with { YearBuilt = 1968 };
        house.Seen("receptacle.no-gfci", bath);
        string Words() => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Findings.Single(finding => finding.Id.ToString() == "receptacle.no-gfci").ThenAndNow!.Words;
        Assert.Contains("when the house was built in 1968", Words());
        house.Fact(house.Component("receptacle", bath), "year", FactValue.Of(2001));
        Assert.Contains("when this was installed in 2001", Words());
    }

    // What the buyer should do about it is the rule book's advice for that reason, where it has one (common practice).
    [Fact]
    public void A_limitation_advises_what_the_book_advises_for_its_reason()
    {
        var rule = RuleBook.BuiltIn.Limitations.Values.First(rule => rule.Component == "roof covering" && rule.Reasons.Count > 0);
        var roof = house.Place(PlaceKind.Roof);
        house.NotVisible("roof-covering.asphalt-worn", roof, rule.Reasons[0]);
        var limitation = Assert.Single(Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Limitations);
        Assert.Equal(RuleBook.BuiltIn.Limitations.Values.Where(other => other.Component == rule.Component && other.Reasons.Contains(rule.Reasons[0])).OrderBy(other => other.Id, StringComparer.Ordinal).First().Next, limitation.Next);
    }

    [Fact]
    public void A_limitation_without_cause_or_next_step_stands_in_the_way()
    {
        house.Limit("Crawl space not entered", null, null);
        house.NotVisible("pipe.crust", kitchen, null);
        Assert.Equal(["cause and next", "cause"], Judged.Obstacles.OfType<Obstacle.LimitationIncomplete>().Select(obstacle => obstacle.Missing));
    }

    [Fact]
    public void Each_photograph_is_spoken_for()
    {
        var crust = house.Seen("pipe.crust", garage);
        var clear = house.Clear("pipe.crust", attic);
        var part = house.Photograph(crust);
        var fine = house.Photograph(clear);
        var stray = house.Photograph();
        var held = house.Photograph(use: PhotoUse.HeldBack);
        var photos = Judged.Photos.ToDictionary(photo => photo.Id);
        Assert.Equal((PhotoUse.Finding, "pipe.crust"), (photos[part].Use, photos[part].Finding?.ToString()));
        Assert.Equal(PhotoUse.Fine, photos[fine].Use);
        Assert.Equal(PhotoUse.HeldBack, photos[held].Use);
        Assert.Null(photos[stray].Use);
        Assert.Equal(stray, Assert.Single(Judged.Obstacles.OfType<Obstacle.PhotoUnspoken>()).Photo);
    }

    [Fact]
    public void The_heaviest_comes_first()
    {
        house.Seen("pipe.stain", garage);
        house.Seen("pipe.crust", attic);
        house.Seen("water-heater.no-pipe", garage);
        Assert.Equal([Weight.MakeSafe, Weight.PutRight, Weight.KeepUp], Judged.Findings.Select(finding => finding.Weight));
    }
}
