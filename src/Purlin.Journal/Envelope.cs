using System.Text.Json;

namespace Purlin.Journal;

/// <summary>The members around a body, read one by one so that all refusals of one line are told at once.</summary>
internal sealed class Envelope
{
    private static readonly Dictionary<string, int> NothingSeen = [];

    public List<Refusal> Refusals { get; } = [];

    public int Version { get; private set; }

    public string Inspection { get; private set; } = "";

    public string Device { get; private set; } = "";

    public int Seq { get; private set; }

    public Hlc Hlc { get; private set; }

    public string? Previous { get; private set; }

    public IReadOnlyDictionary<string, int> Seen { get; private set; } = NothingSeen;

    public string Type { get; private set; } = "";

    public JsonElement Body { get; private set; }

    /// <summary>Whether inspection, device and sequence could be read, whatever else is wrong.</summary>
    public bool IsNamed => Inspection.Length > 0 && Device.Length > 0 && Seq > 0;

    public static Envelope Read(JsonElement root)
    {
        var envelope = new Envelope();
        if (root.ValueKind == JsonValueKind.Object) envelope.Members(root);
        else envelope.Refuse("line", root.ValueKind.ToString().ToLowerInvariant(), "one JSON object");
        return envelope;
    }

    private void Members(JsonElement root)
    {
        Version = Number(root, "v", 1, 1_000_000);
        Inspection = Text(root, "insp", EntryLine.IsInspection, "1 to 64 letters, digits, - or _");
        Device = Text(root, "dev", text => EntryName.IsDevice(text)
            && !text.Contains('~', StringComparison.Ordinal), "1 to 20 of a-z and 0-9");
        Seq = Number(root, "seq", 1, Limits.Sequence);
        var hlc = default(Hlc);
        Text(root, "hlc", text => Hlc.TryParse(text, out hlc), "twelve hexadecimal digits, a hyphen, four more");
        Hlc = hlc;
        if (root.TryGetProperty("prev", out var previous) && previous.ValueKind != JsonValueKind.Null)
            Previous = Text(root, "prev", Sha.Is, "64 digits of 0-9 and a-f");
        if (root.TryGetProperty("seen", out var seen)) ReadSeen(seen);
        Type = Text(root, "type", text => text.Length is > 0 and <= 64, "1 to 64 characters");
        if (root.TryGetProperty("body", out var body) && body.ValueKind == JsonValueKind.Object) Body = body;
        else Refuse("body", "no object", "an object");
    }

    private void ReadSeen(JsonElement seen)
    {
        if (seen.ValueKind != JsonValueKind.Object)
        {
            Refuse("seen", seen.ValueKind.ToString().ToLowerInvariant(), "an object of devices and sequences");
            return;
        }

        Dictionary<string, int> heads = [];
        foreach (var member in seen.EnumerateObject())
        {
            if (heads.Count < Limits.Heads && EntryName.IsDevice(member.Name) && member.Value.ValueKind == JsonValueKind.Number
                && member.Value.TryGetInt32(out var seq) && seq is >= 1 and <= Limits.Sequence) heads[member.Name] = seq;
            else Refuse("seen", BodyJson.Short(member.Name), $"at most {Limits.Heads} devices, each with a sequence from 1");
            if (Refusals.Count > 8) return;
        }

        Seen = heads;
    }

    private int Number(JsonElement root, string name, int least, int most)
    {
        if (root.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number
            && value.TryGetInt32(out var number) && number >= least && number <= most) return number;
        Refuse(name, value.ValueKind == JsonValueKind.Undefined
            ? "nothing" : BodyJson.Short(value.GetRawText()), $"a whole number from {least} to {most}");
        return 0;
    }

    private string Text(JsonElement root, string name, Func<string, bool> allowed, string words)
    {
        if (root.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String && value.GetString() is { } text
            && allowed(text)) return text;
        Refuse(name, value.ValueKind == JsonValueKind.Undefined ? "nothing" : BodyJson.Short(value.GetRawText()), words);
        return "";
    }

    private void Refuse(string input, string given, string allowed) => Refusals.Add(new Refusal(input, given, allowed));
}
