using Purlin.Demo.AlderLane;
using Purlin.Journal;

namespace Purlin.Demo;

/// <summary>
/// The demo: one invented visit to an invented house, every entry and picture written by this program. It says so in its address,
/// in its opening entry and on every picture.
/// </summary>
public sealed record DemoInspection
{
    /// <summary>The inspection's id.</summary>
    public const string Id = "demoalder1";

    /// <summary>Every entry, in the order of the walk.</summary>
    public required IReadOnlyList<Entry> Entries { get; init; }

    /// <summary>Bytes of every picture by SHA-256.</summary>
    public required IReadOnlyDictionary<string, byte[]> Pictures { get; init; }

    /// <summary>Writes the walk. The same program gives the same bytes.</summary>
    public static DemoInspection Write()
    {
        Walk walk = new(Id, "demophone1", new DateTimeOffset(2026, 10, 14, 9, 5, 0, TimeSpan.FromHours(-7)));
        var house = House.Open(walk);
        Outside.Go(house);
        walk.Pause(6);
        Above.Go(house);
        walk.Pause(4);
        Air.Go(house);
        Water.Go(house);
        Power.Go(house);
        Rooms.Go(house);
        Rounds.Go(house);
        walk.Pause(5);
        Below.Go(house);
        return new DemoInspection { Entries = walk.Entries, Pictures = walk.Pictures };
    }
}
