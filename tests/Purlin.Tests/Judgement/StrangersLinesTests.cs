using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>A whole visit of an invented house as somebody might write it who has read the documents once: slips, other names, other units, broken lines.</summary>
public sealed class StrangersLinesTests
{
    private static readonly LineBlock Block = LineBlock.Read(File.ReadAllBytes(
        Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/strangers/misspelt.jsonl")));

    private static readonly JudgedInspection Judged = Judging.Judge(Folding.Fold(Block.Entries), RuleBook.BuiltIn, 2026);

    [Theory]
    [InlineData("supply-piping.polybutylene")]
    [InlineData("supply-piping.galvanised")]
    [InlineData("supply-piping.pressure-high")]
    [InlineData("supply-piping.corroded-joint")]
    [InlineData("panelboard.neutrals-doubled")]
    [InlineData("panelboard.directory-missing")]
    [InlineData("water-heater.too-hot")]
    [InlineData("water-heater.past-service-life")]
    [InlineData("siding.rot")]
    public void What_is_plainly_meant_is_judged(string condition) =>
        Assert.Contains(Judged.Findings, finding => finding.Condition == condition || finding.Grouped.Contains(condition));

    [Theory]
    [InlineData("2 car")]
    [InlineData("wine vault")]
    [InlineData("materiel")]
    [InlineData("water presure")]
    [InlineData("500 psi")]
    [InlineData("blorp")]
    [InlineData("90 ft")]
    [InlineData("water-heater.too-hott")]
    [InlineData("panelboard.blub")]
    [InlineData("a1.999")]
    [InlineData("a1.777")]
    [InlineData("nonsense")]
    [InlineData("core:ZZ-1")]
    [InlineData("roof-not-walkd")]
    [InlineData("reading.tooken")]
    [InlineData("wether")]
    public void What_is_not_is_told(string given) => Assert.Contains(Judged.Again, again => again.Words.Contains(given, StringComparison.Ordinal));

    [Fact]
    public void Lines_that_cannot_be_read_are_held_with_their_reasons() =>
        Assert.Equal(["outcome", "line"], Block.Held.SelectMany(held => held.Why).Select(why => why.Input).Distinct());
}
