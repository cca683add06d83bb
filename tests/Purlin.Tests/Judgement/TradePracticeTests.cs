using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>Facts of the trade without a published source: each is marked <c>common practice</c>.</summary>
public sealed class TradePracticeTests
{
    private readonly SmallHouse house = new();

    private JudgedInspection Judged => Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026);

    private Finding Finding(string condition) => Judged.Findings.First(finding => finding.Condition == condition || finding.Grouped.Contains(condition));

    // common practice: one neutral conductor under one terminal screw; in a house older than the rule it informs and is not broken.
    [Theory]
    [InlineData(1975)]
    [InlineData(1990)]
    public void Two_neutrals_under_one_screw_are_told_in_an_older_house_without_blame(int built)
    {
        house.Property = house.Property with { YearBuilt = built };
        house.Seen("panelboard.neutrals-doubled", house.Place(PlaceKind.Garage));
        var finding = Finding("panelboard.neutrals-doubled");
        Assert.Equal(YearsKind.Advised, finding.ThenAndNow?.Kind);
        Assert.DoesNotContain("violat", finding.ThenAndNow!.Words, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("licensed electrician", finding.Trade);
    }

    // common practice: a breaker found off is a question before it is a fault: what does it feed, and why is it off?
    [Fact]
    public void A_breaker_found_off_asks_what_it_feeds()
    {
        house.Seen("panelboard.breaker-off", house.Place(PlaceKind.Garage));
        var end = Judged.LooseEnds.Single(end => end.Id.ToString() == "panelboard.breaker-off/feeds");
        Assert.Null(end.Tied);
        house.Tie("panelboard.breaker-off/feeds", Tie.Referral, reason: "Left as found.");
        Assert.Equal(Tie.Referral, Judged.LooseEnds.Single(end => end.Id.ToString() == "panelboard.breaker-off/feeds").Tied?.How);
    }

    // common practice: the neutral bar of the service panel is bonded to its enclosure; screw or strap not seen is for an electrician.
    [Fact]
    public void A_missing_bond_goes_to_an_electrician()
    {
        house.Seen("panelboard.bonding-missing", house.Place(PlaceKind.Garage));
        Assert.Equal((Weight.MakeSafe, "licensed electrician"), (Finding("panelboard.bonding-missing").Weight, Finding("panelboard.bonding-missing").Trade));
    }

    // common practice: what was not seen may be in the meter cabinet outdoors; it is looked for, and weighs less than what is missing.
    [Fact]
    public void A_bond_not_seen_weighs_less_than_one_that_is_missing()
    {
        house.Seen("panelboard.bonding-not-seen", house.Place(PlaceKind.Garage));
        Assert.Equal((Weight.PutRight, "licensed electrician"), (Finding("panelboard.bonding-not-seen").Weight, Finding("panelboard.bonding-not-seen").Trade));
    }

    // common practice: the house is examined with its circuits on; with the power off the limitation is offered.
    [Fact]
    public void Power_off_offers_a_limitation()
    {
        var utilities = house.Component("utilities");
        house.Fact(utilities, "electricity", FactValue.Of("off"), basis: Basis.Seen);
        Assert.Contains("power-off", Judged.Offers.Select(offer => offer.Rule));
        house.Limit("Nothing electrical was tested", "Power off.", "Have it tested with the power on.", rule: "power-off");
        Assert.DoesNotContain("power-off", Judged.Offers.Select(offer => offer.Rule));
    }

    // common practice: an attic coil's second drain ends where it is seen; a wrong fall is put right, and the damage below is named.
    [Fact]
    public void A_second_drain_that_falls_the_wrong_way_is_a_defect()
    {
        house.Seen("condensate-drain.slope-wrong", house.Place(PlaceKind.Attic));
        Assert.True(Finding("condensate-drain.slope-wrong").Weight is Weight.PutRight or Weight.KeepUp);
    }

    // common practice: outdoor unit and indoor coil agree in capacity and refrigerant; 3 tons with 3 within, 3 with 4 or two refrigerants outside.
    [Theory]
    [InlineData(3, "R-410A", false)]
    [InlineData(4, "R-410A", true)]
    [InlineData(3, "R-22", true)]
    public void Outdoor_unit_and_coil_must_match(double tons, string refrigerant, bool mismatch)
    {
        var unit = house.Component("outdoor unit", house.Place(PlaceKind.Side));
        house.Fact(unit, "capacity", FactValue.Of(3), "tons");
        house.Fact(unit, "refrigerant", FactValue.Of("R-410A"));
        var coil = house.Component("indoor coil", house.Place(PlaceKind.Mechanical));
        house.Fact(coil, "capacity", FactValue.Of(tons), "tons");
        house.Fact(coil, "refrigerant", FactValue.Of(refrigerant));
        Assert.Equal(mismatch, Judged.Findings.Any(finding => finding.Condition == "cooling.mismatch" || finding.Grouped.Contains("cooling.mismatch")));
    }

    // A wet bulb is never above its dry bulb: readings that cannot be are asked for again, and no verdict is built on them.
    [Fact]
    public void Readings_that_cannot_be_are_said_to_be_so()
    {
        var closet = house.Place(PlaceKind.Mechanical);
        var dry = house.Read("return dry bulb", 70, "°F", closet, set: "run");
        house.Read("return wet bulb", 75, "°F", closet, set: "run");
        house.Read("supply dry bulb", 55, "°F", closet, set: "run");
        var refused = Assert.Single(Judged.Refused);
        Assert.Equal("temperature-split", refused.Reckoning);
        Assert.Contains(dry, refused.Evidence);
        Assert.Contains("return_wet_bulb", refused.Reasons[0]);
        Assert.Empty(Judged.Findings);
    }

    // common practice: cooling is not run in cold weather; below the standard's temperature nothing is said, and age and refrigerant are still told.
    [Fact]
    public void Cold_weather_offers_the_limitation_and_still_tells_the_age()
    {
        var place = house.Place(PlaceKind.Side);
        var unit = house.Component("outdoor unit", place);
        house.Fact(unit, "year", FactValue.Of(2004));
        house.Fact(unit, "refrigerant", FactValue.Of("R-22"));
        house.Read("outdoor dry bulb", 45, "°F", place);
        Assert.Contains("cooling-too-cold", Judged.Offers.Select(offer => offer.Rule));
        Assert.NotNull(Finding("outdoor-unit.past-service-life"));
        Assert.NotNull(Finding("outdoor-unit.refrigerant-old"));
    }

    // common practice: corrosion at one fitting is followed to the others; two places or more are several, all looked at are throughout; one matter.
    [Fact]
    public void Corrosion_is_followed_to_the_other_fittings()
    {
        var (kitchen, bath, laundry) = (house.Place(PlaceKind.Kitchen), house.Place(PlaceKind.Bathroom), house.Place(PlaceKind.Laundry));
        house.Seen("supply-piping.corroded-joint", kitchen);
        house.Seen("supply-piping.corroded-joint", bath);
        var clear = house.Clear("supply-piping.corroded-joint", laundry);
        Assert.Equal(Spread.SeveralPlaces, Finding("supply-piping.corroded-joint").Spread);
        house.Withdraw(clear);
        house.Seen("supply-piping.corroded-joint", laundry);
        Assert.Equal((Spread.Throughout, "licensed plumber"), (Finding("supply-piping.corroded-joint").Spread, Finding("supply-piping.corroded-joint").Trade));
        Assert.Single(Judged.Findings);
    }

    // common practice: lint heaped beside a fuel-burning heater is a fire matter, and one looks where the dryer duct ends.
    [Fact]
    public void Lint_at_a_heater_is_made_safe_and_the_dryer_duct_looked_at()
    {
        var (garage, laundry) = (house.Place(PlaceKind.Garage), house.Place(PlaceKind.Laundry));
        house.Seen("water-heater.lint-near", garage);
        Assert.Equal(Weight.MakeSafe, Finding("water-heater.lint-near").Weight);
        Assert.Null(Judged.LooseEnds.Single(end => end.Id.ToString() == "water-heater.lint-near/dryer").Tied);
        house.Clear("dryer-duct.disconnected", laundry);
        Assert.Equal(Tie.Evidence, Judged.LooseEnds.Single(end => end.Id.ToString() == "water-heater.lint-near/dryer").Tied?.How);
    }

    // common practice: poor slope with no movement is put right; with movement the weight rises.
    [Fact]
    public void Slope_weighs_more_where_the_wall_has_moved()
    {
        var rear = house.Place(PlaceKind.Side);
        house.Seen("grading.falls-to-house", rear);
        Assert.Equal(Weight.PutRight, Finding("grading.falls-to-house").Weight);
        house.Seen("crack.structural", rear);
        Assert.Equal(Weight.ActNow, Finding("grading.falls-to-house").Weight);
    }

    // common practice: pressed-wood siding lasts while painted and sealed: know about; bare or swollen edges: put right.
    [Theory]
    [InlineData("siding.hardboard-sealed", Weight.KnowAbout)]
    [InlineData("siding.hardboard-swollen", Weight.PutRight)]
    // common practice: a crack in a drive says nothing of the house's structure.
    [InlineData("driveway.shrinkage-crack", Weight.KnowAbout)]
    // common practice: soil or plants on the wall invite insects: upkeep.
    [InlineData("grading.soil-touches-siding", Weight.KeepUp)]
    [InlineData("vegetation.against-house", Weight.KeepUp)]
    // common practice: the end of a buried drain cannot be seen in dry weather: know about, and watch it in rain.
    [InlineData("surface-drain.end-unknown", Weight.KnowAbout)]
    public void Small_matters_are_told_as_such(string condition, Weight weight)
    {
        house.Seen(condition, house.Place(PlaceKind.Side));
        Assert.Equal(weight, Finding(condition).Weight);
    }

    // common practice: a cold patch in an infrared picture is a question until a moisture meter answers it.
    [Fact]
    public void A_cold_spot_waits_for_the_meter()
    {
        var room = house.Place(PlaceKind.Room);
        house.Seen("moisture.cold-spot", room);
        var open = Judged.LooseEnds.Where(end => end.OpenedBy.Count > 0 && end.Tied is null).ToList();
        Assert.Contains(open, end => end.Readings.Count > 0 || end.Answers.Contains("moisture.wet-material"));
    }
}
