using System.Text.Json.Nodes;
using Purlin.Reckoning;
using Purlin.Report.Drawing;
using Purlin.Report.Plans;

namespace Purlin.Tests.Report;

public static class PlanTests
{
    private static readonly JsonObject survey = new()
    {
        ["points"] = new JsonArray([.. Enumerable.Range(0, 12).Select(index => (JsonNode)new JsonObject { ["x"] = index % 4 * 6, ["y"] = index / 4 * 8, ["reading"] = -0.1 * (index % 4) })]),
    };

    [Fact]
    public static void A_survey_is_drawn_with_every_reading_its_contours_and_its_dimensions()
    {
        var working = Reckonings.Reckon("floor-survey", survey).OrThrow();
        foreach (var width in (double[])[560, 340])
        {
            var sheet = FloorPlan.Draw(working.Result, width)!;
            var letters = sheet.Marks.OfType<Mark.Lettering>().Select(lettering => lettering.Text).ToArray();
            Assert.Equal(3, letters.Count(text => text == "-0.2") - sheet.Marks.OfType<Mark.Lettering>().Count(lettering => lettering.Text == "-0.2" && lettering.Cut == Purlin.Report.Fonts.Cut.Italic));
            Assert.Contains("18 ft", letters);
            Assert.Contains("16 ft", letters);
            Assert.Contains("highest", letters);
            Assert.Contains(sheet.Marks.OfType<Mark.Stroke>(), stroke => stroke.Line is LineClass.Fine or LineClass.Beyond && stroke.Trace.Steps.Length > 20 || stroke.Line == LineClass.Shift);
            Assert.All(sheet.Marks.OfType<Mark.Stroke>().SelectMany(stroke => stroke.Trace.Steps), step => Assert.True(step.To.X >= 0 && step.To.X <= sheet.Width && step.To.Y >= 0 && step.To.Y <= sheet.Height));
        }
    }

    [Fact]
    public static void Ages_are_drawn_oldest_first_and_say_what_is_usual()
    {
        // The lives here are made up for the drawing: only their places on the sheet are tested.
        JsonObject Life(double age, double? low, double? typical, double? high) => new() { ["age"] = Years(age), ["low"] = Years(low), ["typical"] = Years(typical), ["high"] = Years(high) };
        var sheet = Ages.Draw([new AgeLine("Newer", Life(3, 10, 15, 20)), new AgeLine("Older", Life(27, 11, 17, 23)), new AgeLine("Bare", Life(9, null, null, null)), new AgeLine("None", [])], 2026, 560)!;
        var letters = sheet.Marks.OfType<Mark.Lettering>().Select(lettering => lettering.Text).ToList();
        Assert.True(letters.IndexOf("Older: 27 years old, usual end 11 to 23") < letters.IndexOf("Newer: 3 years old, usual end 10 to 20"));
        Assert.Contains("Bare: 9 years old, usual end not known", letters);
        Assert.DoesNotContain(letters, text => text.StartsWith("None", StringComparison.Ordinal));
        Assert.Contains("2026", letters);
    }

    [Fact]
    public static void Nothing_to_draw_is_no_drawing()
    {
        Assert.Null(FloorPlan.Draw([], 560));
        Assert.Null(Ages.Draw([], 2026, 560));
    }

    private static JsonObject? Years(double? value) => value is { } years ? new JsonObject { ["value"] = years, ["unit"] = "years" } : null;
}
