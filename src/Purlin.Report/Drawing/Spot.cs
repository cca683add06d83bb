namespace Purlin.Report.Drawing;

/// <summary>A point on a sheet; x to the right, y down.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Down.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on a sheet.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>Middle.</summary>
    public Spot Centre => new(X + Width / 2, Y + Height / 2);

    /// <summary>The four corners, clockwise from the upper left.</summary>
    public IReadOnlyList<Spot> Corners => [new(X, Y), new(Right, Y), new(Right, Bottom), new(X, Bottom)];

    /// <summary>Drawn in on all sides.</summary>
    public Box Inset(double by) => new(X + by, Y + by, Math.Max(0, Width - 2 * by), Math.Max(0, Height - 2 * by));

    /// <summary>One of several equal columns with a gap between.</summary>
    public Box Column(int index, int count, double gap = 0)
    {
        var width = (Width - gap * (count - 1)) / count;
        return new Box(X + index * (width + gap), Y, width, Height);
    }
}
