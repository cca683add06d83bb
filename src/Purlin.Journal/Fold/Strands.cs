using System.Globalization;

namespace Purlin.Journal.Fold;

/// <summary>
/// Tells the branches of forked devices apart. A pure function of the set: lines are taken by sequence, those that continue a branch's last
/// line by hash first, and where several do, the one with the smallest clock reading, then hash, goes on and the others split off.
/// </summary>
internal static class Strands
{
    public static List<Strand> Of(IEnumerable<Entry> entries)
    {
        List<Strand> all = [];
        foreach (var device in entries.GroupBy(entry => entry.Name.Device, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            Entry[] lines = [.. device.OrderBy(entry => entry.Name.Seq).ThenBy(entry => entry.Hlc)
                .ThenBy(entry => entry.Hash, StringComparer.Ordinal)];
            List<Strand> strands = [new Strand { Device = device.Key, Stem = device.Key, From = 1 }];
            for (var at = 0; at < lines.Length;)
            {
                var seq = lines[at].Name.Seq;
                var end = at;
                while (end < lines.Length && lines[end].Name.Seq == seq) end++;
                if (end - at == 1 && strands.Count == 1) strands[0].Entries.Add(lines[at]);
                else Share(strands, lines.AsSpan(at, end - at), seq);
                at = end;
            }

            all.AddRange(strands);
        }

        return all;
    }

    private static void Share(List<Strand> strands, ReadOnlySpan<Entry> lines, int seq)
    {
        Strand[] before = [.. strands];
        var tips = before.Select(strand => strand.Entries is [.., var last] ? last : null).ToArray();
        var taken = new bool[before.Length];
        List<Entry> strays = [];
        foreach (var line in lines)
        {
            var follows = Array.FindIndex(tips, tip => tip is not null && tip.Name.Seq == seq - 1 && tip.Hash == line.Previous);
            if (follows < 0) strays.Add(line);
            else if (taken[follows]) Split(strands, before[follows], seq, line);
            else
            {
                taken[follows] = true;
                before[follows].Entries.Add(line);
            }
        }

        foreach (var line in strays)
        {
            var free = Array.IndexOf(taken, false);
            if (free < 0) Split(strands, before[0], seq, line);
            else
            {
                taken[free] = true;
                before[free].Entries.Add(line);
            }
        }
    }

    private static void Split(List<Strand> strands, Strand parent, int seq, Entry line)
    {
        var mark = (strands.Count + 1).ToString(CultureInfo.InvariantCulture);
        var branch = new Strand { Device = $"{parent.Stem}~{mark}", Stem = parent.Stem, From = seq, Parent = parent };
        branch.Entries.Add(line);
        strands.Add(branch);
    }
}
