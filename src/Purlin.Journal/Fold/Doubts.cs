namespace Purlin.Journal.Fold;

/// <summary>
/// What a person has to know of the lines themselves (integrity anomalies): forks, broken chains, clocks that cannot be right. Nothing is
/// refused for it.
/// </summary>
internal static class Doubts
{
    private const long Day = 86_400_000;

    public static IEnumerable<Unsettled> Of(List<Strand> strands, List<Line> order, IReadOnlyDictionary<EntryName, Line> byName) =>
        [.. Forks(strands), .. Chains(strands, byName), .. Clocks(order, byName)];

    /// <summary>Sequences missing below each strand's last, at most as many as an inspection may hold entries.</summary>
    public static IReadOnlyList<EntryName> Missing(List<Strand> strands)
    {
        List<EntryName> missing = [];
        foreach (var strand in strands)
        {
            var expected = strand.From;
            foreach (var line in strand.Lines)
            {
                for (; expected < line.Name.Seq && missing.Count < Limits.Entries; expected++)
                    missing.Add(new EntryName(strand.Owner(expected), expected));
                expected = line.Name.Seq + 1;
            }
        }

        return missing;
    }

    private static IEnumerable<Unsettled> Forks(List<Strand> strands) =>
        from strand in strands
        where strand.Parent is not null
        select new Unsettled(
            UnsettledKind.Fork,
            [new EntryName(strand.Parent!.Device, strand.From), new EntryName(strand.Device, strand.From)],
            $"Two copies of the device {strand.Stem} wrote on from line {strand.From} (a copied or restored profile). Both are kept, the second as {strand.Device}. Check which of the doubled entries are meant.");

    private static IEnumerable<Unsettled> Chains(List<Strand> strands, IReadOnlyDictionary<EntryName, Line> byName)
    {
        foreach (var line in strands.SelectMany(strand => strand.Lines))
        {
            var seq = line.Name.Seq - 1;
            var before = seq > 0 && byName.TryGetValue(new EntryName(line.Strand.Owner(seq), seq), out var held) ? held : null;
            var broken = seq == 0 ? line.Entry.Previous is not null
                : line.Entry.Previous is null || (before is not null && line.Entry.Previous != before.Entry.Hash);
            if (broken)
            {
                yield return new Unsettled(
                    UnsettledKind.BrokenChain,
                    before is null ? [line.Name] : [before.Name, line.Name],
                    $"The line {line.Name} does not follow the line held before it. It is kept. Fetch the lines of {line.Strand.Stem} again and compare.");
            }
        }
    }

    /// <summary>
    /// A clock is doubted when the device itself compared it with the office and found a day or more, or when a line is dated a day or more
    /// before something it had in hand. Said once for each device or pair.
    /// </summary>
    private static IEnumerable<Unsettled> Clocks(List<Line> order, IReadOnlyDictionary<EntryName, Line> byName)
    {
        HashSet<(string, string)> told = [];
        Dictionary<string, Line> latest = new(StringComparer.Ordinal);
        foreach (var line in order)
        {
            var device = line.Name.Device;
            if (line.Body is EntryBody.ClockChecked check && Math.Abs((double)check.AheadMilliseconds) > Day && told.Add((device, "")))
            {
                var side = check.AheadMilliseconds > 0 ? "ahead of" : "behind";
                yield return new Unsettled(UnsettledKind.FarClock, [line.Name],
                    $"The clock of {device} was {Days(Math.Abs(check.AheadMilliseconds))} {side} the office. Its entries stand in the order of cause; read their times with care.");
            }

            if (latest.TryGetValue(device, out var own) && Disagree(own, line, told) is { } jumped) yield return jumped;
            foreach (var (other, seq) in line.Knew)
            {
                if (byName.TryGetValue(new EntryName(other, seq), out var known) && Disagree(known, line, told) is { } apart)
                    yield return apart;
            }

            latest[device] = line;
        }
    }

    private static string Days(long milliseconds) => $"{Math.Round(milliseconds / 86_400_000.0):0} days";

    private static Unsettled? Disagree(Line earlier, Line later, HashSet<(string, string)> told)
    {
        var back = earlier.Entry.Hlc.Milliseconds - later.Entry.Hlc.Milliseconds;
        if (back <= Day || !told.Add((earlier.Name.Device, later.Name.Device))) return null;
        var who = earlier.Name.Device == later.Name.Device
            ? $"The clock of {later.Name.Device} went back" : $"The clocks of {earlier.Name.Device} and {later.Name.Device} disagree by";
        return new Unsettled(UnsettledKind.FarClock, [earlier.Name, later.Name],
            $"{who} {Days(back)}. Their entries stand in the order of cause; read their times with care.");
    }
}
