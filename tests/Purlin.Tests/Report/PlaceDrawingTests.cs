using Purlin.Book;
using Purlin.Journal;
using Purlin.Report.Drawing;
using Purlin.Report.Places;

namespace Purlin.Tests.Report;

public sealed class PlaceDrawingTests
{
    public static TheoryData<string> Kinds => [.. PlaceKind.All];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Everything_usual_in_a_place_that_is_drawn_can_be_touched(string kind)
    {
        var things = Usual(kind);
        Assert.True(things.Count >= 3, $"{kind}: only {things.Count} usual things are drawn");
        var sheet = PlaceDrawing.Draw(new PlaceFrameFacts(kind, kind), things, []);
        Assert.Equal(things.Select(thing => thing.Id).Order(StringComparer.Ordinal), sheet.Targets.Select(target => target.Id).Order(StringComparer.Ordinal));
        Assert.All(sheet.Targets, target =>
        {
            Assert.True(target.Box.Width >= 44 && target.Box.Height >= 44, $"{kind}: {target.Label} is {target.Box.Width} x {target.Box.Height}");
            Assert.InRange(target.Box.X, 0, sheet.Width - target.Box.Width);
            Assert.InRange(target.Box.Y, 0, sheet.Height - target.Box.Height);
        });
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_small_thing_is_touched_before_a_large_one_behind_it(string kind)
    {
        var targets = PlaceDrawing.Draw(new PlaceFrameFacts(kind, kind), Usual(kind), []).Targets;
        var surfaces = targets.Select((target, at) => (target, at)).Where(one => one.target.Box.Width * one.target.Box.Height > 30_000).Select(one => one.at).ToList();
        Assert.All(surfaces, at => Assert.True(at >= targets.Length - surfaces.Count - 4, $"{targets[at].Label} lies over others"));
    }

    [Fact]
    public void State_is_line_and_tone_and_never_color_alone()
    {
        Mark[] usual = Marks(ThingState.Usual), here = Marks(ThingState.Here), sound = Marks(ThingState.Sound), unseen = Marks(ThingState.NotSeen);
        Assert.Contains(usual, mark => mark is Mark.Stroke { Line: LineClass.Hidden });
        Assert.DoesNotContain(here, mark => mark is Mark.Stroke { Line: LineClass.Hidden });
        Assert.True(sound.Count(mark => mark is Mark.Area { Ink: Ink.Wash }) > here.Count(mark => mark is Mark.Area { Ink: Ink.Wash }));
        Assert.Contains(unseen, mark => mark is Mark.Stroke { Line: LineClass.Hidden, Ink: Ink.Line });
    }

    [Fact]
    public void Balloons_stay_apart_and_on_the_sheet()
    {
        var things = Usual(PlaceKind.Kitchen);
        var pins = things.Select((thing, at) => new PlacePin(at + 1, (at % 5) + 1, thing.Id, "words")).Take(14).ToList();
        var balloons = PlaceDrawing.Draw(new PlaceFrameFacts(PlaceKind.Kitchen, "Kitchen"), things, pins).Marks.OfType<Mark.Balloon>().ToList();
        Assert.Equal(pins.Count, balloons.Count);
        Assert.All(balloons, balloon => Assert.InRange(balloon.At.Y, 15, 476 - 15));
        foreach (var side in balloons.GroupBy(balloon => balloon.At.X))
        {
            var heights = side.Select(balloon => balloon.At.Y).Order().ToList();
            Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 31, "two balloons touch"));
        }
    }

    [Fact]
    public void Material_becomes_the_hatch_of_the_wall()
    {
        Assert.True(Lines("brick veneer") > Lines(null) + 1);
        Assert.True(Lines("something nobody knows") == Lines(null));

        static int Lines(string? material) => PlaceDrawing.Draw(new PlaceFrameFacts(PlaceKind.Side, "Front"), [new PlaceThing("s", "siding", "siding", ThingState.Here) { Material = material }], [])
            .Marks.OfType<Mark.Stroke>().Sum(stroke => stroke.Trace.Steps.Length);
    }

    [Fact]
    public void The_same_place_is_the_same_drawing() => Assert.Equal(Written(), Written());

    [Fact]
    public void Hostile_names_are_text_in_the_drawing()
    {
        var sheet = PlaceDrawing.Draw(new PlaceFrameFacts(PlaceKind.Attic, "<script>"), [new PlaceThing("a\"><b", "furnace", "</text><script>alert(1)</script>", ThingState.Here) { InHand = true }], []);
        Assert.DoesNotContain("<script", SvgWriter.Write(sheet, Theme.Day), StringComparison.Ordinal);
    }

    private static string Written() => SvgWriter.Write(PlaceDrawing.Draw(new PlaceFrameFacts(PlaceKind.Basement, "Basement"), Usual(PlaceKind.Basement), []), Theme.Day);

    private static Mark[] Marks(ThingState state) =>
        [.. PlaceDrawing.Draw(new PlaceFrameFacts(PlaceKind.Bathroom, "Bath"), [new PlaceThing("t", "toilet", "toilet", state)], []).Marks];

    private static List<PlaceThing> Usual(string kind)
    {
        PlaceFrameFacts facts = new(kind, kind) { Stories = 2 };
        return [.. RuleBook.BuiltIn.Usual[kind].Things.Select(thing => thing.Component).Distinct(StringComparer.Ordinal)
            .Where(component => PlaceDrawing.Draws(facts, component)).Select(component => new PlaceThing(component, component, component, ThingState.Usual))];
    }
}
