using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Plans;

/// <summary>One line of the drawing of ages.</summary>
/// <param name="Name">The component.</param>
/// <param name="Result">Result of the reckoning <c>service-life</c>.</param>
public sealed record AgeLine(string Name, JsonObject Result);

/// <summary>Ages against what such things reach: how long each has stood, and the years in which most of its kind end.</summary>
public static class Ages
{
    private const double Row = 38;

    /// <summary>Draws the ages; nothing without a line that has an age.</summary>
    /// <param name="lines">The components.</param>
    /// <param name="year">The year of the report.</param>
    /// <param name="width">Width of the sheet.</param>
    /// <param name="tongue">The language of its words; the standard one when none is named.</param>
    public static Sheet? Draw(IReadOnlyList<AgeLine> lines, int year, double width, Tongue? tongue = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        tongue ??= Tongue.BuiltIn(Tongue.Standard);
        Life[] lives = [.. lines.Select(line => Life.Of(line, tongue)).OfType<Life>().OrderByDescending(life => life.Age)];
        if (lives.Length == 0) return null;
        var first = Math.Floor((year - lives.Max(life => life.Age)) / 5) * 5;
        var last = Math.Ceiling(Math.Max(year + 6, lives.Max(life => year - life.Age + life.Latest)) / 5) * 5;
        double X(double at) => 10 + (at - first) / (last - first) * (width - 20);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var bottom = 24 + lives.Length * Row;
        Scale(marks, first, last, X, bottom, width);
        marks.Add(new Mark.Stroke(Trace.Between(X(year), 16, X(year), bottom + 4), LineClass.Cut, Ink.Line));
        for (var index = 0; index < lives.Length; index++) One(marks, lives[index], year, X, 24 + index * Row, width);
        marks.Add(new Mark.Lettering($"{year}", new Spot(X(year), 11), 11) { Cut = Cut.Bold });
        return new Sheet
        {
            Width = width,
            Height = bottom + 22,
            Title = tongue.Say("drawing.ages"),
            Description = string.Join("; ", lives.Select(life => tongue.Say("drawing.ages.line", ("name", life.Name), ("age", life.Age), ("usual", life.Usual)))),
            Marks = marks.ToImmutable(),
        };
    }

    private static void Scale(ImmutableArray<Mark>.Builder marks, double first, double last, Func<double, double> x, double bottom, double width)
    {
        var step = (last - first) * 44 / width > 10 ? 20 : (last - first) * 44 / width > 5 ? 10 : 5;
        for (var at = first; at <= last; at += step)
        {
            marks.Add(new Mark.Stroke(Trace.Between(x(at), bottom, x(at), bottom + 4), LineClass.Fine, Ink.Quiet));
            marks.Add(new Mark.Lettering($"{at:0}", new Spot(Math.Clamp(x(at), 12, width - 14), bottom + 16), 9.5) { Ink = Ink.Quiet });
        }
        marks.Add(new Mark.Stroke(Trace.Between(x(first), bottom, x(last), bottom), LineClass.Beyond, Ink.Line));
    }

    private static void One(ImmutableArray<Mark>.Builder marks, Life life, int year, Func<double, double> x, double top, double width)
    {
        double made = year - life.Age, middle = top + 26;
        Box stood = new(x(made), middle - 4, Math.Max(1, x(year) - x(made)), 8);
        if (life.Earliest is { } earliest)
        {
            Box usual = new(x(made + earliest), middle - 4, Math.Max(1, x(made + life.Latest) - x(made + earliest)), 8);
            marks.Add(new Mark.Stroke(Hatching.Lines(usual.Corners, 45, 4), LineClass.Fine, Ink.Hatch));
            marks.Add(new Mark.Stroke(Trace.Around(usual), LineClass.Fine, Ink.Hatch));
        }
        marks.Add(new Mark.Area(Trace.Around(stood with { Y = middle - 1.6, Height = 3.2 }), Ink.Line));
        marks.Add(new Mark.Stroke(Trace.Between(x(made), middle - 6, x(made), middle + 6), LineClass.Cut, Ink.Line));
        if (life.Typical is { } typical) marks.Add(new Mark.Stroke(Trace.Between(x(made + typical), middle - 7, x(made + typical), middle + 7), LineClass.Beyond, Ink.Line));
        var words = Typesetting.Fit(life.Line, 10.5, Cut.Bold, width - 20);
        var from = Math.Max(10, Math.Min(x(made), width - 10 - Typesetting.Width(words, 10.5, Cut.Bold)));
        marks.Add(new Mark.Lettering(words, new Spot(from, top + 14), 10.5) { Anchor = Anchor.Start, Cut = Cut.Bold, Halo = true });
    }

    private sealed record Life(string Name, double Age, double? Earliest, double? Typical, double Latest, Tongue Words)
    {
        public string Usual => Earliest is { } earliest ? Words.Say("drawing.ages.usual", ("from", earliest), ("to", Latest)) : Typical is { } typical ? Words.Say("drawing.ages.about", ("years", typical)) : Words.Say("drawing.ages.unknown");

        public string Line => Words.Say("drawing.ages.old", ("name", Name), ("age", Age), ("usual", Usual));

        public static Life? Of(AgeLine line, Tongue words)
        {
            double? Number(string name) => line.Result[name] is JsonObject quantity && quantity["value"] is JsonValue value && value.TryGetValue<double>(out var number) && double.IsFinite(number) ? number : null;
            if (Number("age") is not { } age || age is < 0 or > 400) return null;
            double? low = Number("low"), typical = Number("typical"), high = Number("high");
            return new Life(Typesetting.Clean(line.Name), age, low is not null && high is not null ? low : null, typical, high ?? typical ?? age, words);
        }
    }
}
