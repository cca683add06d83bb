using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement.Readings;

/// <summary>A wrong reading beside the main one never takes that one with it.</summary>
public sealed class OptionalInputTests
{
    // 80 psi: IRC 2021 P2903.3.1. A residual pressure above the static one cannot be, so the water-pressure reckoning refuses it.
    [Theory]
    [InlineData(130, "psi")]
    [InlineData(-5, "psi")]
    [InlineData(60, "°F")]
    public void Too_much_pressure_is_told_whatever_stands_beside_it(double residual, string unit)
    {
        var house = new SmallHouse();
        var site = house.Place("site");
        house.Component("supply piping", site);
        house.Read("static water pressure", 105, "psi", site);
        house.Read("residual water pressure", residual, unit, site);
        var judged = Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026);
        Assert.Contains(judged.Findings, finding => finding.Condition == "supply-piping.pressure-high" || finding.Grouped.Contains("supply-piping.pressure-high"));
        Assert.Contains(judged.Refused, refused => refused.Reckoning == "water-pressure" && refused.Reasons.Any(reason => reason.Contains("residual", StringComparison.Ordinal)));
    }
}
