using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Drawing;

namespace Purlin.Report.Section;

/// <summary>
/// The rooms of a level side by side; where there are more than fit, those behind stand over those before, in the same level.
/// </summary>
internal static class Rows
{
    /// <summary>The rooms in a box, in as few rows as fit it.</summary>
    public static IReadOnlyList<IReadOnlyList<Cell>> In(IReadOnlyList<Place> rooms, Box at, SectionMeasures measures)
    {
        if (rooms.Count == 0) return [];
        var rows = Share(rooms, Count(rooms, at.Width, measures));
        var tall = at.Height / rows.Count;
        return [.. rows.Select((row, index) => Cells(row, at with { Y = at.Y + (index * tall), Height = tall }, measures.LeastCell))];
    }

    /// <summary>How many rows they need in a width.</summary>
    public static int Count(IReadOnlyList<Place> rooms, double width, SectionMeasures measures)
    {
        var count = 1;
        while (count < rooms.Count && Share(rooms, count).Exists(row => row.Count * measures.Squeeze > width)) count++;
        return count;
    }

    /// <summary>How high so many rows are: one has room for what stands in it, several for a thumb and a name each.</summary>
    public static double Tall(int rows, double one, SectionMeasures measures) => rows <= 1 ? one
        : Math.Max(one, rows * (measures.IsSmall ? measures.Row * 0.6 : measures.Target + 6));

    private static List<List<Place>> Share(IReadOnlyList<Place> rooms, int count)
    {
        List<List<Place>> rows = [];
        double done = 0, whole = rooms.Sum(Width);
        foreach (var room in rooms)
        {
            var row = Math.Min(count - 1, (int)((done + (Width(room) / 2)) / whole * count));
            while (rows.Count <= row) rows.Add([]);
            rows[row].Add(room);
            done += Width(room);
        }
        rows.RemoveAll(row => row.Count == 0);
        return rows;
    }

    // Every room gets the least width; what is left is shared by kind.
    private static List<Cell> Cells(List<Place> row, Box at, double least)
    {
        double whole = row.Sum(Width), rest = Math.Max(0, at.Width - (row.Count * least));
        var x = at.X;
        List<Cell> cells = [];
        foreach (var room in row)
        {
            var width = at.Width / row.Count < least ? at.Width / row.Count : least + (Width(room) / whole * rest);
            cells.Add(new Cell(room, new Box(x, at.Y, width, at.Height)));
            x += width;
        }
        return cells;
    }

    /// <summary>How wide a room is beside others.</summary>
    public static double Width(Place place) => place.Kind switch
    {
        PlaceKind.Room or PlaceKind.Kitchen => 1.45,
        PlaceKind.Bedroom or PlaceKind.Basement or PlaceKind.CrawlSpace => 1.3,
        _ => 1,
    };
}
