using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>The duties around the visit, over the real rule book; what the days come to stands in the worked cases.</summary>
public sealed class AroundVisitTests
{
    private readonly SmallHouse house = new() { Standards = ["washington"] };

    private JudgedInspection Judged => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026);

    private VisitDuty Duty(string id) => Judged.Visit.Single(duty => duty.Id.ToString() == "core:" + id);

    private void Say(string fact, string value) => house.Fact(SmallHouse.House, fact, FactValue.Of(value), basis: Basis.Seen);

    private string[] InTheWay => [.. Judged.Obstacles.OfType<Obstacle.VisitOpen>().Select(obstacle => obstacle.Duty.ToString())];

    // WAC 308-408C-030 (agreement signed first, and what it states), 308-408C-020(2) and (7) (disclosures).
    [Fact]
    public void What_the_state_asks_before_the_visit_stands_in_the_way_until_it_is_stated()
    {
        Assert.Equal(["core:V-01", "core:V-02", "core:V-05"], InTheWay);
        Assert.Contains("Say on which day", Judged.Obstacles.OfType<Obstacle.VisitOpen>().First().Words);
        Say("agreement signed", "2026-05-04");
        Say("agreement states", "all that the rule lists");
        Say("disclosures", "nothing to disclose");
        Assert.Empty(InTheWay);
        Assert.Equal("Agreement signed: May 4, 2026.", Duty("V-01").Words);
        Assert.Single(Duty("V-01").Evidence);
        Assert.Equal(["308-408C-020(2)", "308-408C-020(7)"], Duty("V-05").Asked.Select(asked => asked.Section));
    }

    [Fact]
    public void A_day_that_is_none_closes_nothing_and_is_asked_for_again()
    {
        Say("agreement signed", "last Monday");
        var duty = Duty("V-01");
        Assert.Equal(VisitStanding.Open, duty.State);
        Assert.Contains("\"last Monday\" is no day", duty.Words);
        Assert.Equal(("agreement signed", AnswerKind.Day, true), (duty.Questions.Single().Fact, duty.Questions.Single().Kind, duty.Questions.Single().UpToVisit));
    }

    [Fact]
    public void Conduct_is_listed_and_bars_nothing()
    {
        Assert.Equal(VisitStanding.Listed, Duty("V-40").State);
        Assert.DoesNotContain("core:V-40", InTheWay);
    }

    [Fact]
    public void Days_after_the_visit_bar_nothing()
    {
        Assert.Equal((VisitStanding.Dated, new DateOnly(2029, 5, 4), false), (Duty("V-31").State, Duty("V-31").Day!.Value, Duty("V-31").AwaitsEdition));
        Assert.Equal(new DateOnly(2027, 5, 4), Duty("V-32").Day);
        Assert.DoesNotContain("core:V-31", InTheWay);
    }

    [Fact]
    public void Without_a_standard_nobody_asks_anything()
    {
        house.Standards = [];
        Assert.Empty(Judged.Visit);
        Assert.Empty(Judged.Wanted);
    }

    // The duties of the walk are counted as before, whatever was agreed before it.
    [Fact]
    public void Counts_of_the_walk_keep_their_meaning()
    {
        var before = Judged.Coverage.Single().Duties;
        Say("agreement signed", "2026-05-04");
        house.Close("core:V-05", DutyClose.Result, text: "Told by letter.");
        Assert.Equal(before.Select(duty => (duty.Id, duty.State)), Judged.Coverage.Single().Duties.Select(duty => (duty.Id, duty.State)));
        Assert.DoesNotContain(before, duty => duty.Section is "308-408C-030(1)" or "308-408C-020(2)");
    }

    [Fact]
    public void By_hand_it_closes_for_every_standard_that_asks()
    {
        house.Standards = ["washington", "virginia", "new-york"];
        Assert.Equal(["Washington", "Virginia", "New York"], Duty("V-01").Asked.Select(asked => asked.Standard));
        house.Close("core:V-01", DutyClose.Result, text: "Signed on paper at the door.");
        Assert.Equal((VisitStanding.Closed, "Signed on paper at the door."), (Duty("V-01").State, Duty("V-01").Words));
    }

    [Fact]
    public void By_hand_for_one_standard_it_stays_open_for_the_others()
    {
        house.Standards = ["washington", "virginia"];
        house.Close("washington:308-408C-030(1)", DutyClose.Result, text: "Signed.");
        Assert.Equal(VisitStanding.Open, Duty("V-01").State);
        Assert.Equal([true, false], Duty("V-01").Asked.Select(asked => asked.IsClosed));
        house.Close("virginia:120.A", DutyClose.Result, text: "Signed by both.");
        Assert.Equal((VisitStanding.Closed, "Signed. Signed by both."), (Duty("V-01").State, Duty("V-01").Words));
    }

    [Fact]
    public void Not_done_is_told_with_its_reason_and_so_is_what_is_not_asked_for()
    {
        house.Close("core:V-01", DutyClose.NotInspected, reason: "The client sent it back a day late.");
        house.Close("core:V-05", DutyClose.NotPresent);
        Assert.Equal((VisitStanding.NotDone, "The client sent it back a day late."), (Duty("V-01").State, Duty("V-01").Words));
        Assert.Equal(VisitStanding.DoesNotApply, Duty("V-05").State);
        Assert.Equal(["core:V-02"], InTheWay);
    }

    // 22 TAC 535.222(b)(1), (3): name and licence number of the inspector, name of the client. The opening says them, or a fact does.
    [Fact]
    public void Who_inspected_for_whom_is_read_off_the_opening_or_stated_later()
    {
        house.Standards = ["texas"];
        Assert.Equal((VisitStanding.Open, VisitStanding.Open), (Duty("V-10").State, Duty("V-12").State));
        house.Inspector = "A. Sample";
        Assert.Equal(["licence number"], Duty("V-10").Questions.Select(question => question.Fact));
        house.Inspector = "A. Sample, licence 0000";
        house.Client = "R. Example";
        Assert.Equal("Inspector: A. Sample, licence 0000. It stands on the first page.", Duty("V-10").Words);
        Assert.Equal(VisitStanding.Closed, Duty("V-12").State);
        Say("client", "S. Other");
        Assert.StartsWith("Client: S. Other.", Duty("V-12").Words, StringComparison.Ordinal);
    }

    // 22 TAC 535.227(f)(2)(A): the client is told as early as can be that something will not be inspected.
    [Fact]
    public void The_client_is_told_of_what_was_left_out_only_where_something_was()
    {
        house.Standards = ["texas"];
        Assert.Equal(VisitStanding.DoesNotApply, Duty("V-08").State);
        house.Limit("The attic was not entered", "No walkway.", "Have one made.", house.Place(PlaceKind.Attic));
        Assert.Contains("core:V-08", InTheWay);
    }

    // ASHI 2.2.B.4: listed items that were there and not inspected, and why.
    [Fact]
    public void What_was_not_inspected_stands_in_the_report_with_its_reason_or_names_what_lacks_one()
    {
        house.Standards = ["ashi"];
        Assert.Equal(VisitStanding.Closed, Duty("V-23").State);
        house.Limit("The attic was not entered", null, "Have a walkway made.");
        Assert.Equal((VisitStanding.Open, "A reason is missing for: The attic was not entered."), (Duty("V-23").State, Duty("V-23").Words));
        // The limitation itself stands in the way already.
        Assert.DoesNotContain("core:V-23", InTheWay);
    }

    // 11 NCAC 08 .1103(b)(3)(D): how the condition is defective, its implications, and a course of action.
    [Fact]
    public void Own_words_that_do_not_say_why_they_matter_bar_issue_where_the_rule_wants_it()
    {
        house.Standards = ["north-carolina"];
        Assert.Equal(VisitStanding.Closed, Duty("V-22").State);
        house.Observe(new EntryBody.ObservationMade { Place = house.Place(PlaceKind.Room), Words = "stain on the ceiling", Outcome = Outcome.Seen });
        Assert.Contains("core:V-22", InTheWay);
        var own = Judged.Findings.Single();
        house.Overrule(own.Id.ToString(), "text", "Water came in here at some time and may come in again.", "my own words");
        Assert.DoesNotContain("core:V-22", InTheWay);
    }

    // 11 NCAC 08 .1103(b)(3)(A): what the rules want described is described.
    [Fact]
    public void Descriptions_are_the_walks_own_and_are_not_asked_twice()
    {
        house.Standards = ["north-carolina"];
        Assert.Equal(VisitStanding.Open, Duty("V-24").State);
        Assert.DoesNotContain("core:V-24", InTheWay);
    }

    [Fact]
    public void A_sealed_edition_fulfils_the_delivery()
    {
        house.Standards = ["north-carolina"];
        Assert.Equal((true, null), (Duty("V-30").AwaitsEdition, Duty("V-30").Done));
        house.Editions.Add(new DateOnly(2026, 5, 5));
        house.Editions.Add(new DateOnly(2026, 6, 9));
        Assert.Equal(new DateOnly(2026, 5, 5), Duty("V-30").Done);
        Assert.Contains("Edition 1 was sealed on May 5, 2026.", Duty("V-30").Words);
    }

    // North Carolina three business days, Texas two days: May 4, 2026 is a Monday.
    [Fact]
    public void Of_several_deliveries_the_earliest_counts_and_each_is_told()
    {
        house.Standards = ["north-carolina", "texas"];
        var duty = Duty("V-30");
        Assert.Equal(new DateOnly(2026, 5, 6), duty.Day);
        Assert.Equal([new DateOnly(2026, 5, 7), new DateOnly(2026, 5, 6), new DateOnly(2026, 5, 6)], duty.Asked.Select(asked => asked.Day!.Value));
        Assert.Contains("say on which day it was paid", duty.Words);
        Assert.Contains("5 U.S.C. 6103", duty.Words);
    }

    [Fact]
    public void A_visit_at_the_end_of_time_breaks_nothing()
    {
        house.Standards = ["texas", "north-carolina", "washington", "new-jersey"];
        house.Date = DateOnly.MaxValue;
        Say("booked", "9999-12-31");
        Say("agreement sent", "9999-12-31");
        Assert.All(Judged.Visit, duty => Assert.Null(duty.Day));
    }
}
