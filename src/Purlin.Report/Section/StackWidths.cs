using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>
/// How the width of the house is shared by its stacks: each gets what its fullest level needs, and what is left goes by the size of its
/// rooms.
/// </summary>
internal static class StackWidths
{
    private const double Least = 56;

    /// <summary>More rows than this make a level look like a tower.</summary>
    public const int FewRows = 2;

    public static IReadOnlyList<double> Of(IReadOnlyList<Stack> stacks, double room, SectionMeasures measures)
    {
        var rows = 1;
        while (rows < 12 && Needed(stacks, rows, measures).Sum() > room) rows++;
        var needed = Needed(stacks, rows, measures);
        double whole = stacks.Sum(Size), rest = room - needed.Sum();
        // Where even that is too much, all are squeezed alike.
        return rest < 0 ? [.. needed.Select(width => width * room / needed.Sum())]
            : [.. needed.Select((width, at) => width + (Size(stacks[at]) / whole * rest))];
    }

    /// <summary>Whether they fit without a level of more than two rows.</summary>
    public static bool Fit(IReadOnlyList<Stack> stacks, double room, SectionMeasures measures) =>
        Needed(stacks, FewRows, measures).Sum() <= room;

    /// <summary>What the slope of the roof takes from each side of a level that stands under it.</summary>
    public static double Knee(double width) => width * 0.18;

    private static double[] Needed(IReadOnlyList<Stack> stacks, int rows, SectionMeasures measures) =>
        [.. stacks.Select(stack => Math.Max(Least,
            stack.Levels.Select(level => Needed(level.Rooms.Count, rows, measures) / (level.IsUnderRoof ? 1 - (2 * Knee(1))
            : 1)).Append(Needed(stack.Below.Count, rows, measures)).Max()))];

    private static double Needed(int rooms, int rows, SectionMeasures measures) => (rooms + rows - 1) / rows * (measures.Squeeze + 1);

    private static double Size(Stack stack) => Math.Max(1, stack.Levels.Max(level => level.Rooms.Sum(Rows.Width)));
}
