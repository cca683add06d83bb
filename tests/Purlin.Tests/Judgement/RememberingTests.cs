using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>What is remembered from one judgement to the next spares work and changes nothing.</summary>
public sealed class RememberingTests
{
    [Fact]
    public void After_each_act_the_judgement_is_the_one_made_anew() => GrowingVisit.Random.Sample(walk =>
    {
        GrowingVisit visit = new(walk.Start);
        JudgingMemory memory = new();
        var judged = Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026, memory);
        foreach (var act in walk.Acts)
        {
            visit.Do(act, judged);
            judged = Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026, memory);
            Assert.Equal(Text(Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026), visit.Inspection), Text(judged, visit.Inspection));
        }
    }, iter: 40);

    [Fact]
    public void Several_acts_at_once_are_as_good_as_one_by_one() => Gen.Select(GrowingVisit.Random, Gen.Int[2, 9]).Sample((walk, part) =>
    {
        GrowingVisit visit = new(walk.Start);
        JudgingMemory memory = new();
        var judged = Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026, memory);
        for (var at = 0; at < walk.Acts.Length; at++)
        {
            visit.Do(walk.Acts[at], judged);
            if (at % part == 0) judged = Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026, memory);
        }
        judged = Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026, memory);
        Assert.Equal(Text(Judging.Judge(visit.Inspection, RuleBook.BuiltIn, 2026), visit.Inspection), Text(judged, visit.Inspection));
    }, iter: 60);

    [Fact]
    public void A_tie_by_hand_falls_when_the_evidence_it_names_is_taken_back()
    {
        SmallHouse house = new();
        var (attic, room) = (house.Place(PlaceKind.Attic), house.Place(PlaceKind.Room));
        house.Seen("supply-piping.corroded-joint", room);
        var other = house.Clear("roof.moss", attic);
        JudgingMemory memory = new();
        var end = Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026, memory).LooseEnds.First(end => end.Tied is null).Id;
        house.Tie(end.ToString(), Tie.Evidence, other);
        Assert.NotNull(Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026, memory).LooseEnds.Single(one => one.Id == end).Tied);
        house.Withdraw(other);
        Assert.Null(Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026, memory).LooseEnds.Single(one => one.Id == end).Tied);
    }

    [Fact]
    public void A_question_is_told_when_a_reckoning_that_answers_it_comes_to_something_else()
    {
        // The slope of a drain from its fall and length, which no reading is called by: the question goes by the reckoning's name alone.
        SmallHouse house = new();
        var crawl = house.Place(PlaceKind.CrawlSpace);
        house.Seen("drain.too-flat", crawl);
        JudgingMemory memory = new();
        LooseEnd Hangers() => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026, memory).LooseEnds.Single(end => end.Id.ToString() == "drain.too-flat/hangers");
        Assert.Null(Hangers().Tied);
        house.Read("drain fall", 1, "in", crawl, set: "one");
        house.Read("drain run", 8, "ft", crawl, set: "one");
        house.Read("drain diameter", 3, "in", crawl, set: "one");
        Assert.NotNull(Hangers().Tied);
    }

    private static string Text(JudgedInspection judged, Inspection inspection) => JudgementJson.Write(judged, inspection).ToJsonString();
}
