namespace Purlin.Journal.Merge;

/// <summary>
/// What is taken of lines that arrive, given what is here: of each device the run without gaps. A gap stops that device only, a held line
/// counts in the sequence and stops nothing, and what is already here is passed over, so that every delivery may be repeated.
/// </summary>
public sealed record Admission
{
    /// <summary>Lines to add, those of a device by sequence.</summary>
    public required IReadOnlyList<Entry> Taken { get; init; }

    /// <summary>Lines to keep apart, with the reasons.</summary>
    public required IReadOnlyList<HeldLine> Held { get; init; }

    /// <summary>Lines that failed a check and for which there is no room any more: not kept at all.</summary>
    public IReadOnlyList<HeldLine> Turned { get; init; } = [];

    /// <summary>Lines behind a gap: not taken, to be sent again with what is missing.</summary>
    public required IReadOnlyList<EntryName> Waiting { get; init; }

    /// <summary>Decides, changing nothing.</summary>
    public static Admission Of(EntrySet here, LineBlock arriving)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(arriving);
        var heads = here.Heads();
        var room = new Room(here);
        List<HeldLine> held = [.. arriving.Held.Where(line => !here.Has(line.Hash)).DistinctBy(line => line.Hash)];
        List<Entry> taken = [];
        List<EntryName> waiting = [];
        foreach (var device in Arrivals(arriving).GroupBy(line => line.Name.Device, StringComparer.Ordinal).ToList())
        {
            var reach = heads.Where(head => Stem(head.Key) == device.Key).Select(head => head.Value).DefaultIfEmpty(0).Max();
            foreach (var (name, entry) in device.OrderBy(line => line.Name.Seq))
            {
                var fresh = entry is not null && !here.Has(entry.Hash);
                if (name.Seq > reach + 1)
                {
                    if (fresh) waiting.Add(name);
                    continue;
                }

                reach = Math.Max(reach, name.Seq);
                if (!fresh) continue;
                if (room.Refuses(entry!) is { } why) held.Add(new HeldLine(entry!.Line, entry.Hash, entry.Name, [why]));
                else taken.Add(entry!);
            }
        }

        var kept = Quarantine(here, held);
        return new Admission { Taken = taken, Held = kept, Turned = [.. held.Except(kept)], Waiting = waiting };
    }

    /// <summary>As many of these as may still be kept. A line longer than any line may be is none of ours and is not kept.</summary>
    private static List<HeldLine> Quarantine(EntrySet here, List<HeldLine> held)
    {
        var (lines, bytes) = (here.Held.Count, here.Held.Sum(line => (long)line.Raw.Length));
        List<HeldLine> kept = [];
        foreach (var line in held)
        {
            if (line.Raw.Length > Limits.LineBytes || lines >= Limits.HeldLines || bytes + line.Raw.Length > Limits.HeldBytes) continue;
            (lines, bytes) = (lines + 1, bytes + line.Raw.Length);
            kept.Add(line);
        }

        return kept;
    }

    private static IEnumerable<(EntryName Name, Entry? Entry)> Arrivals(LineBlock arriving) =>
    [
        .. arriving.Entries.DistinctBy(entry => entry.Hash).Select(entry => (entry.Name, (Entry?)entry)),
        .. arriving.Held.Where(line => line.Name is not null).Select(line => (line.Name!.Value, (Entry?)null)),
    ];

    private static string Stem(string device) =>
        device.IndexOf('~', StringComparison.Ordinal) is var mark and >= 0 ? device[..mark] : device;

    /// <summary>What an inspection still has room for. Evidence beyond it is held, not thrown away.</summary>
    private sealed class Room(EntrySet here)
    {
        private readonly HashSet<string> devices = [.. here.Entries.Select(entry => entry.Name.Device)];
        private readonly HashSet<EntryName> names = [.. here.Entries.Select(entry => entry.Name)];
        private readonly HashSet<string> branched = [];
        private int entries = here.Count;
        private int branches = here.Branches;
        private long bytes = here.Entries.Sum(entry => (long)entry.Line.Length + 1);
        private int photos = here.Entries.Count(entry => entry.Body is EntryBody.PhotoTaken);
        private int sounds = here.Entries.Count(entry => entry.Body is EntryBody.SoundTaken);

        public Refusal? Refuses(Entry entry)
        {
            if (entries >= Limits.Entries)
                return new Refusal("entries", new Said("journal.given.number-count", ("count", $"{entries + 1}")),
                    new Said("journal.wanted.most-one-inspection", ("most", Limits.Entries)));
            if (bytes + entry.Line.Length + 1 > Limits.JournalBytes - Limits.HeldBytes)
                return new Refusal("bytes",
                    new Said("journal.given.bytes-length-more", ("bytes", $"{bytes}"), ("length", entry.Line.Length)),
                    "journal.wanted.lines-one-inspection-which-full");
            if (!devices.Contains(entry.Name.Device) && devices.Count >= Limits.Devices)
                return new Refusal("device", entry.Name.Device,
                    new Said("journal.wanted.most-devices-one-inspection", ("most", $"{Limits.Devices}")));
            if (entry.Body is EntryBody.PhotoTaken && photos >= Limits.Photos)
                return new Refusal("photographs", new Said("journal.given.number-count", ("count", $"{photos + 1}")),
                    new Said("journal.wanted.most-one-inspection", ("most", $"{Limits.Photos}")));
            if (entry.Body is EntryBody.SoundTaken && sounds >= Limits.Sounds)
                return new Refusal("sounds", new Said("journal.given.number-count", ("count", $"{sounds + 1}")),
                    new Said("journal.wanted.most-one-inspection", ("most", $"{Limits.Sounds}")));
            if (names.Contains(entry.Name) && Branches(entry) is { } tooMany) return tooMany;
            Count(entry);
            return null;
        }

        /// <summary>A line whose name is here already: the next one of a branch, or the first of a new one.</summary>
        private Refusal? Branches(Entry entry)
        {
            var goesOn = entry.Previous is { } before && branched.Contains(before);
            if (!goesOn && branches >= Limits.Branches)
                return new Refusal("branches", new Said("journal.given.number-count", ("count", $"{branches + 1}")),
                    new Said("journal.wanted.most-branches-copied-devices-one", ("most", Limits.Branches)));
            if (!goesOn) branches++;
            branched.Add(entry.Hash);
            return null;
        }

        private void Count(Entry entry)
        {
            if (devices.Add(entry.Name.Device)) branches++;
            names.Add(entry.Name);
            entries++;
            bytes += entry.Line.Length + 1;
            if (entry.Body is EntryBody.PhotoTaken) photos++;
            if (entry.Body is EntryBody.SoundTaken) sounds++;
        }
    }
}
