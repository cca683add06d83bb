using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>A place and where it is drawn.</summary>
internal sealed record Cell(Place Place, Box Box);

/// <summary>One level: its rows of rooms. Rooms that do not fit one row stand behind them in the same level.</summary>
internal sealed record StoreyBand(double At, Box Box, IReadOnlyList<IReadOnlyList<Cell>> Rows);

/// <summary>A part of the house on the line of dimensions under the earth, with what may be written there, the fullest first.</summary>
internal sealed record Span(double From, double To, IReadOnlyList<string> Tries)
{
    /// <summary>One span a part; none where there is but one.</summary>
    public static IReadOnlyList<Span> Of(IReadOnlyList<Body> bodies)
    {
        var parts = bodies.GroupBy(body => body.Stack.Part?.Id).ToList();
        return parts.Count < 2 ? [] : [.. parts.Select(group => Of([.. group], group.First().Stack.Part))];
    }

    private static Span Of(IReadOnlyList<Body> bodies, Journal.Fold.Part? part)
    {
        var year = part?.Year?.Value.Text ?? "";
        string[] tries = [$"{part?.Name} {year}".Trim(), year, part?.Name ?? ""];
        return new Span(bodies.Min(body => body.House.X), bodies.Max(body => body.House.Right), [.. tries.Where(words => words.Length > 0)]);
    }
}

/// <summary>Where everything stands on the sheet; worked out once, then drawn.</summary>
internal sealed record SectionPlan
{
    public required SectionMeasures Measures { get; init; }

    /// <summary>The house as a whole.</summary>
    public required HouseShape Shape { get; init; }

    public required double Height { get; init; }

    /// <summary>From left to right; never empty.</summary>
    public required IReadOnlyList<Body> Bodies { get; init; }

    /// <summary>The ground line outside.</summary>
    public required double Ground { get; init; }

    public required Box Earth { get; init; }

    public required IReadOnlyList<Cell> Sites { get; init; }

    /// <summary>The parts of the house with their years, where there are several.</summary>
    public IReadOnlyList<Span> Spans { get; init; } = [];

    public Cell? Garage { get; init; }

    public Cell? Deck { get; init; }

    /// <summary>A pool, open to the sky beside the house.</summary>
    public Cell? Pool { get; init; }

    /// <summary>The sides as small elevations, then whatever has no room in the section.</summary>
    public required IReadOnlyList<Cell> Tiles { get; init; }

    /// <summary>The body that reaches highest.</summary>
    public Body Main => Bodies.FirstOrDefault(body => body.Stack.Part is null or { Kind: PartKind.Main }) ?? Bodies[0];

    /// <summary>All walls together.</summary>
    public Box House
    {
        get
        {
            double top = Bodies.Min(body => body.House.Y), bottom = Bodies.Max(body => body.House.Bottom);
            return new Box(Bodies[0].House.X, top, Bodies[^1].House.Right - Bodies[0].House.X, bottom - top);
        }
    }

    public IEnumerable<Cell> Roofs => Bodies.SelectMany(body => body.Roofs);

    public IEnumerable<Cell> Attics => Bodies.SelectMany(body => body.Attics);

    /// <summary>The body whose roof, attic or rooms a cell is of; the main one for all that stands outside.</summary>
    public Body BodyOf(Cell cell) => Bodies.FirstOrDefault(body => body.Roofs.Contains(cell) || body.Attics.Contains(cell)) ?? Main;

    /// <summary>Every place with its box, in the order of a walk: from the roof down, then outside.</summary>
    public IEnumerable<Cell> All =>
    [
        .. Roofs, .. Attics, .. Bodies.SelectMany(body => body.Storeys).SelectMany(storey => storey.Rows).SelectMany(row => row),
        .. Bodies.SelectMany(body => body.BelowRows).SelectMany(row => row), .. One(Deck), .. One(Garage), .. One(Pool), .. Sites, .. Tiles,
    ];

    private static IEnumerable<Cell> One(Cell? cell) => cell is null ? [] : [cell];
}
