using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>A visit written entry by entry by one or more devices, each act replacing what stands in its slot as the app does.</summary>
internal sealed class Writing
{
    private static readonly DateTimeOffset Morning = new(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);
    private readonly Dictionary<string, Pen> pens = [];
    private readonly Dictionary<string, List<Entry>> hands = [];

    public List<Entry> Entries { get; } = [];

    public Inspection State => Folding.Fold(Entries);

    /// <summary>An inspection of a house of 1962 is opened.</summary>
    public static Writing Opened(out EntryName house, Property? property = null, string? standard = null)
    {
        Writing writing = new();
        house = writing.Write(new EntryBody.InspectionOpened
        {
            Property = property ?? new Property { Address = "1 Invented Way", YearBuilt = 1962 },
            Date = new DateOnly(2026, 10, 14),
            Standards = standard is null ? [] : [standard],
        });
        return writing;
    }

    /// <summary>Writes as a device that has in hand what it wrote and what it got by <see cref="Meet"/>.</summary>
    public EntryName Write(EntryBody body, string device = "aaa", TimeSpan ahead = default)
    {
        var hand = Hand(device);
        if (!pens.TryGetValue(device, out var pen)) pens[device] = pen = new Pen("written", device);
        var entry = pen.Write(hand.Count == 0 ? body : Folding.Fold(hand).Replacing(body), Morning.AddMinutes(Entries.Count) + ahead);
        hand.Add(entry);
        Entries.Add(entry);
        return entry.Name;
    }

    /// <summary>All devices get all that was written.</summary>
    public void Meet(params ReadOnlySpan<string> devices)
    {
        foreach (var device in devices)
        {
            var hand = Hand(device);
            if (!pens.TryGetValue(device, out var pen)) pens[device] = pen = new Pen("written", device);
            foreach (var entry in Entries.Except(hand).ToList())
            {
                hand.Add(entry);
                pen.Saw(entry, Morning);
            }
        }
    }

    private List<Entry> Hand(string device) => hands.TryGetValue(device, out var hand) ? hand : hands[device] = [];
}
