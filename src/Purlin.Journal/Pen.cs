using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Purlin.Journal;

/// <summary>
/// Writes one device's lines in one inspection (an append-only writer): sequence without gaps, hash of the line before, hybrid clock, and
/// what it has newly seen of other devices. There is one pen a device and inspection (on the phone a lock sees to it).
/// </summary>
public sealed class Pen
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Dictionary<string, int> seen = [];
    private readonly SortedDictionary<string, int> unsaid = new(StringComparer.Ordinal);
    private readonly string inspection;
    private readonly string device;
    private string? previous;

    /// <summary>A pen that has written nothing yet.</summary>
    public Pen(string inspection, string device)
    {
        ArgumentException.ThrowIfNullOrEmpty(inspection);
        if (!EntryName.IsDevice(device) || device.Contains('~', StringComparison.Ordinal))
            throw new ArgumentException("a device is 1 to 20 of a-z and 0-9", nameof(device));
        this.inspection = inspection;
        this.device = device;
    }

    /// <summary>Sequence of the last line written; 0 before the first.</summary>
    public int Seq { get; private set; }

    /// <summary>The latest clock reading written or adopted.</summary>
    public Hlc Clock { get; private set; }

    /// <summary>A pen that goes on after this device's last line among these entries, and has seen all the others.</summary>
    public static Pen After(string inspection, string device, IEnumerable<Entry> entries, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var pen = new Pen(inspection, device);
        List<Entry> others = [];
        foreach (var entry in entries.OrderBy(entry => entry.Name.Seq))
        {
            if (entry.Name.Device == device) pen.Continue(entry);
            else others.Add(entry);
        }

        foreach (var other in others) pen.Saw(other, now);
        return pen;
    }

    /// <summary>Another device's line has arrived: the next line says so.</summary>
    /// <param name="other">Device, with fork mark where it has one.</param>
    /// <param name="seq">Its highest sequence held here.</param>
    public void Saw(string other, int seq)
    {
        if (other == device || seq <= seen.GetValueOrDefault(other)) return;
        seen[other] = seq;
        unsaid[other] = seq;
    }

    /// <summary>Another device's line has arrived. Its time is adopted unless it is more than five minutes ahead of our own.</summary>
    public void Saw(Entry other, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(other);
        Saw(other.Name.Device, other.Name.Seq);
        if (other.Hlc > Clock && other.Hlc.Milliseconds <= now.ToUnixTimeMilliseconds() + Limits.AdoptAheadMilliseconds) Clock = other.Hlc;
    }

    /// <summary>Writes the next line.</summary>
    /// <exception cref="InvalidOperationException">The body breaks a limit or a list of words; check before writing.</exception>
    public Entry Write(EntryBody body, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(body);
        var clock = Clock.Next(now.ToUnixTimeMilliseconds());
        var entry = EntryLine.Read(Line(body, clock)).OrThrow();
        Seq++;
        Clock = clock;
        previous = entry.Hash;
        unsaid.Clear();
        return entry;
    }

    private byte[] Line(EntryBody body, Hlc clock)
    {
        using var stream = new MemoryStream(512);
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteNumber("v", EntryLine.Version);
            json.WriteString("insp", inspection);
            json.WriteString("dev", device);
            json.WriteNumber("seq", Seq + 1);
            json.WriteString("hlc", clock.ToString());
            if (previous is not null) json.WriteString("prev", previous);
            if (unsaid.Count > 0)
            {
                json.WriteStartObject("seen");
                foreach (var (other, seq) in unsaid) json.WriteNumber(other, seq);
                json.WriteEndObject();
            }

            json.WriteString("type", body.Type);
            json.WritePropertyName("body");
            json.WriteRawValue(Encoding.UTF8.GetBytes(BodyJson.Write(body)));
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private void Continue(Entry own)
    {
        Seq = own.Name.Seq;
        previous = own.Hash;
        Clock = own.Hlc;
        foreach (var (other, seq) in own.Seen) seen[other] = Math.Max(seq, seen.GetValueOrDefault(other));
    }
}
