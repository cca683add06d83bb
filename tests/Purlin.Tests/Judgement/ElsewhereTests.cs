using System.Text;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>
/// Evidence of one place, thing or part of the house is none of another; what was not looked at is said. Common practice of the trade.
/// </summary>
public sealed class ElsewhereTests
{
    private readonly List<string> lines = [];

    private JudgedInspection Judged
    {
        get
        {
            var entries = lines.Select(line => EntryLine.Read(Encoding.UTF8.GetBytes(line)).OrThrow());
            return Judging.Judge(Folding.Fold(entries), RuleBook.BuiltIn, 2026);
        }
    }

    [Fact]
    public void Two_of_four_sides_are_no_four()
    {
        Begin("""{"address":"1 Invented Lane"}""");
        var sides = new[] { "Front", "Left", "Rear", "Right" }.Select(side => Add("place.added", $$"""{"kind":"exterior side","name":"{{side}}"}""")).ToList();
        Look(sides[0], "siding.rot", "clear");
        Look(sides[1], "siding.rot", "clear");
        Assert.Contains(Open("Wall covering condition"), words => words.Contains("2 of 4 sides. Not yet: Rear, Right",
            StringComparison.Ordinal));
        Add("observation.made", $$"""{"place":"{{sides[2]}}","condition":"siding.rot","outcome":"not visible","reason":"thick ivy"}""");
        Look(sides[3], "siding.rot", "clear");
        Assert.Empty(Open("Wall covering condition"));
    }

