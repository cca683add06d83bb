using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class FollowUpTests
{
    private readonly SmallHouse house = new();
    private readonly EntryName garage;
    private readonly EntryName kitchen;
    private readonly EntryName attic;

    public FollowUpTests() => (garage, kitchen, attic) = (house.Place(PlaceKind.Garage), house.Place(PlaceKind.Kitchen), house.Place(PlaceKind.Attic));

    private LooseEnd End(string id) => Judging.Judge(house.Build(), SmallBook.Book, 2026).LooseEnds.Single(end => end.Id.ToString() == id);

    [Fact]
    public void The_look_that_opens_a_question_does_not_answer_it()
    {
        var crust = house.Seen("pipe.crust", garage);
        var end = End("pipe.crust/others");
        Assert.Null(end.Tied);
        Assert.Equal([crust], end.OpenedBy);
        Assert.Equal([kitchen, attic], end.StillToLook.Order());
    }

    [Fact]
    public void A_second_spot_in_the_same_place_does_not_say_how_the_others_are()
    {
        house.Seen("pipe.crust", garage, spot: "above the heater");
        house.Seen("pipe.crust", garage, spot: "at the softener");
        Assert.Null(End("pipe.crust/others").Tied);
    }

    [Theory]
    [InlineData(Outcome.Seen)]
    [InlineData(Outcome.Clear)]
    public void A_look_in_another_place_answers_whatever_it_found(string outcome)
    {
        house.Seen("pipe.crust", garage);
        var answer = house.Observe(new EntryBody.ObservationMade { Place = kitchen, Condition = "pipe.crust", Outcome = outcome });
        var tied = End("pipe.crust/others").Tied;
        Assert.Equal(Tie.Evidence, tied?.How);
        Assert.Contains(answer, tied!.By);
    }

    [Fact]
    public void It_opens_again_when_its_answer_is_taken_back()
    {
        house.Seen("pipe.crust", garage);
        var answer = house.Clear("pipe.crust", kitchen);
        Assert.NotNull(End("pipe.crust/others").Tied);
        house.Withdraw(answer);
        Assert.Null(End("pipe.crust/others").Tied);
    }

    [Fact]
    public void It_goes_when_what_opened_it_is_taken_back()
    {
        var crust = house.Seen("pipe.crust", garage);
        house.Withdraw(crust);
        Assert.Empty(Judging.Judge(house.Build(), SmallBook.Book, 2026).LooseEnds);
    }

    [Fact]
    public void A_reading_answers_wherever_it_was_taken_when_it_speaks_for_the_house()
    {
        house.Seen("pipe.crust", garage);
        Assert.Null(End("pipe.crust/pressure").Tied);
        var pressure = house.Read("static water pressure", 62, "psi", attic);
        Assert.Equal([pressure], End("pipe.crust/pressure").Tied?.By);
    }

    [Fact]
    public void A_blocking_question_stands_in_the_way_and_another_becomes_a_referral()
    {
        house.Seen("pipe.crust", garage);
        var judged = Judging.Judge(house.Build(), SmallBook.Book, 2026);
        Assert.Equal("pipe.crust/pressure", Assert.Single(judged.Obstacles.OfType<Obstacle.LooseEndOpen>()).LooseEnd.ToString());
        Assert.Equal("Have the plumber look at the others.", judged.LooseEnds.Single(end => end.Id.ToString() == "pipe.crust/others").Referral);
    }

    [Fact]
    public void All_means_every_place_of_its_kinds_that_is_there()
    {
        var bath = house.Place(PlaceKind.Bathroom, "Bathroom 1");
        house.Seen("pipe.stain", garage);
        house.Clear("pipe.crust", kitchen);
        Assert.Equal([bath], End("pipe.stain/each").StillToLook);
        Assert.Null(End("pipe.stain/each").Tied);
        house.Clear("pipe.crust", bath);
        Assert.Equal(Tie.Evidence, End("pipe.stain/each").Tied?.How);
    }

    [Fact]
    public void Places_that_could_not_be_seen_tie_it_by_limitation()
    {
        house.Seen("pipe.stain", garage);
        house.NotVisible("pipe.crust", kitchen, "cabinet full");
        var tied = End("pipe.stain/each").Tied;
        Assert.Equal(Tie.Limitation, tied?.How);
        Assert.Contains("cabinet full", tied!.Words);
    }

    [Fact]
    public void A_referral_by_hand_ties_it()
    {
        house.Seen("pipe.crust", garage);
        house.Tie("pipe.crust/pressure", Tie.Referral, reason: "No gauge fits this tap.");
        Assert.Equal(Tie.Referral, End("pipe.crust/pressure").Tied?.How);
        Assert.Empty(Judging.Judge(house.Build(), SmallBook.Book, 2026).Obstacles.OfType<Obstacle.LooseEndOpen>());
    }

    [Fact]
    public void A_tie_by_hand_falls_with_its_evidence()
    {
        house.Seen("pipe.crust", garage);
        var look = house.Observe(new EntryBody.ObservationMade { Place = attic, Words = "gauge at the heater read 60", Outcome = Outcome.Clear });
        house.Tie("pipe.crust/pressure", Tie.Evidence, look);
        Assert.NotNull(End("pipe.crust/pressure").Tied);
        house.Withdraw(look);
        Assert.Null(End("pipe.crust/pressure").Tied);
    }

    [Fact]
    public void The_opening_look_is_no_evidence_for_a_tie_by_hand()
    {
        var crust = house.Seen("pipe.crust", garage);
        house.Tie("pipe.crust/pressure", Tie.Evidence, crust);
        Assert.Null(End("pipe.crust/pressure").Tied);
    }

    [Fact]
    public void An_answer_says_what_was_seen_and_not_its_contrary_in_the_same_place()
    {
        house.Seen("pipe.stain", kitchen);
        house.Clear("pipe.crust", kitchen);
        Assert.Contains("looked for and not seen in Kitchen", End("pipe.stain/each").Tied!.Words);
        house.Seen("pipe.crust", kitchen);
        Assert.Equal("Crust at a joint: also seen in Kitchen.", End("pipe.stain/each").Tied!.Words);
    }

    [Fact]
    public void Many_readings_of_a_kind_answer_in_one_sentence()
    {
        house.Seen("pipe.crust", garage);
        foreach (var psi in new[] { 61, 62, 64 }) house.Read("static water pressure", psi, "psi", kitchen);
        Assert.Contains("Measured static water pressure: 61 psi; 62 psi; 64 psi.", End("pipe.crust/pressure").Tied!.Words);
    }

    // Two heaters are two matters: the pan below one says nothing of the other (common practice).
    [Fact]
    public void A_look_at_the_other_heater_does_not_answer_for_this_one()
    {
        var (old, young) = (house.Component("water heater", garage), house.Component("water heater", attic));
        house.Seen("water-heater.past-service-life", garage, old);
        house.Clear("water-heater.pan-missing", attic, young);
        LooseEnd Pan() => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).LooseEnds.Single(end => end.Id.ToString() == "water-heater.past-service-life/pan");
        Assert.Null(Pan().Tied);
        house.Clear("water-heater.pan-missing", garage, old);
        Assert.Equal(Tie.Evidence, Pan().Tied?.How);
    }

    // A house on a slab has no crawl space or basement to look into for water marks (common practice).
    [Theory]
    [InlineData("slab", false)]
    [InlineData("crawl space", true)]
    [InlineData(null, true)]
    public void A_question_about_places_that_the_house_does_not_have_is_not_asked(string? foundation, bool asked)
    {
        house.Property = house.Property with { Foundation = foundation };
        house.Seen("gutter.missing", house.Place(PlaceKind.Side));
        Assert.Equal(asked, Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).LooseEnds.Any(end => end.Id.ToString() == "gutter.missing/below"));
    }

    // The stain is measured where it is, not in every room (common practice).
    [Fact]
    public void What_is_asked_of_the_spot_itself_is_asked_nowhere_else()
    {
        house.Seen("ceiling.stain", kitchen);
        house.Place(PlaceKind.Bedroom);
        LooseEnd Meter() => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).LooseEnds.Single(end => end.Id.ToString() == "ceiling.stain/meter");
        Assert.Equal([kitchen], Meter().LookIn);
        Assert.Equal([kitchen], Meter().StillToLook);
        house.Read("surface moisture", 11, "%", kitchen);
        Assert.Equal(Tie.Evidence, Meter().Tied?.How);
        Assert.Empty(Meter().StillToLook);
    }

    [Fact]
    public void The_spot_that_could_not_be_measured_is_a_limitation()
    {
        house.Seen("wall.diagonal-crack", kitchen);
        house.Place(PlaceKind.Bedroom);
        house.NotVisible("interior-door.sticks", kitchen, "door blocked by goods");
        Assert.Equal(Tie.Limitation, Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).LooseEnds.Single(end => end.Id.ToString() == "wall.diagonal-crack/doors").Tied?.How);
    }
}
