using System.Globalization;
using System.Xml.Linq;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Section;

namespace Purlin.Tests.Report;

public static class SectionTests
{
    private static readonly string[] foundations = ["slab", "crawl space", "basement", "piers"];
    private static readonly string[] roofs = ["gable", "hip", "flat", "shed", "gambrel"];

    [Fact]
    public static void Every_place_of_every_form_of_house_is_a_target_a_thumb_can_hit()
    {
        foreach (var foundation in foundations)
            foreach (var roof in roofs)
                foreach (var garage in (string[])["none", "attached", "detached", "carport"])
                    for (var storeys = 1; storeys <= 4; storeys++)
                    {
                        var house = SampleHouse.House(SampleHouse.Property with { Foundation = foundation, RoofForm = roof, Garage = garage, Storeys = storeys, Bedrooms = 2 + storeys, Bathrooms = storeys });
                        var sheet = SectionDrawing.Draw(house, null, SectionOptions.Portrait);
                        Assert.Equal(360, sheet.Width);
                        Assert.Equal(house.Places.Select(place => place.Id.ToString()).Order(), sheet.Targets.Select(target => target.Id).Order());
                        // 44 by 44: WCAG 2.2, success criterion 2.5.5.
                        Assert.All(sheet.Targets, target => Assert.True(target.Box.Width >= 44 && target.Box.Height >= 44, $"{foundation}, {roof}, {storeys}: {target.Label} is {target.Box.Width:0} by {target.Box.Height:0}"));
                        Assert.All(sheet.Targets, target => Assert.InRange(target.Box.Right, 44, 360));
                    }
    }

    [Fact]
    public static void Targets_do_not_lie_on_one_another()
    {
        var targets = SectionDrawing.Draw(SampleHouse.House(SampleHouse.Property), null, SectionOptions.Portrait).Targets;
        for (var one = 0; one < targets.Length; one++)
            for (var other = one + 1; other < targets.Length; other++)
                Assert.False(Overlap(targets[one].Box, targets[other].Box), $"{targets[one].Label} lies on {targets[other].Label}");
    }

    [Fact]
    public static void The_house_fills_with_ink_as_the_walk_goes_on()
    {
        double Inked(int looked) => SectionDrawing.Draw(SampleHouse.House(SampleHouse.Property, looked), null, SectionOptions.Portrait).Marks.OfType<Mark.Stroke>().Count(stroke => stroke.Ink is Ink.Line);
        Assert.Equal(0, Inked(0));
        Assert.True(Inked(5) > 0);
        Assert.True(Inked(12) > Inked(5));
        Assert.True(Inked(99) > Inked(12));
    }

    [Fact]
    public static void A_finding_is_pinned_in_each_of_its_places_and_said_in_words()
    {
        var house = SampleHouse.House(SampleHouse.Property, 99);
        var kitchen = SampleHouse.Place(house, "Kitchen");
        var judged = SampleHouse.Judged([SampleHouse.Finding("Joints corroded", Weight.ActNow, kitchen, SampleHouse.Place(house, "Attic")), SampleHouse.Finding("Left out", Weight.KeepUp, kitchen) with { LeftOut = true }]);
        var sheet = SectionDrawing.Draw(house, judged, SectionOptions.Portrait);
        Assert.Equal([1, 1], sheet.Marks.OfType<Mark.Balloon>().Select(balloon => balloon.Number));
        Assert.Contains("finding 1: act now, Joints corroded", sheet.Targets.Single(target => target.Id == kitchen.ToString()).Label);
        var wide = SectionDrawing.Draw(house, judged, SectionOptions.Landscape);
        Assert.Single(wide.Marks.OfType<Mark.Balloon>());
    }

