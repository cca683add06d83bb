namespace Purlin.Journal.Told;

/// <summary>A part beside the main house, as it is told in a few answers.</summary>
public sealed record ToldPart
{
    /// <summary>See <see cref="PartKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>On which side of the main house, see <see cref="PartSide"/>.</summary>
    public required string Side { get; init; }

    /// <summary>Year it was built; none while unknown.</summary>
    public int? Year { get; init; }

    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>; none while unknown.</summary>
    public string? Foundation { get; init; }

    /// <summary>Full floors.</summary>
    public int Floors { get; init; } = 1;

    /// <summary>What people call it.</summary>
    public string Name => Kind switch
    {
        PartKind.SecondUnit => "Unit 2",
        PartKind.EnclosedPorch => "Sun room",
        _ => char.ToUpperInvariant(Kind[0]) + Kind[1..],
    };

    /// <summary>Whether it stands on the floors of the house instead of beside it.</summary>
    public bool IsAbove => Side == "above";

    internal IReadOnlyList<Level> Levels => [.. Enumerable.Range(IsAbove ? 1 : 0, Math.Clamp(Floors, 1, 3)).Select(at => new Level(at, LevelForm.Full))];

    /// <summary>One sleeps upstairs where there is an upstairs.</summary>
    internal double LevelOf(string kind) => Levels[kind is PlaceKind.Bedroom or PlaceKind.Bathroom ? ^1 : 0].At;

    /// <summary>The rooms such a part has; what is outside and below it is told by its foundation.</summary>
    internal IEnumerable<(string Kind, string Name)> Rooms() => Kind switch
    {
        PartKind.SecondUnit => [(PlaceKind.Room, "Living room 2"), (PlaceKind.Kitchen, "Kitchen 2"), (PlaceKind.Bathroom, "Bathroom, unit 2"), (PlaceKind.Bedroom, "Bedroom, unit 2")],
        PartKind.AttachedGarage => [(PlaceKind.Garage, "Garage")],
        PartKind.EnclosedPorch => [(PlaceKind.Room, "Sun room")],
        _ => [(PlaceKind.Room, $"{Name} room")],
    };
}