    [Fact]
    public void The_second_water_heater_is_not_looked_at_by_a_look_at_the_first()
    {
        Begin("""{"address":"1 Invented Lane"}""");
        var (garage, closet) = (Add("place.added", """{"kind":"garage","name":"Garage"}"""), Add("place.added",
            """{"kind":"mechanical","name":"Closet"}"""));
        var first = Add("component.added", $$"""{"kind":"water heater","place":"{{garage}}"}""");
        Add("component.added", $$"""{"kind":"water heater","place":"{{closet}}"}""");
        Look(garage, "water-heater.tank-leaks", "clear", first);
        Assert.Contains(Open("Water heater condition"), words => words.Contains("1 of 2 of them. Not yet: water heater, Closet",
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_place_that_nobody_entered_bars_issue_until_it_is_said_why()
    {
        Begin("""{"address":"1 Invented Lane"}""");
        var bath = Add("place.added", """{"kind":"bathroom","name":"Bath 2"}""");
        Assert.Contains(Judged.Obstacles.OfType<Obstacle.PlaceUnvisited>(), place => place.Place == EntryName.Parse(bath));
        Add("limitation.recorded", $$"""{"what":"Bath 2 was not entered","cause":"locked","next":"Have it opened.","place":"{{bath}}"}""");
        Assert.Empty(Judged.Obstacles.OfType<Obstacle.PlaceUnvisited>());
    }

    [Theory]
    [InlineData("result", "", true)]
    [InlineData("result", " . ", true)]
    [InlineData("result", "Sound.", false)]
    [InlineData("not inspected", "", true)]
    public void A_blank_sentence_closes_nothing(string how, string text, bool open)
    {
        Begin("""{"address":"1 Invented Lane"}""");
        Add("duty.met", $$"""{"duty":"core:E-05","how":"{{how}}","text":"{{text}}"}""");
        Assert.Equal(open, Open("Trim").Count > 0);
    }

    [Fact]
    public void Nobody_looks_for_warped_vinyl_on_a_brick_wall()
    {
        Begin("""{"address":"1 Invented Lane"}""");
        var side = Add("place.added", """{"kind":"exterior side","name":"Front"}""");
        var siding = Add("component.added", $$"""{"kind":"siding","place":"{{side}}"}""");
        Look(side, "siding.vinyl-buckled", "clear", siding);
        Assert.Empty(Open("Wall covering condition"));
        Add("fact.stated", $$"""{"component":"{{siding}}","fact":"material","value":"brick veneer","basis":"seen"}""");
        Assert.NotEmpty(Open("Wall covering condition"));
    }

    [Fact]
    public void The_addition_answers_for_itself_alone()
    {
        Begin("""{"address":"1 Invented Lane","yearBuilt":1962}""");
        var wing = Add("part.added", """{"kind":"addition","name":"Sun room"}""");
        Add("fact.stated", $$"""{"component":"{{wing}}","fact":"year","value":1998,"basis":"told"}""");
        var old = Add("place.added", """{"kind":"room","name":"Living room"}""");
        var added = Add("place.added", $$"""{"kind":"room","name":"Sun room","part":"{{wing}}"}""");
        var crawl = Add("place.added", """{"kind":"crawl space","name":"Crawl space"}""");
        Look(crawl, "crack.structural", "seen");
        Look(added, "wall.diagonal-crack", "clear");
        var inside = Judged.LooseEnds.Single(end => end.Id.ToString() == "crack.structural/inside");
        Assert.Null(inside.Tied);
        Assert.Equal([EntryName.Parse(old)], inside.LookIn);
        Look(old, "wall.diagonal-crack", "clear");
        Assert.NotNull(Judged.LooseEnds.Single(end => end.Id.ToString() == "crack.structural/inside").Tied);
        // Glass of 1998 broke the rule of its day; that of 1962 was not asked for.
        Look(added, "receptacle.no-gfci", "seen");
        Assert.Equal((1998, YearOf.Structure), Judged.Findings.Single(finding =>
            finding.Condition == "receptacle.no-gfci").ThenAndNow!.Year is { } year ? (year.Year, year.Of) : default);
    }

    [Fact]
    public void A_flat_floor_says_nothing_of_cracks()
    {
        Begin("""{"address":"1 Invented Lane","foundation":"slab"}""");
        var (room, crawl) = (Add("place.added", """{"kind":"room","name":"Living room"}"""), Add("place.added",
            """{"kind":"garage","name":"Garage"}"""));
        Look(crawl, "crack.structural", "seen");
        foreach (var (x, y) in new[] { (0, 0), (10, 0), (0, 10), (10, 10), (5, 5) })
            Add("reading.taken", $$$"""{"kind":"floor level","amount":{"value":0,"unit":"in"},"place":"{{{room}}}","set":"s","point":{"x":{{{x}}},"y":{{{y}}},"unit":"ft"}}""");
        Assert.Null(Judged.LooseEnds.Single(end => end.Id.ToString() == "crack.structural/inside").Tied);
    }

    [Fact]
    public void What_only_a_run_would_show_is_not_asked_once_there_was_none()
    {
        Begin("""{"address":"1 Invented Lane"}""");
        var side = Add("place.added", """{"kind":"exterior side","name":"Rear"}""");
        Add("place.added", """{"kind":"attic","name":"Attic"}""");
        var closet = Add("place.added", """{"kind":"mechanical","name":"Closet"}""");
        Add("component.added", $$"""{"kind":"indoor coil","place":"{{closet}}"}""");
        Look(side, "refrigerant-lines.oil-stain", "seen");
        var measure = Judged.LooseEnds.Single(end => end.Id.ToString() == "refrigerant-lines.oil-stain/split");
        Assert.Null(measure.Tied);
        Assert.Equal([EntryName.Parse(closet)], measure.LookIn);
        Add("limitation.recorded", """{"what":"Cooling was not run","cause":"38 °F outdoors","next":"Have it run in warm weather.","rule":"cooling-too-cold"}""");
        Assert.Equal("limitation", Judged.LooseEnds.Single(end => end.Id == measure.Id).Tied?.How);
    }

    /// <summary>What the standard says of a thing that is still open.</summary>
    private List<string> Open(string thing) => [.. Judged.Coverage.Single().Duties
        .Where(duty => duty.State == DutyStanding.Open && duty.Words.Contains(thing, StringComparison.Ordinal)).Select(duty => duty.Words)];

    private void Begin(string property) => Add("inspection.opened", $$"""{"property":{{property}},"date":"2026-05-04","standards":["washington"]}""");

    private void Look(string place, string condition, string outcome, string? component = null) => Add("observation.made",
        $$"""{"place":"{{place}}","condition":"{{condition}}","outcome":"{{outcome}}"{{(component is null ? "" : $",\"component\":\"{component}\"")}}}""");

    private string Add(string type, string body)
    {
        var seq = lines.Count + 1;
        lines.Add($$"""{"v":1,"insp":"house","dev":"a","seq":{{seq}},"hlc":"0190aaaa{{seq:x4}}-0000","type":"{{type}}","body":{{body}}}""");
        return $"a.{seq}";
    }
}
