using Purlin.Demo;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Demo;

public sealed class DemoInspectionTests
{
    private static readonly DemoInspection Demo = DemoInspection.Write();
    private static readonly Inspection Folded = Folding.Fold(Demo.Entries);
    private static readonly Lazy<JudgedInspection> Judged = new(() => Judging.Judge(Folded, RuleBook.BuiltIn, 2026));

    [Fact]
    public void Says_that_it_is_invented()
    {
        var opening = Folded.Opening!.Body;
        Assert.True(opening.Demo);
        Assert.All([opening.Property.Address, opening.Client!, opening.Inspector!], words => Assert.Contains("invented", words, StringComparison.Ordinal));
    }

    [Fact]
    public void Is_rich_enough_to_try_everything_on()
    {
        Assert.InRange(Folded.Observations.Count, 60, 1000);
        Assert.InRange(Folded.Readings.Count, 40, 1000);
        Assert.InRange(Folded.Photos.Select(photo => photo.Body.Sha).Distinct().Count(), 30, 1000);
        Assert.InRange(Folded.Readings.Count(reading => reading.Body.Kind == "floor level" && reading.Body.Point is not null), 20, 500);
        Assert.InRange(Folded.Limitations.Count, 4, 100);
        Assert.Empty(Folded.Unsettled);
        Assert.Empty(Folded.Missing);
    }

    [Fact]
    public void Names_only_conditions_of_the_rule_book()
    {
        var known = RuleBook.BuiltIn.Conditions;
        Assert.Empty(Folded.Observations.Select(observation => observation.Body.Condition!).Where(condition => !known.ContainsKey(condition)).Distinct());
    }

    [Fact]
    public void Leaves_two_things_to_settle_before_issue() =>
        Assert.Equal(["PhotoUnspoken", "LimitationIncomplete"], Judged.Value.Obstacles.Select(obstacle => obstacle.GetType().Name).OrderDescending());

    [Fact]
    public void The_same_program_writes_the_same_bytes() =>
        Assert.Equal(Demo.Entries.Select(entry => entry.Hash), DemoInspection.Write().Entries.Select(entry => entry.Hash));

    /// <summary>Beside the split, the floor and the pressure, the house shows what pipes, burners, wires, plates, gutters, roof and joists reckon to.</summary>
    [Theory]
    [InlineData("gas-pipe", "within")]
    [InlineData("combustion-air", "within")]
    [InlineData("grounding", "within")]
    [InlineData("voltage-drop", "within")]
    [InlineData("downspout", "within")]
    [InlineData("roof", "within")]
    [InlineData("joist-span", "within")]
    [InlineData("nameplate", "within")]
    [InlineData("insulation", "outside")]
    public void Reckons_what_was_recorded(string name, string verdict) =>
        Assert.Contains(Judged.Value.Workings, done => done.Working.Name == name && done.Working.Verdict.Word == verdict);

    [Fact]
    public void Leaves_no_reckoning_waiting_for_one_reading()
    {
        var judged = Judged.Value;
        Assert.Empty(judged.Asks);
        Assert.Empty(judged.Refused);
    }
}
