using System.Collections.Immutable;
using System.Globalization;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>What a kind of place looks like before anything stands in it, and where things of each kind go.</summary>
internal sealed record Frame
{
    /// <summary>Width of every drawing of a place.</summary>
    public const double Width = 390;

    /// <summary>Height of every drawing of a place.</summary>
    public const double Height = 476;

    /// <summary>Earth, cut parts, what is beyond.</summary>
    public required ImmutableArray<Mark> Behind { get; init; }

    /// <summary>The ground line and whatever is drawn over things.</summary>
    public ImmutableArray<Mark> Over { get; init; } = [];

    /// <summary>Places for things, in order; a second one of a kind takes the next.</summary>
    public required IReadOnlyDictionary<string, ImmutableArray<FrameSlot>> Slots { get; init; }

    /// <summary>What surrounds the things and is touched where nothing stands: a wall, a roof plane, a floor.</summary>
    public IReadOnlyDictionary<string, Surface> Surfaces { get; init; } = new Dictionary<string, Surface>();

    /// <summary>Reads slots: a line a kind, boxes as <c>x y w h</c> apart by semicolons; <c>^</c> in front of what hangs above the cut, <c>_</c> of what stands.</summary>
    public static Dictionary<string, ImmutableArray<FrameSlot>> Read(string lines)
    {
        Dictionary<string, ImmutableArray<FrameSlot>> slots = new(StringComparer.Ordinal);
        foreach (var line in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            slots[line[..colon]] = [.. line[(colon + 1)..].Split(';', StringSplitOptions.TrimEntries).Select(ReadSlot)];
        }
        return slots;
    }

    private static FrameSlot ReadSlot(string text)
    {
        var figures = text.TrimStart('^', '_').Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(figure => double.Parse(figure, CultureInfo.InvariantCulture)).ToArray();
        return new FrameSlot(new Box(figures[0], figures[1], figures[2], figures[3])) { Above = text[0] == '^', Standing = text[0] == '_' };
    }
}

/// <summary>Where a thing goes.</summary>
/// <param name="Box">Its room.</param>
internal sealed record FrameSlot(Box Box)
{
    /// <summary>Whether it hangs above the plane of the cut: dash and dot.</summary>
    public bool Above { get; init; }

    /// <summary>Whether it stands on the lower edge of its room.</summary>
    public bool Standing { get; init; }
}

/// <summary>A surface that is a thing itself.</summary>
/// <param name="Corners">Its outline.</param>
/// <param name="Name">Where its name stands.</param>
internal sealed record Surface(ImmutableArray<Spot> Corners, Spot Name)
{
    /// <summary>A surface as a box.</summary>
    public static Surface Of(Box box, Spot name) => new([.. box.Corners], name);
}
