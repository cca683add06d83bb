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

        return new Admission { Taken = taken, Held = held, Waiting = waiting };
    }

    private static IEnumerable<(EntryName Name, Entry? Entry)> Arrivals(LineBlock arriving) =>
    [
        .. arriving.Entries.DistinctBy(entry => entry.Hash).Select(entry => (entry.Name, (Entry?)entry)),
        .. arriving.Held.Where(line => line.Name is not null).Select(line => (line.Name!.Value, (Entry?)null)),
    ];

    private static string Stem(string device) => device.IndexOf('~', StringComparison.Ordinal) is var mark and >= 0 ? device[..mark] : device;

    /// <summary>What an inspection still has room for. Evidence beyond it is held, not thrown away.</summary>
    private sealed class Room(EntrySet here)
    {
        private readonly HashSet<string> devices = [.. here.Entries.Select(entry => entry.Name.Device)];
        private int entries = here.Count;
        private int photos = here.Entries.Count(entry => entry.Body is EntryBody.PhotoTaken);

        public Refusal? Refuses(Entry entry)
        {
            if (entries >= Limits.Entries) return new Refusal("entries", $"number {entries + 1}", $"at most {Limits.Entries} in one inspection");
            if (!devices.Contains(entry.Name.Device) && devices.Count >= Limits.Devices) return new Refusal("device", entry.Name.Device, $"at most {Limits.Devices} devices in one inspection");
            if (entry.Body is EntryBody.PhotoTaken && photos >= Limits.Photos) return new Refusal("photographs", $"number {photos + 1}", $"at most {Limits.Photos} in one inspection");
            entries++;
            devices.Add(entry.Name.Device);
            if (entry.Body is EntryBody.PhotoTaken) photos++;
            return null;
        }
    }
}
