using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Plans;

/// <summary>A floor survey drawn from its working: readings where they were taken, lines of equal level, the worst bend, dimension lines.</summary>
public static class FloorPlan
{
    private const double Letter = 9.5;

    /// <summary>Draws the survey; nothing when the result holds no readings.</summary>
    /// <param name="result">Result of the reckoning <c>floor-survey</c>.</param>
    /// <param name="width">Width of the sheet.</param>
    /// <param name="tongue">The language of its words; the standard one when none is named.</param>
    public static Sheet? Draw(JsonObject result, double width, Tongue? tongue = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        Point[] points = [.. (result["levels"] as JsonArray ?? []).Select(Point.Of).OfType<Point>()];
        if (points.Length < 3) return null;
        tongue ??= Tongue.BuiltIn(Tongue.Standard);
        Frame frame = new(points, width);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new Mark.Stroke(Trace.Around(frame.Floor), LineClass.Hidden, Ink.Hatch));
        Contours(marks, frame, result);
        Bend(marks, frame, result);
        foreach (var point in points) Reading(marks, frame, point);
        Extreme(marks, frame, Point.Of(result["high"]), tongue.Say("drawing.floor.highest"), up: true);
        Extreme(marks, frame, Point.Of(result["low"]), tongue.Say("drawing.floor.lowest"), up: false);
        marks.AddRange(Dimension.Level(frame.Floor.X, frame.Floor.Right, frame.Floor.Bottom + 26, $"{Say(frame.Across)} {points[0].Unit}", 10.5));
        marks.AddRange(Dimension.Upright(frame.Floor.X - 24, frame.Floor.Y, frame.Floor.Bottom, $"{Say(frame.Down)} {points[0].Unit}", 10.5));
        return new Sheet
        {
            Width = width,
            Height = frame.Floor.Bottom + 36,
            Title = tongue.Say("drawing.floor"),
            Description = tongue.Say("drawing.floor.told", ("count", points.Length), ("low", Say(points.Min(point => point.Level))), ("high", Say(points.Max(point => point.Level))), ("unit", points[0].LevelUnit)),
            Marks = marks.ToImmutable(),
        };
    }

    private static void Contours(ImmutableArray<Mark>.Builder marks, Frame frame, JsonObject result)
    {
        List<Mark> figures = [];
        foreach (var contour in (result["contours"] as JsonArray ?? []).OfType<JsonObject>())
        {
            if (contour["level"]?["value"]?.GetValue<double>() is not { } level || contour["lines"] is not JsonArray lines) continue;
            Spot[][] drawn = [.. lines.OfType<JsonArray>().Select(line => line.OfType<JsonArray>().Where(pair => pair.Count == 2).Select(pair => frame.At(pair[0]!.GetValue<double>(), pair[1]!.GetValue<double>())).ToArray()).Where(line => line.Length > 1)];
            if (drawn.Length == 0) continue;
            var whole = Math.Abs(level * 2 - Math.Round(level * 2)) < 1e-9;
            marks.Add(new Mark.Stroke(Trace.Join(drawn.Select(line => Trace.Through(line))), whole ? LineClass.Beyond : LineClass.Fine, whole ? Ink.Line : Ink.Hatch));
            var longest = drawn.MaxBy(line => line.Length)!;
            if (longest.Length > 6) figures.Add(new Mark.Lettering(Say(level), longest[longest.Length / 2], 8.5) { Ink = Ink.Quiet, Cut = Cut.Italic, Halo = true });
        }
        marks.AddRange(figures);
    }

    private static void Bend(ImmutableArray<Mark>.Builder marks, Frame frame, JsonObject result)
    {
        if (result["deflection"] is not JsonObject bend || Point.Of(bend["from"]) is not { } from || Point.Of(bend["to"]) is not { } to) return;
        Spot start = frame.At(from.X, from.Y), end = frame.At(to.X, to.Y);
        marks.Add(new Mark.Stroke(Trace.Through(start, end), LineClass.Shift, Ink.Line));
        foreach (var spot in (Spot[])[start, end]) marks.Add(new Mark.Stroke(Trace.Circle(spot.X, spot.Y, 5.5), LineClass.Beyond, Ink.Line));
    }

    private static void Reading(ImmutableArray<Mark>.Builder marks, Frame frame, Point point)
    {
        var at = frame.At(point.X, point.Y);
        marks.Add(new Mark.Stroke(Trace.Between(at.X - 2.5, at.Y, at.X + 2.5, at.Y).With(Trace.Between(at.X, at.Y - 2.5, at.X, at.Y + 2.5)), LineClass.Beyond, Ink.Line));
        marks.Add(new Mark.Lettering(Say(point.Level), new Spot(at.X, at.Y - 5), Letter) { Halo = true, Cut = Cut.Bold });
    }

    private static void Extreme(ImmutableArray<Mark>.Builder marks, Frame frame, Point? point, string word, bool up)
    {
        if (point is not { } found) return;
        var at = frame.At(found.X, found.Y);
        double tip = up ? at.Y + 4 : at.Y + 13, foot = up ? at.Y + 11 : at.Y + 6;
        marks.Add(new Mark.Area(Trace.At(at.X, tip).To(at.X - 4, foot).To(at.X + 4, foot).Shut(), Ink.Line));
        marks.Add(new Mark.Lettering(word, new Spot(at.X, at.Y + 22), 9) { Halo = true });
    }

    private static string Say(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private sealed record Point(double X, double Y, string Unit, double Level, string LevelUnit)
    {
        public static Point? Of(JsonNode? node) => node is JsonObject spot && spot["x"] is JsonObject x && spot["y"] is JsonObject y && spot["level"] is JsonObject level
            ? new Point(x["value"]!.GetValue<double>(), y["value"]!.GetValue<double>(), x["unit"]!.GetValue<string>(), level["value"]!.GetValue<double>(), level["unit"]!.GetValue<string>())
            : null;
    }

    // The plan as drawn on paper: y runs up.
    private sealed class Frame
    {
        private readonly double left;
        private readonly double top;
        private readonly double scale;

        public Frame(IReadOnlyList<Point> points, double width)
        {
            (left, top) = (points.Min(point => point.X), points.Max(point => point.Y));
            (Across, Down) = (Math.Max(0.1, points.Max(point => point.X) - left), Math.Max(0.1, top - points.Min(point => point.Y)));
            scale = Math.Min((width - 72) / Across, width * 0.85 / Down);
            Floor = new Box(48 + (width - 72 - Across * scale) / 2, 22, Across * scale, Down * scale);
        }

        public double Across { get; }

        public double Down { get; }

        public Box Floor { get; }

        public Spot At(double x, double y) => new(Floor.X + (x - left) * scale, Floor.Y + (top - y) * scale);
    }
}
