namespace Purlin.Journal.Merge;

/// <summary>
/// Lines as they are kept and sent: UTF-8 JSON, one a line. A last line that is cut off and cannot be read loses only itself, and
/// <see cref="Torn"/> says so.
/// </summary>
public sealed record LineBlock
{
    private static readonly byte[] LineEnd = [(byte)'\n'];

    /// <summary>What could be read, in the order given.</summary>
    public required IReadOnlyList<Entry> Entries { get; init; }

    /// <summary>Lines that failed a check.</summary>
    public required IReadOnlyList<HeldLine> Held { get; init; }

    /// <summary>What is left of a last line that was cut off; none when the block ends whole.</summary>
    public ReadOnlyMemory<byte>? Torn { get; init; }

    /// <summary>One sentence about the torn line, for people; none when nothing was lost.</summary>
    public string? TornWords => Torn is { } torn ? $"The last line was cut off after {torn.Length} bytes; only that line is lost." : null;

    /// <summary>Reads a block.</summary>
    /// <param name="bytes">The block.</param>
    /// <param name="inspection">Lines of another inspection are held; none takes any.</param>
    public static LineBlock Read(ReadOnlyMemory<byte> bytes, string? inspection = null)
    {
        List<Entry> entries = [];
        List<HeldLine> held = [];
        ReadOnlyMemory<byte>? torn = null;
        while (bytes.Length > 0)
        {
            var end = bytes.Span.IndexOf((byte)'\n');
            var line = end < 0 ? bytes : bytes[..end];
            bytes = end < 0 ? default : bytes[(end + 1)..];
            if (line.Span is [.., (byte)'\r']) line = line[..^1];
            if (line.Length == 0) continue;
            var read = EntryLine.Read(line);
            if (read.IsAccepted && read.OrThrow() is { } entry)
            {
                if (inspection is null || entry.Inspection == inspection) entries.Add(entry);
                else held.Add(HeldLine.Of(line, inspection,
                    [new Refusal("insp", entry.Inspection, new Said("journal.wanted.lines-most", ("most", $"{inspection}")))]));
            }
            else if (end < 0) torn = line;
            else held.Add(HeldLine.Of(line, inspection, read.Refusals));
        }

        return new LineBlock { Entries = entries, Held = held, Torn = torn };
    }

    /// <summary>Writes raw lines, each with its line end.</summary>
    public static void Write(Stream to, IEnumerable<ReadOnlyMemory<byte>> lines)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(lines);
        foreach (var line in lines)
        {
            to.Write(line.Span);
            to.Write(LineEnd);
        }
    }
}
