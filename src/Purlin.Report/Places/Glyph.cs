using System.Globalization;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>The drawn sign of a thing: an outline that is filled and a few fine lines, on a grid of its own.</summary>
/// <param name="Width">Width of the grid.</param>
/// <param name="Height">Height of the grid.</param>
/// <param name="Outline">Closed pieces: what the thing covers.</param>
/// <param name="Detail">Fine lines, left out while the thing is only usual.</param>
internal sealed record Glyph(double Width, double Height, Trace Outline, Trace Detail)
{
    /// <summary>Reads a glyph: M, L, H, V, C, Z with absolute figures, and O for a circle: middle and radius.</summary>
    public static Glyph Of(double width, double height, string outline, string detail = "") => new(width, height, Path(outline), Path(detail));

    /// <summary>The glyph as large as a box allows, in its middle or standing on its lower edge.</summary>
    public (Trace Outline, Trace Detail, Box Covers) In(Box box, bool standing)
    {
        var scale = Math.Min(box.Width / Width, box.Height / Height);
        double x = box.X + ((box.Width - (Width * scale)) / 2), over = box.Height - (Height * scale);
        var y = box.Y + (standing ? over : over / 2);
        return (Outline.Moved(scale, x, y), Detail.Moved(scale, x, y), new Box(x, y, Width * scale, Height * scale));
    }

    private static Trace Path(string text)
    {
        Trace trace = new([]);
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Spot at = default;
        var index = 0;
        double Next() => double.Parse(parts[index++], CultureInfo.InvariantCulture);
        while (index < parts.Length)
        {
            switch (parts[index++])
            {
                case "M": at = new Spot(Next(), Next()); trace = new(trace.Steps.Add(new TraceStep(TraceKind.Move, at))); break;
                case "L": at = new Spot(Next(), Next()); trace = trace.To(at.X, at.Y); break;
                case "H": at = at with { X = Next() }; trace = trace.To(at.X, at.Y); break;
                case "V": at = at with { Y = Next() }; trace = trace.To(at.X, at.Y); break;
                case "C":
                    Spot first = new(Next(), Next()), second = new(Next(), Next());
                    at = new Spot(Next(), Next());
                    trace = trace.By(first.X, first.Y, second.X, second.Y, at.X, at.Y);
                    break;
                case "O": trace = trace.With(Trace.Circle(Next(), Next(), Next())); break;
                case "Z": trace = new(trace.Steps.Add(new TraceStep(TraceKind.Close, at))); break;
                case var other: throw new FormatException($"{other}: a glyph is made of M, L, H, V, C, O and Z");
            }
        }
        return trace;
    }
}
