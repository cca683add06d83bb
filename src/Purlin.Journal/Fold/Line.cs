namespace Purlin.Journal.Fold;

/// <summary>
/// An entry as the fold sees it: under the name it bears once forks are told apart, with every name in its body resolved, and with what its
/// device had in hand when it wrote.
/// </summary>
internal sealed class Line
{
    public required Entry Entry { get; init; }

    public required EntryName Name { get; init; }

    public required Strand Strand { get; init; }

    public required EntryBody Body { get; init; }

    /// <summary>Entries the body names. Nobody can name what they have not seen, so each is also a cause.</summary>
    public required IReadOnlyList<EntryName> References { get; init; }

    /// <summary>Other strands' highest sequence in hand when this was written (a version vector).</summary>
    public required Dictionary<string, int> Knew { get; init; }

    /// <summary>Place in the causal order.</summary>
    public int Position { get; set; } = -1;

    /// <summary>Not withdrawn.</summary>
    public bool Stands { get; set; } = true;

    /// <summary>What it has become in the state; none until it was needed, or when something it rests on has changed.</summary>
    public object? Item { get; set; }

    public DateTimeOffset At => Entry.Hlc.At;

    /// <summary>
    /// Whether the device had that line in hand. By what it held itself, not by what others it saw had held: a line that was still on its
    /// way must not count as seen.
    /// </summary>
    public bool Saw(EntryName other) =>
        other.Device == Name.Device ? other.Seq < Name.Seq : Knew.TryGetValue(other.Device, out var seq) && other.Seq <= seq;

    public static int ByTime(Line left, Line right)
    {
        var byClock = left.Entry.Hlc.CompareTo(right.Entry.Hlc);
        return byClock != 0 ? byClock : left.Name.CompareTo(right.Name);
    }
}

/// <summary>The unbroken hand of one device (its branch of the log), or one branch of it when two copies of a profile wrote on.</summary>
internal sealed class Strand
{
    private static readonly HashSet<string> NoOther = [];

    /// <summary>Name with fork mark.</summary>
    public required string Device { get; init; }

    /// <summary>Name without it.</summary>
    public required string Stem { get; init; }

    /// <summary>The first sequence that is its own.</summary>
    public required int From { get; init; }

    /// <summary>The strand it split off from; none for the first of a device.</summary>
    public Strand? Parent { get; init; }

    /// <summary>
    /// Every strand of the inspection, by name: what a line claims to have seen of a device that wrote nothing here says nothing.
    /// </summary>
    public IReadOnlySet<string> Told { get; set; } = NoOther;

    /// <summary>Its entries, by sequence.</summary>
    public List<Entry> Entries { get; } = [];

    /// <summary>The same as the fold sees them.</summary>
    public List<Line> Lines { get; } = [];

    /// <summary>The line with the latest time; clocks do go back.</summary>
    public Line Latest()
    {
        while (looked < Lines.Count)
        {
            var line = Lines[looked++];
            if (latest is null || Line.ByTime(line, latest) > 0) latest = line;
        }

        return latest!;
    }

    private Line? latest;
    private int looked;

    /// <summary>The strand that a sequence of this device means when written here.</summary>
    public string Owner(int seq)
    {
        var strand = this;
        while (seq < strand.From && strand.Parent is not null) strand = strand.Parent;
        return strand.Device;
    }
}
