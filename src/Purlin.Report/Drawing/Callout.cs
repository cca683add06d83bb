using System.Collections.Immutable;
using System.Globalization;
using Purlin.Book;
using Purlin.Report.Fonts;

namespace Purlin.Report.Drawing;

/// <summary>Numbered balloons: the number above, one to five bars under it, a leader to the spot. Five bars also bear the accent.</summary>
public static class Callout
{
    /// <summary>Radius at which number and bars can be read at arm's length on a phone.</summary>
    public const double Radius = 12.5;

    /// <summary>A balloon.</summary>
    /// <param name="number">Number of the matter.</param>
    /// <param name="bars">One to five.</param>
    /// <param name="at">Its middle.</param>
    /// <param name="words">Weight and title in words.</param>
    /// <param name="radius">Its radius.</param>
    public static Mark.Balloon Balloon(int number, int bars, Spot at, string words, double radius = Radius)
    {
        // Filled, the heaviest is told from the next by tone too, in black and white.
        var (ink, ground, letters) = bars >= 5 ? (Ink.Accent, Ink.Accent, Ink.Paper) : (Ink.Line, Ink.Paper, Ink.Text);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new Mark.Area(Trace.Circle(at.X, at.Y, radius), ground));
        marks.Add(new Mark.Stroke(Trace.Circle(at.X, at.Y, radius), bars >= 5 ? LineClass.Cut : LineClass.Beyond, ink));
        var text = number.ToString(CultureInfo.InvariantCulture);
        marks.Add(new Mark.Lettering(text, new Spot(at.X, at.Y + radius * 0.17), radius * (text.Length > 2 ? 0.8 : 1.02)) { Cut = Cut.Bold, Ink = letters });
        marks.Add(new Mark.Area(Bars(bars, new Spot(at.X, at.Y + radius * 0.34), radius), bars >= 5 ? Ink.Paper : Ink.Line));
        return new Mark.Balloon(number, at, words, marks.ToImmutable());
    }

    /// <summary>The bars alone, centred under a spot; five together are as wide as the balloon allows.</summary>
    public static Trace Bars(int bars, Spot under, double radius)
    {
        double wide = radius * 0.14, gap = radius * 0.1, tall = radius * 0.4, whole = bars * wide + (bars - 1) * gap;
        return Trace.Join(Enumerable.Range(0, bars).Select(index => Trace.Around(new Box(under.X - whole / 2 + index * (wide + gap), under.Y, wide, tall))));
    }

    /// <summary>The leader of a balloon, with a dot where it ends.</summary>
    public static IReadOnlyList<Mark> Leader(int bars, Spot at, Spot tip, double radius = Radius)
    {
        var ink = bars >= 5 ? Ink.Accent : Ink.Line;
        double across = tip.X - at.X, down = tip.Y - at.Y, length = Math.Sqrt(across * across + down * down);
        if (length <= radius) return [];
        Spot from = new(at.X + across / length * radius, at.Y + down / length * radius);
        return [new Mark.Stroke(Trace.Through(from, tip), LineClass.Fine, ink), new Mark.Area(Trace.Circle(tip.X, tip.Y, 2.1), ink)];
    }
}
