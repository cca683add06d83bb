using System.Text.Json.Nodes;

namespace Purlin.Field.Device;

/// <summary>How the phone stands before a visit, measured by the device module.</summary>
public sealed record Meter
{
    // A phone's photograph in a visit averages about 3 MB (common practice); a third more for what is derived from it.
    private const double PhotoBytes = 3e6 * 1.3;
    private const int PhotosOfAVisit = 400;
    private const double ClockLimitMilliseconds = 120_000;

    public bool Cached { get; init; }

    public bool Works { get; init; }

    public bool Kept { get; init; }

    public bool Ballast { get; init; }

    public bool Newer { get; init; }

    public double Used { get; init; }

    public double Free { get; init; }

    public double ClockAhead { get; init; }

    public double LastContact { get; init; }

    public string Camera { get; init; } = "";

    public int PhotosLeft => (int)Math.Min(99_999, Free / PhotoBytes);

    public string UsedWords => $"{Used / 1e6:0} MB";

    public string ClockWords => LastContact == 0 ? "not compared with the office yet"
        : Math.Abs(ClockAhead) <= ClockLimitMilliseconds ? "agrees with the office"
        : $"{Math.Abs(ClockAhead) / 60_000:0} minutes {(ClockAhead > 0 ? "ahead of" : "behind")} the office";

    /// <summary>What keeps the person from leaving with an easy mind; empty when nothing does.</summary>
    public IReadOnlyList<string> Lacking
    {
        get
        {
            List<string> lacking = [];
            if (!Works) lacking.Add("This window does not keep what is written: leave the private window");
            if (!Cached) lacking.Add("The program is not whole on this phone yet");
            if (PhotosLeft < PhotosOfAVisit) lacking.Add($"Room for about {PhotosLeft} photographs only");
            if (Used > 0 && Used >= (Used + Free) * Purlin.Journal.Limits.TellAt) lacking.Add($"The phone’s room for this app is {Used / (Used + Free):P0} full");
            if (LastContact > 0 && Math.Abs(ClockAhead) > ClockLimitMilliseconds) lacking.Add("The clock differs from the office");
            return lacking;
        }
    }

    /// <summary>Reads what the device module measured.</summary>
    public static Meter Of(JsonNode? node)
    {
        return new Meter
        {
            Cached = Flag(node, "cached"),
            Works = Flag(node, "works"),
            Kept = Flag(node, "kept"),
            Ballast = Flag(node, "ballast"),
            Newer = Flag(node, "newer"),
            Used = Number(node, "used"),
            Free = Number(node, "free"),
            ClockAhead = Number(node, "clockAhead"),
            LastContact = Number(node, "lastContact"),
            Camera = (string?)node?["camera"] switch { "granted" => "allowed", "prompt" => "will be asked for", "denied" => "not allowed", var other => other ?? "" },
        };
    }

    private static bool Flag(JsonNode? node, string name) => node?[name]?.GetValue<bool>() ?? false;

    private static double Number(JsonNode? node, string name) => node?[name]?.GetValue<double>() ?? 0;
}
