using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

public sealed class CauseTests
{
    private const string Causes = """
        { "causes": [ { "id": "pipes", "title": "The pipes are giving out", "conditions": ["pipe.crust", "pipe.stain", "pipe.pressure-high"], "means": "These belong together.", "trade": "licensed plumber", "sources": ["common practice"] } ],
          "escalations": [ { "id": "stain-and-heat", "condition": "pipe.stain", "with": ["water-heater.no-pipe"], "within": "place", "because": "Hot water was here.", "sources": ["common practice"] } ] }
        """;

    private static readonly RuleBook Book = SmallBook.Read(("rulebook/causes/pipes.json", Causes));
    private readonly SmallHouse house = new();
    private readonly EntryName garage;
    private readonly EntryName kitchen;

    public CauseTests() => (garage, kitchen) = (house.Place(PlaceKind.Garage), house.Place(PlaceKind.Kitchen));

    private JudgedInspection Judged => Judging.Judge(house.Build(), Book, 2026);

    [Fact]
    public void Three_signs_of_one_cause_are_one_matter_as_heavy_as_the_heaviest()
    {
        house.Seen("pipe.stain", garage, spot: "floor");
        house.Seen("pipe.crust", kitchen);
        house.Read("static water pressure", 95, "psi", garage);
        var finding = Assert.Single(Judged.Findings);
        Assert.Equal(("pipe.crust", "The pipes are giving out", Weight.ActNow, "licensed plumber"), (finding.Id.ToString(), finding.Title, finding.Weight, finding.Trade));
        Assert.Equal(["pipe.stain", "pipe.pressure-high"], finding.Grouped);
        Assert.Equal("Garage (floor), Kitchen", finding.Where);
        Assert.Equal(3, finding.Evidence.Count);
        Assert.StartsWith("These belong together.", finding.Matters);
    }

    [Fact]
    public void One_sign_alone_is_told_by_itself()
    {
        house.Seen("pipe.crust", kitchen);
        Assert.Empty(Assert.Single(Judged.Findings).Grouped);
    }

    [Fact]
    public void Each_sign_still_asks_its_own_questions()
    {
        house.Seen("pipe.stain", garage);
        house.Seen("pipe.crust", kitchen);
        Assert.Equal(["pipe.crust/others", "pipe.crust/pressure", "pipe.stain/each"], Judged.LooseEnds.Select(end => end.Id.ToString()).Order());
    }

    [Fact]
    public void Leaving_the_leading_one_out_does_not_hide_the_others()
    {
        house.Seen("pipe.stain", garage);
        house.Seen("pipe.crust", kitchen);
        house.Overrule("pipe.crust", "left out", "", "Mended.");
        Assert.Equal([("pipe.crust", true), ("pipe.stain", false)], Judged.Findings.Select(finding => (finding.Id.ToString(), finding.LeftOut)).Order());
    }

    [Fact]
    public void A_lighter_weight_holds_for_the_group_it_was_given_to()
    {
        house.Seen("pipe.crust", kitchen);
        house.Read("static water pressure", 95, "psi", garage);
        house.Overrule("pipe.crust", "weight", "keep up", "The plumber comes tomorrow.");
        Assert.Equal(Weight.KeepUp, Assert.Single(Judged.Findings).Weight);
    }

    [Fact]
    public void What_is_found_later_is_not_hidden_by_an_earlier_lighter_weight()
    {
        house.Seen("pipe.crust", kitchen);
        house.Overrule("pipe.crust", "weight", "keep up", "Dry today.");
        house.Later(TimeSpan.FromHours(1));
        house.Read("static water pressure", 95, "psi", garage);
        Assert.Equal(Weight.ActNow, Assert.Single(Judged.Findings).Weight);
    }

    [Fact]
    public void A_matter_weighs_more_beside_another_in_the_same_place()
    {
        house.Seen("pipe.stain", garage);
        house.Seen("water-heater.no-pipe", kitchen);
        Assert.Equal(Weight.KeepUp, Judged.Findings.Single(finding => finding.Id.ToString() == "pipe.stain").Weight);
        house.Seen("water-heater.no-pipe", garage);
        var finding = Judged.Findings.Single(finding => finding.Id.ToString() == "pipe.stain");
        Assert.Equal((Weight.PutRight, "Hot water was here."), (finding.Weight, finding.Why[^1].Words));
    }

    [Fact]
    public void A_condition_of_two_causes_is_refused()
    {
        var book = SmallBook.Read(("rulebook/causes/pipes.json", Causes), ("rulebook/causes/other.json", """{ "causes": [ { "id": "other", "title": "t", "conditions": ["pipe.stain"], "means": "m", "sources": ["common practice"] } ] }"""));
        Assert.Contains("one cause only", Assert.Single(book.Refused).ToString());
    }

    // Pressure and a stain do not make corroding pipes: the sign that names the cause must be among them (common practice).
    [Fact]
    public void A_cause_is_not_named_without_the_sign_that_names_it()
    {
        house.Seen("pipe.stain", garage);
        house.Read("static water pressure", 95, "psi", garage);
        Assert.Equal(2, Naming(Needed).Findings.Count);
        house.Seen("pipe.crust", kitchen);
        Assert.Equal(["pipe.stain", "pipe.pressure-high"], Assert.Single(Naming(Needed).Findings).Grouped);
    }

    [Fact]
    public void What_belongs_only_where_the_others_are_stays_apart_elsewhere()
    {
        house.Seen("pipe.crust", kitchen);
        house.Seen("pipe.stain", garage);
        Assert.Equal(2, Naming(Near).Findings.Count);
        house.Seen("pipe.stain", kitchen);
        Assert.Equal(["pipe.stain"], Assert.Single(Naming(Near).Findings).Grouped);
    }

    [Fact]
    public void A_cause_that_names_a_sign_not_its_own_is_refused()
    {
        var book = SmallBook.Read(("rulebook/causes/pipes.json", Causes.Replace("\"means\"", "\"needs\": [\"water-heater.no-pipe\"], \"means\"", StringComparison.Ordinal)));
        Assert.Contains("condition of this cause", Assert.Single(book.Refused).ToString());
    }

    private const string Needed = "\"needs\": [\"pipe.crust\"]";
    private const string Near = "\"samePlace\": [\"pipe.stain\"]";

    private JudgedInspection Naming(string member) => Judging.Judge(house.Build(), SmallBook.Read(("rulebook/causes/pipes.json", Causes.Replace("\"means\"", member + ", \"means\"", StringComparison.Ordinal))), 2026);
}
