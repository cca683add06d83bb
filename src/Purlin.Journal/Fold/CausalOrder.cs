namespace Purlin.Journal.Fold;

/// <summary>
/// Puts lines in causal order (a topological sort): each after everything its device had in hand, and where cause does not decide, by (hlc,
/// dev, seq). A wrong clock can therefore move a line only among those that are concurrent with it. Depends on the set alone.
/// </summary>
public static class CausalOrder
{
    private static readonly Dictionary<string, int> Nothing = [];

    /// <summary>The same entries, each once, in causal order.</summary>
    public static IReadOnlyList<Entry> Of(IEnumerable<Entry> entries) =>
        [.. Sort(Strands.Of(Distinct(entries)), out _).Select(line => line.Entry)];

    /// <summary>Each entry once, whatever the repetition of delivery.</summary>
    internal static List<Entry> Distinct(IEnumerable<Entry> entries)
    {
        HashSet<string> hashes = new(StringComparer.Ordinal);
        return [.. entries.Where(entry => hashes.Add(entry.Hash))];
    }

    /// <summary>All lines in causal order.</summary>
    /// <param name="strands">The strands, whose lines are threaded here.</param>
    /// <param name="forged">Whether lines claim to have seen one another, so that time alone had to decide.</param>
    internal static List<Line> Sort(List<Strand> strands, out bool forged)
    {
        forged = false;
        HashSet<string> told = [.. strands.Select(strand => strand.Device)];
        foreach (var strand in strands)
        {
            strand.Told = told;
            Thread(strand);
        }

        Dictionary<string, int> index = new(StringComparer.Ordinal);
        for (var at = 0; at < strands.Count; at++) index[strands[at].Device] = at;
        var next = new int[strands.Count];
        var total = strands.Sum(strand => strand.Lines.Count);
        List<Line> order = new(total);
        while (order.Count < total)
        {
            var chosen = Least(strands, index, next, mustBeReady: true);
            // Only forged lines can each claim to have seen the other; then time alone decides.
            forged |= chosen < 0;
            if (chosen < 0) chosen = Least(strands, index, next, mustBeReady: false);
            var line = strands[chosen].Lines[next[chosen]++];
            line.Position = order.Count;
            order.Add(line);
        }

        return order;
    }

    private static int Least(List<Strand> strands, Dictionary<string, int> index, int[] next, bool mustBeReady)
    {
        var least = -1;
        for (var at = 0; at < strands.Count; at++)
        {
            if (next[at] == strands[at].Lines.Count) continue;
            var line = strands[at].Lines[next[at]];
            if (least >= 0 && Line.ByTime(line, strands[least].Lines[next[least]]) > 0) continue;
            if (!mustBeReady || Ready(line, strands, index, next)) least = at;
        }

        return least;
    }

    private static bool Ready(Line line, List<Strand> strands, Dictionary<string, int> index, int[] next)
    {
        foreach (var (device, seq) in line.Knew)
        {
            if (!index.TryGetValue(device, out var at)) continue;
            var lines = strands[at].Lines;
            if (next[at] < lines.Count && lines[next[at]].Name.Seq <= seq) return false;
        }

        return true;
    }

    private static void Thread(Strand strand)
    {
        foreach (var entry in strand.Entries) strand.Lines.Add(Next(strand, entry));
    }

    /// <summary>The line that an entry makes at the end of its strand.</summary>
    internal static Line Next(Strand strand, Entry entry)
    {
        var body = strand.Parent is null ? entry.Body : entry.Body.Mapped(name => Resolve(name, strand));
        var references = body.Names();
        var knew = strand.Lines.Count > 0 ? strand.Lines[^1].Knew : Inherited(strand);
        return new Line
        {
            Entry = entry,
            Name = new EntryName(strand.Device, entry.Name.Seq),
            Strand = strand,
            Body = body,
            References = references,
            Knew = Learn(knew, strand, entry.Seen, references),
        };
    }

    private static Dictionary<string, int> Inherited(Strand strand)
    {
        if (strand.Parent is not { } parent) return Nothing;
        var last = parent.Lines.LastOrDefault(line => line.Name.Seq < strand.From);
        var knew = new Dictionary<string, int>(last?.Knew ?? Inherited(parent), StringComparer.Ordinal);
        if (strand.From > 1) knew[parent.Device] = strand.From - 1;
        return knew;
    }

    private static EntryName Resolve(EntryName name, Strand strand) =>
        name.Device == strand.Stem ? name with { Device = strand.Owner(name.Seq) } : name;

    private static Dictionary<string, int> Learn(Dictionary<string, int> knew, Strand strand, IReadOnlyDictionary<string, int> seen,
        IReadOnlyList<EntryName> references)
    {
        Dictionary<string, int>? grown = null;
        foreach (var (device, seq) in seen) Grow(device, seq);
        foreach (var name in references) Grow(name.Device, name.Seq);
        return grown ?? knew;

        void Grow(string device, int seq)
        {
            if (device == strand.Device || !strand.Told.Contains(device) || (grown ?? knew).GetValueOrDefault(device) >= seq) return;
            grown ??= new Dictionary<string, int>(knew, StringComparer.Ordinal);
            grown[device] = seq;
        }
    }
}
