using System.Collections.Immutable;

namespace Purlin.Report.Drawing;

/// <summary>One step of a path.</summary>
/// <param name="Kind">Move, line, curve or close.</param>
/// <param name="To">Where it ends.</param>
/// <param name="First">First control point of a curve.</param>
/// <param name="Second">Second control point of a curve.</param>
public readonly record struct TraceStep(TraceKind Kind, Spot To, Spot First = default, Spot Second = default);

/// <summary>Kinds of step.</summary>
public enum TraceKind
{
    /// <summary>Lift the pen and go there.</summary>
    Move,

    /// <summary>A straight line.</summary>
    Line,

    /// <summary>A cubic curve.</summary>
    Curve,

    /// <summary>Back to where the last move went.</summary>
    Close,
}

/// <summary>A path as data; may consist of several pieces.</summary>
public sealed record Trace(ImmutableArray<TraceStep> Steps)
{
    /// <summary>Starts a path.</summary>
    public static Trace At(double x, double y) => new([new TraceStep(TraceKind.Move, new Spot(x, y))]);

    /// <summary>A straight piece.</summary>
    public static Trace Between(double x1, double y1, double x2, double y2) => At(x1, y1).To(x2, y2);

    /// <summary>A closed polygon.</summary>
    public static Trace Polygon(IReadOnlyList<Spot> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        return new([new TraceStep(TraceKind.Move, corners[0]), .. corners.Skip(1).Select(corner => new TraceStep(TraceKind.Line, corner)), new TraceStep(TraceKind.Close, corners[0])]);
    }

    /// <summary>An open run of straight pieces.</summary>
    public static Trace Through(params IReadOnlyList<Spot> spots)
    {
        ArgumentNullException.ThrowIfNull(spots);
        return new([new TraceStep(TraceKind.Move, spots[0]), .. spots.Skip(1).Select(spot => new TraceStep(TraceKind.Line, spot))]);
    }

    /// <summary>The outline of a box.</summary>
    public static Trace Around(Box box) => Polygon(box.Corners);

    /// <summary>A circle, or an oval when the second radius differs.</summary>
    public static Trace Circle(double x, double y, double radius, double? radiusDown = null)
    {
        // 0.5523: the control length that draws a quarter circle by one cubic, from memory of any geometry text.
        double down = radiusDown ?? radius, k = radius * 0.5523, j = down * 0.5523;
        return At(x + radius, y)
            .By(x + radius, y + j, x + k, y + down, x, y + down)
            .By(x - k, y + down, x - radius, y + j, x - radius, y)
            .By(x - radius, y - j, x - k, y - down, x, y - down)
            .By(x + k, y - down, x + radius, y - j, x + radius, y)
            .Shut();
    }

    /// <summary>Goes on in a straight line.</summary>
    public Trace To(double x, double y) => new(Steps.Add(new TraceStep(TraceKind.Line, new Spot(x, y))));

    /// <summary>Lifts the pen and goes on elsewhere.</summary>
    public Trace Lift(double x, double y) => new(Steps.Add(new TraceStep(TraceKind.Move, new Spot(x, y))));

    /// <summary>Goes on in a cubic curve.</summary>
    public Trace By(double x1, double y1, double x2, double y2, double x, double y) =>
        new(Steps.Add(new TraceStep(TraceKind.Curve, new Spot(x, y), new Spot(x1, y1), new Spot(x2, y2))));

    /// <summary>Closes the piece.</summary>
    public Trace Shut() => new(Steps.Add(new TraceStep(TraceKind.Close, Steps[0].To)));

    /// <summary>The path enlarged about the origin, then moved.</summary>
    public Trace Moved(double scale, double x, double y)
    {
        Spot Place(Spot spot) => new(spot.X * scale + x, spot.Y * scale + y);
        return new([.. Steps.Select(step => step with { To = Place(step.To), First = Place(step.First), Second = Place(step.Second) })]);
    }

    /// <summary>Both paths as one.</summary>
    public Trace With(Trace other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(Steps.AddRange(other.Steps));
    }

    /// <summary>All of them as one path; empty without any.</summary>
    public static Trace Join(IEnumerable<Trace> traces) => new([.. traces.SelectMany(trace => trace.Steps)]);
}