    [Fact]
    public static void Only_what_can_hurt_someone_bears_the_accent()
    {
        for (var bars = 1; bars <= 5; bars++)
        {
            var balloon = Callout.Balloon(7, bars, new Spot(20, 20), "words");
            Assert.Equal(bars == 5, balloon.Marks.OfType<Mark.Area>().Any(area => area.Ink == Ink.Accent));
            var drawn = balloon.Marks.OfType<Mark.Area>().Last().Trace.Steps.Count(step => step.Kind == TraceKind.Move);
            Assert.Equal(bars, drawn);
        }
    }

    [Fact]
    public static void An_open_loose_end_is_said_where_it_is_still_to_be_looked_at()
    {
        var house = SampleHouse.House(SampleHouse.Property);
        var laundry = SampleHouse.Place(house, "Laundry");
        var sheet = SectionDrawing.Draw(house, SampleHouse.Judged([], [SampleHouse.End("Other joints?", laundry)]), SectionOptions.Portrait);
        Assert.Contains("1 loose end open", sheet.Targets.Single(target => target.Id == laundry.ToString()).Label);
        Assert.Single(sheet.Targets, target => target.Label.Contains("loose end", StringComparison.Ordinal));
    }

    [Fact]
    public static void The_svg_is_well_formed_and_a_hostile_name_stays_text()
    {
        var house = SampleHouse.House(SampleHouse.Property);
        house = house with { Places = [.. house.Places.Select(place => place with { Name = "\"><script>alert(1)</script>\u0001\uD800" })] };
        foreach (var theme in (Theme[])[Theme.Day, Theme.Dark, Theme.Sun])
        {
            var svg = XDocument.Parse(SvgWriter.Write(SectionDrawing.Draw(house, null, SectionOptions.Portrait), theme));
            Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName == "script");
            var buttons = svg.Descendants().Where(element => element.Attribute("data-place") is not null).ToArray();
            Assert.Equal(house.Places.Count, buttons.Length);
            Assert.All(buttons, button => Assert.Equal("button", button.Attribute("role")!.Value));
            Assert.All(buttons, button => Assert.StartsWith("\"><script>", button.Attribute("aria-label")!.Value, StringComparison.Ordinal));
        }
    }

    [Fact]
    public static void The_same_house_is_the_same_drawing()
    {
        string Drawn() => SvgWriter.Write(SectionDrawing.Draw(SampleHouse.House(SampleHouse.Property, 9), null, SectionOptions.Landscape), Theme.Day);
        Assert.Equal(Drawn(), Drawn());
    }

    [Fact]
    public static void Letters_of_every_theme_stand_seven_to_one_against_their_ground_and_lines_four_and_a_half()
    {
        // WCAG 2.2, success criterion 1.4.6 for letters; 4.5 for lines is our own bar, above the 3:1 of 1.4.11. A faint line is held to 3:1.
        foreach (var theme in (Theme[])[Theme.Day, Theme.Dark, Theme.Sun, Theme.Print])
        {
            Assert.All((string[])[theme.Text, theme.Quiet, theme.Line], colour => Assert.True(Contrast(colour, theme.Paper) >= 7, $"{theme.Name} {colour}: {Contrast(colour, theme.Paper):0.0}"));
            Assert.All((string[])[theme.Accent, theme.Hatch], colour => Assert.True(Contrast(colour, theme.Paper) >= 4.5, $"{theme.Name} {colour}: {Contrast(colour, theme.Paper):0.0}"));
            Assert.True(Contrast(theme.Faint, theme.Paper) >= 3, $"{theme.Name} faint: {Contrast(theme.Faint, theme.Paper):0.0}");
        }
    }

    private static bool Overlap(Box one, Box other) => one.X < other.Right - 0.01 && other.X < one.Right - 0.01 && one.Y < other.Bottom - 0.01 && other.Y < one.Bottom - 0.01;

    // WCAG 2.2, definitions of relative luminance and contrast ratio.
    private static double Contrast(string one, string other)
    {
        double a = Luminance(one), b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Part(int at)
        {
            var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Part(1) + 0.7152 * Part(3) + 0.0722 * Part(5);
    }
}
