using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.Device;

/// <summary>The lines of one journal as the device keeps them, folded as they come.</summary>
public sealed class KeptLines(Phone phone, string journal)
{
    private readonly Dictionary<string, int> heads = new(StringComparer.Ordinal);
    private readonly List<string> unreadable = [];

    public GrowingFold Fold { get; } = new();

    /// <summary>Lines that could not be read, in words.</summary>
    public IReadOnlyList<string> Unreadable => unreadable;

    /// <summary>Takes in what the device has beyond what is here, and says whether there was anything.</summary>
    public async Task<bool> ReadOnAsync()
    {
        return Fold.Add(Read(await phone.LinesBeyondAsync(journal, heads)));
    }

    private List<Entry> Read(byte[] bytes)
    {
        List<Entry> read = [];
        var from = 0;
        for (var at = Array.IndexOf(bytes, (byte)10); at >= 0; at = Array.IndexOf(bytes, (byte)10, from))
        {
            if (ReadLine(bytes.AsMemory(from, at - from)) is { } entry) read.Add(entry);
            from = at + 1;
        }
        return read;
    }

    private Entry? ReadLine(ReadOnlyMemory<byte> line) =>
        EntryLine.Read(line).Match<Entry?>(
            entry =>
            {
                if (!heads.TryGetValue(entry.Name.Device, out var head) || head < entry.Name.Seq) heads[entry.Name.Device] = entry.Name.Seq;
                return entry;
            },
            refusals =>
            {
                unreadable.Add(string.Join("; ", refusals));
                return null;
            });
}
