using System.Text.RegularExpressions;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>By when a matter wants doing. Each case gives its reason; that it is the usual one is common practice.</summary>
public sealed class ByWhenTests
{
    private readonly SmallHouse house = new();

    private IReadOnlyList<Finding> Findings => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Findings;

    [Theory]
    // Scalding water can come out of the open pipe at any time: someone can be hurt.
    [InlineData("water-heater.relief-pipe-missing", PlaceKind.Garage, ByWhen.Today)]
    // Nobody knows what a bowed wall costs before an engineer has read it.
    [InlineData("foundation.wall-bowed", PlaceKind.Basement, ByWhen.BeforeBound)]
    // A sewer of clay is no defect, but a look with a camera decides what the house costs.
    [InlineData("drain.clay-sewer", PlaceKind.Site, ByWhen.BeforeBound)]
    [InlineData("radon.not-tested", PlaceKind.Basement, ByWhen.BeforeBound)]
    // A furnace is serviced before it is needed.
    [InlineData("furnace.not-serviced", PlaceKind.Mechanical, ByWhen.BeforeWinter)]
    // A cracked boot lets every rain in beside the pipe.
    [InlineData("flashing.pipe-boot-cracked", PlaceKind.Roof, ByWhen.BeforeWinter)]
    // A window that sticks hurts nobody and gets no worse.
    [InlineData("window.pane-cracked", PlaceKind.Bedroom, ByWhen.WithinTheYear)]
    public void A_usual_matter_has_its_usual_time(string condition, string kind, ByWhen by)
    {
        house.Seen(condition, house.Place(kind));
        var finding = Assert.Single(Findings);
        Assert.Equal(by, finding.Due!.By);
        Assert.EndsWith(".", finding.Due.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_condition_of_the_book_has_a_time_and_a_reason()
    {
        foreach (var condition in RuleBook.BuiltIn.Conditions.Values.Where(condition => condition.Places.Count > 0)) house.Seen(condition.Id, house.Place(condition.Places[0]));
        var findings = Findings;
        Assert.True(findings.Count > 300);
        Assert.All(findings, finding => Assert.True(finding.Due is { Because.Length: > 10 }, finding.Id.ToString()));
        Assert.Equal(5, findings.Select(finding => finding.Due!.By).Distinct().Count());
        // The heaviest are never put off, and what needs no action is never pressing unless somebody has to look closer.
        Assert.All(findings.Where(finding => finding.Weight == Weight.MakeSafe), finding => Assert.Equal(ByWhen.Today, finding.Due!.By));
        Assert.All(findings.Where(finding => finding.Weight == Weight.ActNow), finding => Assert.True(finding.Due!.By <= ByWhen.BeforeBound, finding.Id.ToString()));
    }

    [Fact]
    public void What_is_to_be_done_before_buying_is_dated_before_the_buyer_is_bound()
    {
        var marked = RuleBook.BuiltIn.ByWhen.Single(rule => rule.Id == "unknown").Conditions;
        var said = RuleBook.BuiltIn.Conditions.Values.Where(condition => Regex.IsMatch(condition.Do, "before you (buy|are bound)|before closing", RegexOptions.None, TimeSpan.FromSeconds(1))).Select(condition => condition.Id);
        Assert.Empty(said.Except(marked));
    }

    [Fact]
    public void The_inspector_sets_another_time_with_a_reason()
    {
        var place = house.Place(PlaceKind.Side);
        house.Seen("gutter.joint-leaks", place);
        var id = Findings.Single().Id;
        Assert.Equal(ByWhen.WithinTheYear, Findings.Single().Due!.By);
        house.Overrule(id.ToString(), "by when", "before winter", "The eaves are two feet deep here.");
        var finding = Findings.Single();
        Assert.Equal(ByWhen.BeforeWinter, finding.Due!.By);
        Assert.Contains("The eaves are two feet deep here.", finding.Due.Because, StringComparison.Ordinal);
        Assert.Equal(FindingPart.ByWhen, finding.Overruled.Single().Part);
        house.Overrule(id.ToString(), "by when", "some day", "no such time");
        Assert.NotEqual("some day", Findings.Single().Due!.By.Word());
    }
}
